import type { ShareDone } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { shortDate } from './words.ts';

/** Characters of a workbook's title that are shown in a list or on a button. */
export const TITLE_LENGTH = 24;

/** When something will be done; `never` stands for a day after all that were looked at. */
export function whenDone(day: ShareDone, never = say('book-words-never')): string {
  if (day === 'done') return say('book-words-done');
  return day === null ? never : say('book-words-about', { day: shortDate(day) });
}
