import { digestDays, instantAt, isDigestOwed, oweDigest, type SchoolClass } from '../db/index.ts';
import { addDays, parseTimeOfDay, type SchoolDay, weekdayOf } from '../drills/index.ts';
import type { ClassDay } from './class-day.ts';
import type { PlanDeps } from './ports.ts';

/** A digest missed by an outage still comes on the two days after, until noon. */
const LATE_DAYS = 2;
const NOON = parseTimeOfDay('12:00');

/** Plans a class's digest once its day and time have come; a week without school days has none. Returns how many messages are owed. */
export async function planDigest(deps: PlanDeps, today: ClassDay): Promise<number> {
  const now = deps.clock.now();
  const { schoolClass } = today;
  const day = latestDigestDay(schoolClass, today.day, now);
  if (!day || !NOON) return 0;
  const expiresAt = instantAt(addDays(day, LATE_DAYS), NOON, schoolClass.zone);
  if (now >= expiresAt) return 0;
  if (await isDigestOwed(deps.store, { classId: schoolClass.id, day })) return 0;
  if ((await digestDays(deps.store, schoolClass, day)).length === 0) return 0;
  return oweDigest(deps.store, { classId: schoolClass.id, day, expiresAt, now });
}

/** The newest day whose digest time has passed since that time was set, if it is recent enough to be sent. */
function latestDigestDay(schoolClass: SchoolClass, today: SchoolDay, now: Date): SchoolDay | null {
  for (let back = 0; back <= LATE_DAYS; back += 1) {
    const day = addDays(today, -back);
    if (weekdayOf(day) !== schoolClass.digestWeekday) continue;
    const at = instantAt(day, schoolClass.digestTime, schoolClass.zone);
    if (at <= now && at > schoolClass.digestSince) return day;
  }
  return null;
}
