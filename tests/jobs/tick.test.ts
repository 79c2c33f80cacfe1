import { afterEach, expect, it } from 'vitest';
import { MEMORY_MODEL } from '../../drills/index.ts';
import { FRIDAY, openQuickStage, type QuickStage } from '../support/quick-stage.ts';
import { readTable, runSql } from '../support/raw-rows.ts';

let stage: QuickStage;

afterEach(() => stage.world.close());

it('a class with a fault costs no other class its evening, and is counted and logged', async () => {
  stage = await openQuickStage();
  const { store, app } = stage.world;
  await runSql(
    store,
    `insert into class (id, title, zone, weekdays, evening_time, nudge_time, digest_weekday, digest_time, times_since,
       digest_since, created_at)
     select gen_random_uuid(), 'Heron class', 'Mars/Base', weekdays, evening_time, nudge_time, digest_weekday,
       digest_time, times_since, digest_since, created_at from class limit 1`,
  );
  await stage.world.goTo(FRIDAY.evening);
  expect(await stage.received()).toEqual([1, 1, 1]);
  // Its families' pace, its evenings, its nudges and its digest.
  expect((await app.engine.tick()).failures).toBe(4);
  const faulty = (await readTable(store, 'class')).find((row) => row.zone === 'Mars/Base');
  const logged = stage.world.logged.filter((line) => line.event === 'planning_failed');
  expect(new Set(logged.map((line) => line.fields.classId))).toEqual(new Set([faulty?.id]));
});

it('a memory row that cannot be read costs nobody an evening: it is folded anew from the marks', async () => {
  stage = await openQuickStage();
  const broken = stage.school.families[0]?.childId ?? '';
  await runSql(
    stage.world.store,
    `insert into fact_memory values ('${broken}', 'no such fact', 1, 1, 1, '2026-09-17', true, '${MEMORY_MODEL.name}', '{0}')`,
  );
  await stage.world.goTo(FRIDAY.evening);
  expect(await stage.received()).toEqual([1, 1, 1]);
  await stage.world.goTo(FRIDAY.digest);
  expect(await stage.ledger('digest')).toEqual(['sent']);
  expect(stage.events()).not.toContain('evening_not_planned');
});

it('one child whose evening cannot be written costs no other child its evening, nor the class its digest', async () => {
  stage = await openQuickStage();
  const { store } = stage.world;
  const broken = stage.school.families[0]?.childId ?? '';
  await runSql(store, `alter table evening add constraint refused check (child_id <> '${broken}')`);
  try {
    await stage.world.goTo(FRIDAY.evening);
    expect(await stage.received()).toEqual([0, 1, 1]);
    await stage.world.goTo(FRIDAY.digest);
    expect(await stage.ledger('digest')).toEqual(['sent']);
    expect(stage.events()).toContain('evening_not_planned');
  } finally {
    // The next test may be given the same database.
    await runSql(store, 'alter table evening drop constraint refused');
  }
});
