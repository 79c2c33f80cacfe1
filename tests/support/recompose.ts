import { storedDrill, storedRung } from '../../db/evenings/drill-json.ts';
import { currentMarks, type Store } from '../../db/index.ts';
import { storedPlan } from '../../db/plans/plan-json.ts';
import {
  type Drill,
  type RungId,
  rebuildEvening,
  rebuildMemory,
  type SchoolDay,
} from '../../drills/index.ts';
import { type RawRow, readTable } from './raw-rows.ts';

/** A stored drill beside what the rows of before its day give. */
export interface Recomposed {
  readonly stored: Drill;
  readonly rebuilt: Drill;
}

/**
 * Composes a child's evening of a day once more from what the database holds: the plan and seed it was made with, the marks and
 * run results of earlier days, and the drill's own version and variant.
 */
export async function recompose(
  store: Store,
  childId: string,
  day: SchoolDay,
): Promise<Recomposed> {
  const evenings = (await readTable(store, 'evening')).filter((row) => row.child_id === childId);
  const row = evenings.find((evening) => evening.day === day);
  if (!row) throw new Error(`no evening on ${day}`);
  const plans = await readTable(store, 'week_plan');
  const marks = await currentMarks(store, childId);
  const stored = storedDrill(row.drill);
  const rebuilt = rebuildEvening(stored, {
    plan: storedPlan(plans.find(({ id }) => id === row.plan_id)?.plan),
    memory: rebuildMemory(marks.filter((mark) => mark.day < day)),
    lastStarts: await startsBefore(store, evenings, day),
    today: day,
    seed: String(row.seed),
  });
  return { stored, rebuilt };
}

async function startsBefore(
  store: Store,
  evenings: readonly RawRow[],
  day: SchoolDay,
): Promise<Map<RungId, number>> {
  const earlier = evenings.filter((evening) => String(evening.day) < day);
  const runs = await readTable(store, 'run_result');
  const inOrder = earlier
    .toSorted((one, other) => String(one.day).localeCompare(String(other.day)))
    .flatMap((evening) => runs.filter((run) => run.evening_id === evening.id));
  return new Map(inOrder.map((run) => [storedRung(String(run.rung)), Number(run.start)]));
}
