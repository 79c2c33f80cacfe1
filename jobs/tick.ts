import {
  claimLook,
  endLook,
  listClassesToLook,
  nextLook,
  problemOf,
  readLooked,
} from '../db/index.ts';
import { classDayAt } from './class-day.ts';
import { planDigest } from './plan-digests.ts';
import { planEvenings } from './plan-evenings.ts';
import { planNudges } from './plan-nudges.ts';
import { planPace } from './plan-pace.ts';
import { planReminders } from './plan-reminders.ts';
import { planRetention } from './plan-retention.ts';
import { planTerm } from './plan-term.ts';
import type { PlanDeps, Planned } from './ports.ts';
import { sweep } from './sweep.ts';

/** What one tick did, in messages owed. `failures` counts classes whose planning threw. */
export interface TickReport {
  readonly evenings: number;
  readonly reminders: number;
  readonly nudges: number;
  readonly digests: number;
  readonly abandoned: number;
  readonly woken: number;
  readonly failures: number;
}

/**
 * Looks at the clock once and plans everything that is due. The clock job calls it each minute; it holds no state and may run
 * twice, late, or in two processes at once, with the same result.
 */
export async function tick(deps: PlanDeps): Promise<TickReport> {
  const report = { evenings: 0, reminders: 0, nudges: 0, digests: 0, failures: 0 };
  const swept = { abandoned: 0, woken: 0 };
  // One step or class with a fault must not cost the others their evening.
  const guarded: Guarded = async (fields, work) => {
    try {
      await work();
    } catch (error) {
      report.failures += 1;
      deps.log.error({ ...fields, problem: problemOf(error) }, 'planning_failed');
    }
  };
  await guarded({ step: 'sweep' }, async () => {
    Object.assign(swept, await sweep(deps));
  });
  await guarded({ step: 'retention' }, () => planRetention(deps));
  await guarded({ step: 'reminders' }, async () => {
    report.reminders += await planReminders(deps);
  });
  for (const { id } of await listClassesToLook(deps.store, deps.clock.now())) {
    await guarded({ classId: id, step: 'look' }, () => lookAtClass(deps, { id, report, guarded }));
  }
  return { ...report, ...swept };
}

/** Does one piece of work; what goes wrong with it is counted and logged, and costs nothing else. */
type Guarded = (
  fields: Readonly<Record<string, unknown>>,
  work: () => Promise<void>,
) => Promise<void>;

interface Look {
  readonly id: string;
  readonly report: Counts;
  readonly guarded: Guarded;
}

/** Counts of a tick that grow class by class. */
interface Counts {
  evenings: number;
  nudges: number;
  digests: number;
  failures: number;
}

/**
 * Plans what is due in one class, and notes when something may next be: by the clock, or as soon as the planners expect it. A
 * look with a fault is not ended, and so happens again at the next tick.
 */
async function lookAtClass(deps: PlanDeps, { id, report, guarded }: Look): Promise<void> {
  const { store, clock } = deps;
  const now = clock.now();
  const begun = await claimLook(store, id);
  if (!begun) return;
  const schoolClass = readLooked(begun);
  const faults = report.failures;
  const expected: Date[] = [];
  const expect = ({ owed, again }: Planned) => {
    if (again) expected.push(again);
    return owed;
  };
  const today = () => classDayAt(store, schoolClass, clock.now());
  const step = (name: string, work: () => Promise<void>) =>
    guarded({ classId: id, step: name }, work);
  // Term and pace before the evenings, which are made by the plan in force on the days the drill comes.
  await step('term', () => planTerm(deps, schoolClass));
  await step('pace', async () => {
    await planPace(deps, await today());
  });
  await step('evenings', async () => {
    report.evenings += expect(await planEvenings(deps, await today()));
  });
  await step('nudges', async () => {
    report.nudges += expect(await planNudges(deps, await today()));
  });
  await step('digest', async () => {
    report.digests += await planDigest(deps, await today());
  });
  if (report.failures > faults) return;
  expected.push(await nextLook(store, schoolClass, now));
  const next = new Date(Math.min(...expected.map((at) => at.getTime())));
  await endLook(store, begun.look, { next, now });
}
