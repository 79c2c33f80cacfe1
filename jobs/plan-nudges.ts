import {
  CLASS_LIMITS,
  instantAt,
  listNudgeCandidates,
  listPastEvenings,
  type NudgeCandidate,
  oweAgain,
  storedTime,
} from '../db/index.ts';
import { addDays, decideNudge, SILENCE_DAYS, silentRun } from '../drills/index.ts';
import type { ClassDay } from './class-day.ts';
import { NOTHING, type PlanDeps, type Planned } from './ports.ts';

const MINUTE_MS = 60_000;
const DECLINED_MS = 15 * MINUTE_MS;
const GAP_MS = CLASS_LIMITS.nudgeGapMinutes * 60_000;

/**
 * Plans the one nudge for evenings that nobody has marked by nudge time. Whether a family gets one is decided in drills/; here
 * it is only looked up and written down.
 */
export async function planNudges(deps: PlanDeps, today: ClassDay): Promise<Planned> {
  const now = deps.clock.now();
  const { schoolClass, day } = today;
  const nudgeAt = instantAt(day, schoolClass.nudgeTime, schoolClass.zone);
  if (!today.isSchoolDay || now < nudgeAt || now >= today.quietAt) return NOTHING;
  const latest = instantAt(day, storedTime(CLASS_LIMITS.nudgeTo), schoolClass.zone);
  const all = await listNudgeCandidates(deps.store, { classId: schoolClass.id, day, now });
  const again = nextToLookAt(all, { now, latest });
  const candidates = all.filter((candidate) => {
    const earliest = candidate.reachedAt.getTime() + GAP_MS;
    return !candidate.waiting && earliest <= now.getTime() && earliest <= latest.getTime();
  });
  if (candidates.length === 0) return { owed: 0, again };
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
  return { owed, again };
}

/**
 * When an evening that cannot be decided yet can be: it came late, is still on its way, waits for a reminder that its family
 * may overtake, or was declined and may be started after all. Null when everything is decided.
 */
function nextToLookAt(
  candidates: readonly NudgeCandidate[],
  { now, latest }: { now: Date; latest: Date },
): Date | null {
  let next: number | null = null;
  for (const { marked, declined, alreadyNudged, waiting, reminded, reachedAt } of candidates) {
    if (marked || alreadyNudged) continue;
    const earliest = reachedAt.getTime() + GAP_MS;
    const isLater = earliest > now.getTime() && earliest <= latest.getTime();
    if (!isLater && !waiting && !reminded && !declined) continue;
    // A family that has declined seldom goes on after all.
    const soon = now.getTime() + (declined ? DECLINED_MS : MINUTE_MS);
    const at = isLater && !waiting ? earliest : soon;
    next = Math.min(next ?? at, at);
  }
  return next === null ? null : new Date(next);
}
