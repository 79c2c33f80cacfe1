import { addDays, type SchoolDay, schoolDaysIn } from '../../drills/index.ts';
import { listBreaks } from '../classes/breaks.ts';
import type { SchoolClass } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';

/**
 * The school days a digest covers: the seven days that end with the digest's own day, or with the day before when the digest
 * comes earlier than the class's evening (`with_today` always ends with the day itself).
 */
export async function digestDays(
  store: Store,
  schoolClass: SchoolClass,
  digestDay: SchoolDay,
  span: 'as_set' | 'with_today' = 'as_set',
): Promise<SchoolDay[]> {
  const includesDay = span === 'with_today' || schoolClass.digestTime > schoolClass.eveningTime;
  const last = includesDay ? digestDay : addDays(digestDay, -1);
  const first = addDays(last, -6);
  const breaks = await listBreaks(store, schoolClass.id, first);
  return schoolDaysIn(first, last, { weekdays: schoolClass.weekdays, breaks });
}
