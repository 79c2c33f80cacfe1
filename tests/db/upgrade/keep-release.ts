import { chmod, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { DEMO_FAMILIES, DEMO_TEACHER, loadDemoClass } from '../../../bot/roots/demo-class.ts';
import { inventedChild } from '../../../bot/roots/demo-families.ts';
import { Phone } from '../../../bot/roots/phone.ts';
import { openStage, type Stage } from '../../../bot/roots/stage.ts';
import { BUTTONS } from '../../../bot/texts/buttons.ts';
import {
  addBreak,
  eraseChild,
  getPlans,
  listBooks,
  listChildren,
  pauseDrills,
  setAdjustment,
  setGreeting,
  setPage,
  startScheme,
  type TeacherScope,
  writeBackup,
} from '../../../db/index.ts';
import packed from '../../../package.json' with { type: 'json' };
import { day } from '../../support/term.ts';

const RELEASES = join(import.meta.dirname, '..', '..', 'fixtures', 'releases');
const MONDAY = day('2026-09-14');

/**
 * Keeps what a backup of this release looks like, so that every later release is tried on it. Run it when a release is made,
 * and never again for that release: what is released stays as it was.
 */
async function main(): Promise<void> {
  const stage = await openStage(new Date(`${MONDAY}T08:00:00Z`));
  const scope = await loadDemoClass({ ...stage, zone: 'Europe/London' });
  await fillTables(stage, scope);
  await stage.goTo(new Date(`${MONDAY}T16:30:00Z`));
  await playEvening(stage);
  const file = join(RELEASES, `v${packed.version}.gz`);
  await rm(file, { force: true });
  const { tables } = await writeBackup(stage.store, { file, madeAt: stage.clock.now() });
  await chmod(file, 0o644);
  await stage.close();
  const empty = tables.filter(({ rows }) => rows === 0).map(({ name }) => name);
  process.stdout.write(`${file} is kept. Tables without rows: ${empty.join(', ')}.\n`);
  process.exit(0);
}

/** What a demo class has none of: as many tables as can be are to have rows. */
async function fillTables({ store, clock }: Stage, scope: TeacherScope): Promise<void> {
  const now = clock.now();
  const last = day('2026-10-30');
  const half = { first: day('2026-10-26'), last };
  await addBreak(store, scope, { break: half, title: 'Autumn break', now });
  await setGreeting(store, scope, {
    words: { kind: 'text', body: 'A good week to you all.', botId: null },
    times: { evenings: 'first', first: MONDAY, last },
    now,
  });
  const plan = (await getPlans(store, scope)).active?.plan;
  if (plan)
    await startScheme(store, scope, { firstDay: MONDAY, weeks: [plan], instead: null, now });
  const [one, two, three] = await listChildren(store, scope);
  const [book] = await listBooks(store, scope);
  if (!one || !two || !three || !book) throw new Error('the demo class has children and a book');
  await setAdjustment(store, scope, { number: one.number, change: { untimed: true }, now });
  await setPage(store, scope, { childId: two.id, bookId: book.id, page: book.firstPage + 3, now });
  await eraseChild(store, { childId: three.id, now });
  const [helper] = await store.db.query.helper.findMany({ limit: 1 });
  if (helper) await pauseDrills(store, { helperId: helper.id, until: day('2026-09-16'), now });
}

async function playEvening(stage: Stage): Promise<void> {
  for (const { id, helps } of DEMO_FAMILIES.slice(3, 6)) {
    const phone = new Phone(stage, id);
    for (const nickname of helps) await phone.playEvening(inventedChild(nickname, 0));
  }
  const halfway = new Phone(stage, DEMO_FAMILIES[6]?.id ?? 0);
  await halfway.tap(BUTTONS.start);
  await stage.client.openLink(halfway.id, stage.app.linkOf('nothing-opens-with-this'));
  await new Phone(stage, DEMO_TEACHER).say('/newclass');
}

await main();
