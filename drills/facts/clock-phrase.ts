const HOURS = [
  'twelve',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
] as const;

/** How many minutes past, or short of, the hour: by the minute. */
const SPANS: ReadonlyMap<number, string> = new Map([
  [5, 'five'],
  [10, 'ten'],
  [15, 'quarter'],
  [20, 'twenty'],
  [25, 'twenty-five'],
  [30, 'half'],
]);

/**
 * A clock time as an English-speaking child says it. From 35 minutes on, the next hour is named.
 * Throws RangeError unless `minute` is a multiple of five and both are on the dial.
 *
 * @example
 * clockPhrase(12, 45); // 'quarter to one'
 */
export function clockPhrase(hour: number, minute: number): string {
  if (minute === 0) return `${hourName(hour)} o\u2019clock`;
  const past = SPANS.get(minute);
  if (past !== undefined) return `${past} past ${hourName(hour)}`;
  const to = SPANS.get(60 - minute);
  if (to === undefined) throw new RangeError(`no spoken time for ${minute} minutes`);
  return `${to} to ${hourName((hour % 12) + 1)}`;
}

function hourName(hour: number): string {
  const name = hour >= 1 ? HOURS[hour % 12] : undefined;
  if (name === undefined || hour > 12) throw new RangeError(`${hour} is not on a clock face`);
  return name;
}
