import { getClass, localTimeAt, type SchoolClass, type TeacherScope } from '../../db/index.ts';
import { addDays, parseSchoolDay, type SchoolDay, type WeekSummary } from '../../drills/index.ts';
import type { BotDeps } from '../deps.ts';
import { readDigest } from '../digest/read-digest.ts';

/** A week as a button asks for it, computed from the marks as they stand now. */
export interface DigestRead {
  readonly schoolClass: SchoolClass;
  readonly day: SchoolDay;
  readonly today: SchoolDay;
  readonly summary: WeekSummary;
}

/** The digest of a day, or that of the seven days up to today for `now` and for a day that cannot be. */
export async function digestFor(
  { store, clock }: BotDeps,
  scope: TeacherScope,
  asked: string,
): Promise<DigestRead> {
  const schoolClass = await getClass(store, scope);
  const now = clock.now();
  const { day: today } = localTimeAt(now, schoolClass.zone);
  const found = parseSchoolDay(asked);
  const day = found !== null && found <= today ? found : today;
  const span = found === null ? 'with_today' : 'as_set';
  return { schoolClass, day, today, summary: await readDigest(store, schoolClass, day, now, span) };
}

/** Whether a digest is of a week that another one has followed: what it proposes is over then. */
export function isOver({ day, today }: DigestRead): boolean {
  return addDays(day, 7) <= today;
}
