import { type Break, daysBetween, parseSchoolDay } from './school-day.ts';

/**
 * A holiday as read from one line, or why it could not be read. `value` is what to show back: the whole line for
 * `shape`, the date that does not exist for `date`, the earlier last day for `order`, the number of days for `long`.
 */
export type ParsedBreak =
  | { readonly break: Break; readonly title: string }
  | { readonly problem: 'shape' | 'date' | 'order' | 'long'; readonly value: string };

const LONGEST_BREAK_DAYS = 120;
const DEFAULT_TITLE = 'Break';
const DATE = String.raw`\d{4}-\d{1,2}-\d{1,2}`;
const BREAK_LINE = new RegExp(`^(${DATE})(?:\\s*(?:to|-|–)\\s*(${DATE}))?(?:[:,]?\\s+(.+))?$`, 'i');
/** What is left of a range whose second date could not be read. */
const HALF_A_RANGE = /^(?:to\b|[-–]\s*\d)/i;

/**
 * Reads a holiday from one line: two dates with `to` or a dash between them, or a single date, then a title.
 * The title is optional. A break of more than 120 days is refused, because it is nearly always a mistyped year.
 *
 * @example
 * parseBreak('2026-10-12 to 2026-10-16 Half term');
 * // { break: { first: '2026-10-12', last: '2026-10-16' }, title: 'Half term' }
 */
export function parseBreak(text: string): ParsedBreak {
  const line = text.trim().replaceAll(/\s+/g, ' ');
  const match = BREAK_LINE.exec(line);
  const firstText = match?.[1];
  const rest = match?.[3] ?? '';
  if (firstText === undefined || HALF_A_RANGE.test(rest)) return { problem: 'shape', value: line };
  const lastText = match?.[2] ?? firstText;
  const first = parseSchoolDay(firstText);
  if (first === null) return { problem: 'date', value: firstText };
  const last = parseSchoolDay(lastText);
  if (last === null) return { problem: 'date', value: lastText };
  if (last < first) return { problem: 'order', value: last };
  const days = daysBetween(first, last) + 1;
  if (days > LONGEST_BREAK_DAYS) return { problem: 'long', value: String(days) };
  return { break: { first, last }, title: rest.replace(/^[-–:,]\s*/, '') || DEFAULT_TITLE };
}
