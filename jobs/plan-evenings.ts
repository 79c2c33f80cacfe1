import {
  CLASS_LIMITS,
  getActivePlan,
  instantAt,
  listDueChildren,
  planEvening,
  problemOf,
} from '../db/index.ts';
import { minutesOf, type TimeOfDay, timeOfDayFrom } from '../drills/index.ts';
import type { ClassDay } from './class-day.ts';
import { NOTHING, type PlanDeps, type Planned } from './ports.ts';

/**
 * Plans the evening of every child whose time has come. Runs as often as you like: a child has one evening a day by a unique
 * key, not by this function's memory.
 *
 * Late by an outage, an evening still goes out for three hours and never in quiet hours; after that the day is skipped, and
 * the family is not called silent for it. An evening that could not be written is tried at each tick until then.
 */
export async function planEvenings(deps: PlanDeps, today: ClassDay): Promise<Planned> {
  const now = deps.clock.now();
  if (!today.isSchoolDay || now >= today.quietAt) return NOTHING;
  const { schoolClass, day, time } = today;
  const due = await listDueChildren(deps.store, {
    classId: schoolClass.id,
    day,
    after: latestTimeThatIsTooLate(time),
    until: time,
  });
  if (due.length === 0) return NOTHING;
  const plan = await getActivePlan(deps.store, schoolClass.id);
  if (!plan) return NOTHING;
  let owed = 0;
  let again: Date | null = null;
  for (const child of due) {
    const dueAt = instantAt(day, child.eveningTime, schoolClass.zone);
    // What is changed or joined after tonight's time has come counts from the next evening on, and so does a plan.
    if (plan.since > dueAt || child.since > dueAt) continue;
    const expiresAt = new Date(Math.min(dueAt.getTime() + LATE_MS, today.quietAt.getTime()));
    const evening = { childId: child.id, classId: schoolClass.id, day, plan, expiresAt, now };
    try {
      owed += await planEvening(deps.store, evening);
    } catch (error) {
      // One child with an unreadable row must not cost the class its evening.
      again = now;
      deps.log.error({ childId: child.id, problem: problemOf(error) }, 'evening_not_planned');
    }
  }
  return { owed, again };
}

const LATE_MS = CLASS_LIMITS.eveningLateMinutes * 60_000;

/** Null early in the day, when no time of today is too late yet. */
function latestTimeThatIsTooLate(time: TimeOfDay): TimeOfDay | null {
  const minutes = minutesOf(time) - CLASS_LIMITS.eveningLateMinutes;
  return minutes < 0 ? null : timeOfDayFrom(minutes);
}
