import { ENOUGH_EVENINGS, type ShareDone } from '../../drills/index.ts';
import { shortDate } from './words.ts';

/** Characters of a workbook's title that are shown in a list or on a button. */
export const TITLE_LENGTH = 24;

/** How many evenings a date takes. */
export const ENOUGH = `${ENOUGH_EVENINGS} evenings with an answer about pages`;

/** When something will be done; `never` stands for a day after all that were looked at. */
export function whenDone(day: ShareDone, never = 'in more than a year'): string {
  if (day === 'done') return 'done';
  return day === null ? never : `about ${shortDate(day)}`;
}
