import { cleanNickname } from './nickname.ts';

/** A workbook as typed. */
export interface BookText {
  readonly title: string;
  readonly firstPage: number;
  readonly lastPage: number;
  readonly pagesADay: number;
}

// The words of all our languages together. What stands between the numbers tells them apart; the words are only passed over.
const PAGES = '(?:pages?|p[áa]ginas?|bladsye?|seiten?)';
const TO = '(?:-|–|to|tot|hasta|al?|bis|à|au)';
const A_DAY = String.raw`(?:a|per|pro|am|al|por|par|cada|elke)\s*(?:day|dag|d[ií]a|tag|jour)`;
const SHAPE = new RegExp(
  String.raw`^(?<title>.+?)[\s,:]+(?:${PAGES}\s+)?(?<first>\d{1,4})\s*${TO}\s*(?<last>\d{1,4})[\s,]+(?<day>\d{1,3})(?:\s*${PAGES})?(?:\s*${A_DAY})?$`,
  'iu',
);

/**
 * Reads `Pebble Path 1-48 2`: title, first and last page, pages a day, with or without words of our languages between. Null when
 * it has another shape; ranges are checked where the workbook is stored.
 *
 * @example
 * parseBookText('Pebble Path, 1 to 48, 2 a day');
 * // { title: 'Pebble Path', firstPage: 1, lastPage: 48, pagesADay: 2 }
 */
export function parseBookText(text: string): BookText | null {
  const groups = SHAPE.exec(text.trim())?.groups;
  const title = cleanNickname(groups?.title ?? '').replace(/,$/u, '');
  if (!groups || title === '') return null;
  return {
    title,
    firstPage: Number(groups.first),
    lastPage: Number(groups.last),
    pagesADay: Number(groups.day),
  };
}
