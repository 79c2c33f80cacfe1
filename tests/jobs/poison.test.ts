import { afterEach, expect, it } from 'vitest';
import { listDeadLetters, replayDeadLetter } from '../../db/index.ts';
import { FRIDAY, openQuickStage, type QuickStage } from '../support/quick-stage.ts';
import { readTable, runSql } from '../support/raw-rows.ts';

let stage: QuickStage;

afterEach(() => stage.world.close());

it('a message that fails whenever it is tried is kept for the operator, and holds up no other', async () => {
  stage = await openQuickStage();
  const { store, app, client, now, settle } = stage.world;
  await client.moveTo(new Date(FRIDAY.evening));
  await app.engine.tick();
  // One drill cannot be read, and its job has been tried as often as it may.
  const childId = stage.school.families[1]?.childId;
  const [drill] = (await readTable(store, 'evening')).filter((row) => row.child_id === childId);
  await runSql(store, `update evening set drill = '{}' where id = '${drill?.id}'`);
  await runSql(store, 'update pgboss.job set retry_count = retry_limit');
  await settle();
  expect((await stage.ledger('evening')).sort()).toEqual(['failed', 'sent', 'sent']);
  expect(await stage.received()).toEqual([1, 0, 1]);
  expect(stage.events()).toContain('delivery_crashed');
  const [dead, ...more] = (await listDeadLetters(store)).messages;
  expect(more).toEqual([]);
  expect(dead).toMatchObject({ kind: 'evening', problem: expect.stringMatching(/^crashed \w+$/) });

  await runSql(
    store,
    `update evening set drill = '${JSON.stringify(drill?.drill)}' where id = '${drill?.id}'`,
  );
  await replayDeadLetter(store, { ledgerId: dead?.ledgerId ?? '' }, now());
  await settle();
  expect(await stage.received()).toEqual([1, 1, 1]);
  expect((await listDeadLetters(store)).messages).toEqual([]);
});
