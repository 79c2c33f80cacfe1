declare const timeOfDayBrand: unique symbol;

/** A wall-clock time in a class's own time zone, `HH:MM` on the 24-hour clock. */
export type TimeOfDay = string & { readonly [timeOfDayBrand]: true };

const MINUTES_PER_DAY = 1440;
const TWENTY_FOUR_HOUR = /^(\d{1,2})[:.h](\d{2})$/;
const TWELVE_HOUR = /^(\d{1,2})(?:[:.](\d{2}))?\s*([ap])\.?m\.?$/;

/**
 * Reads a time as families type it: `17:30`, `7:05`, `17.30`, `17h30`, `5:30 pm`, `5pm`, in either case.
 * Null for anything else. A bare `5` is refused, because nobody can tell morning from evening.
 *
 * @example
 * parseTimeOfDay('5:30 pm'); // '17:30'
 */
export function parseTimeOfDay(text: string): TimeOfDay | null {
  const typed = text.trim().toLowerCase();
  const exact = TWENTY_FOUR_HOUR.exec(typed);
  if (exact !== null) return spell(Number(exact[1]), Number(exact[2]));
  const halved = TWELVE_HOUR.exec(typed);
  if (halved === null) return null;
  const hour = Number(halved[1]);
  if (hour < 1 || hour > 12) return null;
  // Twelve counts as zero on a twelve-hour clock: 12 am is midnight, 12 pm is noon.
  return spell((hour % 12) + (halved[3] === 'p' ? 12 : 0), Number(halved[2] ?? 0));
}

/**
 * Minutes since midnight, 0 to 1439.
 *
 * @example
 * minutesOf(time); // 1050 when time is '17:30'
 */
export function minutesOf(time: TimeOfDay): number {
  return Number(time.slice(0, 2)) * 60 + Number(time.slice(3));
}

/**
 * The time `minutes` after midnight. Throws RangeError outside 0 to 1439 or for a part of a minute.
 *
 * @example
 * timeOfDayFrom(1050); // '17:30'
 */
export function timeOfDayFrom(minutes: number): TimeOfDay {
  const time = Number.isInteger(minutes) ? spell(Math.floor(minutes / 60), minutes % 60) : null;
  if (time === null || minutes < 0 || minutes >= MINUTES_PER_DAY) {
    throw new RangeError(`${minutes} is not a minute of the day`);
  }
  return time;
}

function spell(hour: number, minute: number): TimeOfDay | null {
  if (hour > 23 || minute > 59) return null;
  return `${String(hour).padStart(2, '0')}:${String(minute).padStart(2, '0')}` as TimeOfDay;
}
