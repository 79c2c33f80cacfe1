import { access, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { move, restore } from '../../bot/roots/backups.ts';
import { createApp } from '../../bot/roots/create-app.ts';
import { openStore } from '../../bot/roots/open-store.ts';
import { Phone } from '../../bot/roots/phone.ts';
import { type OpenStore, openServer, restoreBackup, writeBackup } from '../../db/index.ts';
import { labelsOf } from '../support/phones.ts';
import { makeQuickSchool, type QuickSchool } from '../support/quick-school.ts';
import { dumpAll, readTable } from '../support/raw-rows.ts';
import { createDatabase, server } from '../support/stores.ts';
import { impatientPace, openWorld, smallPainter, type World } from '../support/world.ts';

const log = { info: () => {}, warn: () => {}, error: () => {} };

/** Half past five in London, when the class practises, and the hours around it: 16:30 in UTC. */
const WEEK = {
  start: '2026-09-14T09:00:00Z',
  monday: '2026-09-14T16:30:00Z',
  backup: '2026-09-15T16:00:00Z',
  tuesday: '2026-09-15T16:30:00Z',
  tuesdayNudge: '2026-09-15T18:00:00Z',
  restored: '2026-09-15T18:05:00Z',
  wednesday: '2026-09-16T16:30:00Z',
  friday: '2026-09-18T18:30:00Z',
} as const;

/** Moves what is in the new folder to a server. */
async function movesToServer(folder: string, store: OpenStore): Promise<void> {
  const rows = await dumpAll(store);
  await store.close();
  const from = { databaseUrl: undefined, dataDir: join(folder, 'rehearsal') };
  const to = { databaseUrl: await createDatabase(), dataDir: folder };
  await move(from, { to, now: new Date(WEEK.friday) }, log);
  const moved = await openServer(to.databaseUrl, () => {});
  expect(await dumpAll(moved)).toEqual(rows);
  await moved.close();
}

/** The same chat service, and another bot process on another database, whose clock only we move. */
async function goOn(world: World, store: OpenStore) {
  let instant = new Date(WEEK.start);
  const pace = impatientPace();
  const app = await createApp({
    ...{ store, clock: { now: () => instant }, pace },
    painter: smallPainter(),
    log,
    ...{ tokens: [world.rehearsal.token], apiRoot: world.rehearsal.apiRoot },
  });
  return {
    client: world.client,
    settle: app.settle,
    goTo: async (target: string) => {
      const before = instant;
      instant = new Date(target);
      await pace.sleep(instant.getTime() - before.getTime());
      await app.engine.tick();
      await app.settle();
    },
  };
}

/** How many messages of the bot lie on each phone: the family’s, then the teacher’s. */
async function counted({ client }: World, { families, teacher }: QuickSchool): Promise<number[]> {
  const phones = [...families.map(({ phones: [phone] }) => phone), teacher];
  const chats = await Promise.all(phones.map((phone) => client.chat(phone)));
  return chats.map((chat) => chat.filter(({ from }) => from === 'bot').length);
}

/** Monday is practised; on Tuesday a backup is made before the evening, and the bot runs on past it. */
async function untilTheFire(world: World, file: string): Promise<QuickSchool> {
  const school = await makeQuickSchool(world, { families: 1 });
  await world.goTo(WEEK.monday);
  await new Phone(world, school.families[0]?.phones[0] ?? 0).playEvening(() => []);
  await world.goTo(WEEK.backup);
  await writeBackup(world.store, { file, madeAt: world.now() });
  const [atBackup = 0] = await counted(world, school);
  await world.goTo(WEEK.tuesday);
  await world.goTo(WEEK.tuesdayNudge);
  // The evening and its nudge, of which the backup knows nothing.
  expect((await counted(world, school))[0]).toBe(atBackup + 2);
  return school;
}

/** Restores into a new folder as the operator does, and opens it as the bot then does. */
async function inNewFolder(folder: string, file: string): Promise<OpenStore> {
  const place = { databaseUrl: undefined, dataDir: join(folder, 'rehearsal') };
  await restore(place, { file, now: new Date(WEEK.restored) }, log);
  // Or a rehearsal would take it for a demo class half loaded, and throw it away.
  await access(join(place.dataDir, 'demo-loaded'));
  return openStore(place, log);
}

async function inNewDatabase(_folder: string, file: string): Promise<OpenStore> {
  const store = await server.open();
  await restoreBackup(store, { file, now: new Date(WEEK.restored) });
  return store;
}

const cases = [
  { name: 'the embedded database', open: inNewFolder },
  { name: 'a Postgres server', open: inNewDatabase },
];

describe.each(cases)('a backup from before the evening, on $name', ({ open }) => {
  it('restored after it prompts nobody again, and the week goes on with every mark', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'suppersums-restored-'));
    const file = join(folder, 'backup.gz');
    const world = await openWorld({ start: WEEK.start });
    const school = await untilTheFire(world, file);
    const marks = (await readTable(world.store, 'mark')).length;
    const before = await counted(world, school);
    const store = await open(folder, file);
    const after = await goOn(world, store);
    await after.goTo(WEEK.restored);
    expect(await counted(world, school)).toEqual(before);
    expect(await readTable(store, 'mark')).toHaveLength(marks);

    await after.goTo(WEEK.wednesday);
    const [family = 0, teacher = 0] = before;
    expect(await counted(world, school)).toEqual([family + 1, teacher]);
    const phone = new Phone(after, school.families[0]?.phones[0] ?? 0);
    expect(labelsOf(await phone.last())).toContain('Start');
    await phone.playEvening(() => []);
    expect((await readTable(store, 'mark')).length).toBe(2 * marks);
    await after.goTo(WEEK.friday);
    expect((await counted(world, school))[1]).toBe(teacher + 3);

    if (open === inNewFolder) await movesToServer(folder, store);
    else await store.close();
    await world.close();
    await rm(folder, { recursive: true, force: true });
  });
});
