import { parseSchoolDay, type SchoolDay } from '../../../drills/index.ts';

/** A date written out in a test; a mistyped one fails the test at once. */
export function day(text: string): SchoolDay {
  const parsed = parseSchoolDay(text);
  if (parsed === null) throw new Error(`no such date: ${text}`);
  return parsed;
}
