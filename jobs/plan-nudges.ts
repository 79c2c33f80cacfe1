import {
  CLASS_LIMITS,
  instantAt,
  listNudgeCandidates,
  listPastEvenings,
  oweAgain,
  storedTime,
} from '../db/index.ts';
import { addDays, decideNudge, SILENCE_DAYS, silentRun } from '../drills/index.ts';
import type { ClassDay } from './class-day.ts';
import type { PlanDeps } from './ports.ts';

const GAP_MS = CLASS_LIMITS.nudgeGapMinutes * 60_000;

/**
 * Plans the one nudge for evenings that nobody has marked by nudge time. Whether a family gets one is decided in drills/; here
 * it is only looked up and written down. Returns how many messages are owed.
 */
export async function planNudges(deps: PlanDeps, today: ClassDay): Promise<number> {
  const now = deps.clock.now();
  const { schoolClass, day } = today;
  const nudgeAt = instantAt(day, schoolClass.nudgeTime, schoolClass.zone);
  if (!today.isSchoolDay || now < nudgeAt || now >= today.quietAt) return 0;
  const latest = instantAt(day, storedTime(CLASS_LIMITS.nudgeTo), schoolClass.zone);
  const candidates = (
    await listNudgeCandidates(deps.store, { classId: schoolClass.id, day, now })
  ).filter((candidate) => {
    const earliest = candidate.reachedAt.getTime() + GAP_MS;
    return !candidate.waiting && earliest <= now.getTime() && earliest <= latest.getTime();
  });
  if (candidates.length === 0) return 0;
  const past = await listPastEvenings(deps.store, {
    classId: schoolClass.id,
    from: addDays(day, -SILENCE_DAYS),
    before: day,
  });
  let owed = 0;
  for (const candidate of candidates) {
    const { childId, heard } = candidate;
    const own = past.filter(
      (evening) => evening.childId === childId && (heard === null || evening.day > heard),
    );
    const decision = decideNudge({ ...candidate, silentRunBefore: silentRun(own) });
    if (!decision.nudge) continue;
    owed += await oweAgain(deps.store, {
      kind: 'nudge',
      eveningId: candidate.eveningId,
      childId: candidate.childId,
      classId: schoolClass.id,
      day,
      expiresAt: today.quietAt,
      now,
    });
  }
  return owed;
}
