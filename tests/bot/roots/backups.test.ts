import { access, mkdir, mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { createServer, get } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import {
  backUp,
  inspectBackup,
  move,
  restore,
  type StorePlace,
  saveErasures,
} from '../../../bot/roots/backups.ts';
import { controlIn, openControl } from '../../../bot/roots/control-socket.ts';
import { eraseChild, openServer } from '../../../db/index.ts';
import { aClass, aFamily } from '../../support/people.ts';
import { dumpAll } from '../../support/raw-rows.ts';
import { createDatabase, embedded } from '../../support/stores.ts';
import { MORNING } from '../../support/term.ts';

const log = { info: () => {}, warn: () => {}, error: () => {} };
const now = MORNING;

let folder: string;
let place: StorePlace;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'suppersums-backups-'));
  place = { databaseUrl: undefined, dataDir: join(folder, 'live') };
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const inFolder = (name: string) => join(folder, name);
/** What the operator reads. */
const toldOf = (work: Promise<unknown>) => work.then(String, (error) => String(error.message));

it('where no bot has ever run there is nothing to back up or move, and nothing is made', async () => {
  const told = await toldOf(backUp(place, { file: inFolder('none.gz'), now }, log));
  expect(told).toMatch(/^There is no database in .*live\. Set DATA_DIR/);
  expect(await toldOf(move(place, { to: place, now }, log))).toBe(told);
  expect(await toldOf(saveErasures(place, { file: inFolder('none.jsonl') }, log))).toBe(told);
  expect(await readdir(folder)).toEqual([]);
});

it('a bot that has the embedded database to itself makes the backup when it is asked', async () => {
  const store = await embedded.open();
  const { dataDir } = place;
  await mkdir(dataDir);
  // What a process that was killed may leave.
  await writeFile(controlIn(dataDir), '');
  await writeFile(join(dataDir, 'backup-abc123'), 'half a backup');
  const running = await openControl({ folder: dataDir, store, clock: { now: () => now }, log });
  const family = await aFamily(store, await aClass(store));
  await eraseChild(store, { childId: family.child.id, now });
  const file = inFolder('running.gz');
  const report = await backUp(place, { file, now }, log);
  expect(report).toEqual(await inspectBackup(file));
  expect(report).toMatchObject({ madeAt: now.toISOString(), bytes: (await stat(file)).size });
  expect(report.tables).toContainEqual({ name: 'class', rows: 1 });
  expect((await stat(file)).mode & 0o777).toBe(0o600);
  expect((await stat(controlIn(dataDir))).mode & 0o777).toBe(0o600);
  const again = await toldOf(backUp(place, { file, now }, log));
  expect(again).toBe(`There is a file ${file} already. Give the backup another name.`);
  expect(await saveErasures(place, { file: inFolder('erased.jsonl') }, log)).toBe(2);
  expect(await readFile(inFolder('erased.jsonl'), 'utf8')).toContain(family.child.id);
  expect(await statusOf(controlIn(dataDir), '/backup')).toBe(404);
  expect(await readdir(dataDir)).toEqual(['control.sock']);
  await running.close();
  await store.close();
  expect(await readdir(dataDir)).toEqual([]);
});

it('a move takes everything to an empty place, while no bot runs', async () => {
  const [from, to] = await Promise.all([1, 2].map(aServer));
  if (!from || !to) throw new Error('there should be two databases');
  const bot = await openServer(from.databaseUrl, () => {});
  await aFamily(bot, await aClass(bot));
  const rows = await dumpAll(bot);
  expect(await bot.peers.leads('plan')).toBe(true);
  expect(await toldOf(move(from, { to, now }, log))).toMatch(/^A bot runs on this database/);
  await bot.close();
  const heard: [number, number][] = [];
  const onProgress = (done: number, all: number) => void heard.push([done, all]);
  const moved = await move(from, { to, now, onProgress }, log);
  expect(moved).toMatchObject({ upgraded: false, unknown: 0, erased: 0 });
  expect(heard.at(-1)).toEqual([moved.backup.rows, moved.backup.rows]);
  const store = await openServer(to.databaseUrl, () => {});
  expect(await dumpAll(store)).toEqual(rows);
  await store.close();
  const file = inFolder('running.gz');
  expect(await toldOf(restore(to, { file, now }, log))).toMatch(/^The database is not empty/);
});

const aServer = async () => ({ databaseUrl: await createDatabase(), dataDir: inFolder('unused') });

it('a bot that fails at it says so, and leaves no file', async () => {
  const dataDir = await mkdtemp(join(folder, 'deaf-'));
  const deaf = createServer((_, response) => response.writeHead(500).end());
  await new Promise<void>((done) => deaf.listen(controlIn(dataDir), done));
  const file = inFolder('deaf.gz');
  const told = await toldOf(backUp({ databaseUrl: undefined, dataDir }, { file, now }, log));
  expect(told).toBe('The running bot could not do it. Its log says why.');
  await expect(access(file)).rejects.toThrow('ENOENT');
  await new Promise((done) => deaf.close(done));
});

function statusOf(socketPath: string, path: string): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    get({ socketPath, path }, (response) => {
      response.resume();
      resolve(response.statusCode);
    }).on('error', reject);
  });
}
