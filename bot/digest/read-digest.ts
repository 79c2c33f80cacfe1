import { digestDays, readWeek, type SchoolClass, type Store } from '../../db/index.ts';
import { type SchoolDay, summariseWeek, type WeekSummary } from '../../drills/index.ts';

/**
 * A class's week up to a digest day, computed from the marks as they stand now. `with_today` takes the day itself in, even
 * when the class's own digest comes earlier than its evening.
 */
export async function readDigest(
  store: Store,
  schoolClass: SchoolClass,
  day: SchoolDay,
  now: Date,
  span: 'as_set' | 'with_today' = 'as_set',
): Promise<WeekSummary> {
  const days = await digestDays(store, schoolClass, day, span);
  return summariseWeek(await readWeek(store, { classId: schoolClass.id, days, now }));
}
