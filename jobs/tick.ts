import { listRunningClasses, problemOf } from '../db/index.ts';
import { classDayAt } from './class-day.ts';
import { planDigest } from './plan-digests.ts';
import { planEvenings } from './plan-evenings.ts';
import { planNudges } from './plan-nudges.ts';
import { planPace } from './plan-pace.ts';
import { planReminders } from './plan-reminders.ts';
import { planRetention } from './plan-retention.ts';
import { planTerm } from './plan-term.ts';
import type { PlanDeps } from './ports.ts';
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
  const guarded = async (fields: Readonly<Record<string, unknown>>, work: () => Promise<void>) => {
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
  for (const schoolClass of await listRunningClasses(deps.store)) {
    const classId = schoolClass.id;
    const look = () => classDayAt(deps.store, schoolClass, deps.clock.now());
    // Term and pace before the evenings, which are made by the plan in force on the days the drill comes.
    await guarded({ classId, step: 'term' }, async () => {
      await planTerm(deps, schoolClass);
    });
    await guarded({ classId, step: 'pace' }, async () => {
      await planPace(deps, await look());
    });
    await guarded({ classId, step: 'evenings' }, async () => {
      report.evenings += await planEvenings(deps, await look());
    });
    await guarded({ classId, step: 'nudges' }, async () => {
      report.nudges += await planNudges(deps, await look());
    });
    await guarded({ classId, step: 'digest' }, async () => {
      report.digests += await planDigest(deps, await look());
    });
  }
  return { ...report, ...swept };
}
