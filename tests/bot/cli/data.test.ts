import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { knowBot, listChildren, type OpenStore } from '../../../db/index.ts';
import { aBot } from '../../support/an-inbox.ts';
import { aCli, dataOf, type RunCli } from '../../support/cli-runs.ts';
import { aChild, aClass, aFamily, type Classroom } from '../../support/people.ts';
import { createDatabase, embedded } from '../../support/stores.ts';

const NOBODY = '019a0000-0000-7000-8000-0000000000c1';
let folder: string;
let store: OpenStore;
let classroom: Classroom;
let childId: string;
let run: RunCli;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'suppersums-data-'));
  store = await embedded.open();
  run = aCli({}, { store });
  await knowBot(store, { botId: 0, username: 'harbour_lane_bot' });
  classroom = await aClass(store);
  childId = (await aFamily(store, classroom)).child.id;
  await aChild(store, classroom, 'Robin');
});
afterAll(async () => {
  await store.close();
  await rm(folder, { recursive: true, force: true });
});

describe('move-class', () => {
  it('lists classes with the bot each belongs to', async () => {
    const { out } = await run('move-class');
    expect(out).toContain(`${classroom.scope.classId}  bot 0 @harbour_lane_bot  Kingfisher class`);
    const data = dataOf(await run('move-class', '--json'));
    expect(data).toHaveProperty('classes.0.classId', classroom.scope.classId);
  });

  it('moves no class to a bot that never ran, and none that is not there', async () => {
    const bot = await run('move-class', classroom.scope.classId, '77');
    expect(bot).toMatchObject({ code: 1, err: expect.stringContaining('No bot 77 has run') });
    const unknown = await run('move-class', NOBODY, '0');
    expect(unknown).toMatchObject({ code: 1, err: expect.stringContaining('There is no class') });
    const same = await run('move-class', classroom.scope.classId, '0');
    expect(same).toMatchObject({ code: 0, out: expect.stringContaining('@harbour_lane_bot now') });
  });
});

it('dead letters are listed, tried again and given up', async () => {
  expect((await run('dead-letters')).out).toBe('Nothing has failed for good.');
  const bot = aBot(() => store);
  await bot.receive(1, 2);
  await bot.claim();
  for (const update of [1, 2]) await bot.setAside(update);
  const ids = [1, 2].map((update) => `${bot.botId}/${update}`);
  const { out } = await run('dead-letters', 'list');
  expect(out.split('\n').map((line) => line.split('  ')[0])).toEqual(ids);
  expect(dataOf(await run('dead-letters', '--json'))).toHaveProperty('updates.1.updateId', 2);
  const [first = '', second = ''] = ids;
  expect((await run('dead-letters', 'replay', first)).out).toContain('tried again');
  expect((await run('dead-letters', 'drop', second)).out).toBe('It is given up.');
  const gone = await run('dead-letters', 'drop', NOBODY);
  expect(gone).toMatchObject({ code: 1, out: '', err: expect.stringContaining('no dead letter') });
});

describe('rebuild and erase', () => {
  it('rebuild goes through every child', async () => {
    const data = dataOf(await run('rebuild', '--json'));
    expect(data).toEqual({ children: expect.any(Number) });
  });

  it('erase deletes a child, and says when there was none', async () => {
    const { code, out } = await run('erase', childId.toUpperCase());
    expect({ code, out }).toEqual({ code: 0, out: expect.stringContaining(childId) });
    expect((await listChildren(store, classroom.scope)).map(({ nickname }) => nickname)).toEqual([
      'Robin',
    ]);
    const again = await run('erase', childId);
    expect({ ...again }).toMatchObject({ code: 1, out: '', err: expect.stringContaining(childId) });
  });
});

it('backup, its check, restore and move carry a class from server to server', async () => {
  const [from, to, third] = [
    await createDatabase(),
    await createDatabase(),
    await createDatabase(),
  ];
  const at = (url: string) => aCli({ DATABASE_URL: url });
  const file = join(folder, 'week.gz');
  expect(await at(from)('backup', file)).toMatchObject({
    code: 0,
    out: expect.stringContaining('is written'),
  });
  const whole = await at(from)('backup', file, '--check');
  expect(whole).toMatchObject({ code: 0, out: expect.stringContaining('is whole') });
  expect(await at(from)('backup', file)).toMatchObject({ code: 1, out: '' });
  expect(dataOf(await at(to)('restore', file, '--json'))).toHaveProperty('erased', 0);
  const moved = await at(to)('move', '--to', third);
  expect(moved).toMatchObject({ code: 0, out: expect.stringContaining('DATABASE_URL') });
  expect(moved.out).not.toContain(third);
  const list = join(folder, 'erased.json');
  expect(dataOf(await at(to)('erasures', list, '--json'))).toEqual({ file: list, erased: 0 });
  await writeFile(file, 'Pebble Path');
  expect(await at(to)('backup', file, '--check')).toMatchObject({ code: 1, out: '' });
});
