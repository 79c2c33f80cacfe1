import {
  eraseChild,
  isUpkeepDue,
  listErasable,
  noteUpkeepDone,
  purgeRecords,
  summariseMarks,
} from '../db/index.ts';
import type { PlanDeps } from './ports.ts';

/** Children erased or summarised in one tick, and rows of a kind deleted in one. */
const CHILDREN_AT_ONCE = 20;
const ROWS_AT_ONCE = 1000;

/**
 * Deletes what is not to be kept any longer: children whose day to take back an erasure is over or who left a month ago, at each
 * tick; marks after their school year and records, a batch a tick until nothing is left, and then not again for a day. Runs
 * as often as you like.
 */
export async function planRetention({ store, clock, log }: PlanDeps): Promise<void> {
  const now = clock.now();
  let erased = 0;
  for (const childId of await listErasable(store, { now, limit: CHILDREN_AT_ONCE })) {
    if (await eraseChild(store, { childId, now })) erased += 1;
  }
  if (erased > 0) log.info({ erased }, 'children_erased');
  if (!(await isUpkeepDue(store, 'retention', now))) return;
  const summarised = await summariseMarks(store, { now, limit: CHILDREN_AT_ONCE });
  const purged = await purgeRecords(store, { now, limit: ROWS_AT_ONCE });
  if (summarised + purged > 0) log.info({ summarised, purged }, 'records_purged');
  else await noteUpkeepDone(store, 'retention', now);
}
