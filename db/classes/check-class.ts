import { isLanguage, minutesOf, type TimeOfDay, type Weekday } from '../../drills/index.ts';
import { parseZone } from '../calendar/zone.ts';
import { AppError } from '../errors.ts';
import { type ClassGrade, checkClassGrade } from './class-grade.ts';
import { CLASS_LIMITS } from './class-limits.ts';
import { type SchoolClass, storedTime } from './school-class.ts';

/** What a class may be changed to. One that names no curriculum goes by none: `own`, without a grade; no language: English. */
export type ClassSettings = Omit<
  SchoolClass,
  'id' | 'digestSince' | 'language' | keyof ClassGrade
> &
  Partial<ClassGrade & Pick<SchoolClass, 'language'>>;

/**
 * Refuses settings that could not be honoured later; the last guard before a write. `what` of the error names the setting:
 * `title`, `zone`, `weekdays`, `evening time`, `nudge time`, `nudge too early`, `curriculum`, `grade` or `language`.
 */
export function checkClassSettings(settings: ClassSettings): Required<ClassSettings> {
  const title = settings.title.trim();
  if (!isTitle(title)) refuse('title');
  const zone = parseZone(settings.zone);
  if (!zone) refuse('zone');
  if (settings.weekdays.length === 0) refuse('weekdays');
  if (!isEveningTime(settings.eveningTime)) refuse('evening time');
  if (minutesOf(settings.nudgeTime) > minutesOf(storedTime(CLASS_LIMITS.nudgeTo))) {
    refuse('nudge time');
  }
  const gap = minutesOf(settings.nudgeTime) - minutesOf(settings.eveningTime);
  if (gap < CLASS_LIMITS.nudgeGapMinutes) refuse('nudge too early');
  const { curriculum = 'own', grade = null, language = 'en' } = settings;
  if (!isLanguage(language)) refuse('language');
  return {
    ...settings,
    ...checkClassGrade({ curriculum, grade }),
    title,
    language,
    zone: zone ?? '',
    weekdays: sorted(settings.weekdays),
  };
}

/** Whether a class may be called so. */
export function isTitle(title: string): boolean {
  const { length } = [...title.trim()];
  return length > 0 && length <= CLASS_LIMITS.titleLength;
}

/** Whether families may be sent their evening at this time. */
export function isEveningTime(time: TimeOfDay): boolean {
  const minutes = minutesOf(time);
  return (
    minutes >= minutesOf(storedTime(CLASS_LIMITS.eveningFrom)) &&
    minutes <= minutesOf(storedTime(CLASS_LIMITS.eveningTo))
  );
}

function sorted(weekdays: readonly Weekday[]): Weekday[] {
  return [...new Set(weekdays)].sort((a, b) => a - b);
}

function refuse(what: string): void {
  throw new AppError('invalid', what);
}
