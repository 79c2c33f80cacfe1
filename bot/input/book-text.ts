import { cleanNickname } from './nickname.ts';

/** A workbook as typed. */
export interface BookText {
  readonly title: string;
  readonly firstPage: number;
  readonly lastPage: number;
  readonly pagesADay: number;
}

const SHAPE =
  /^(?<title>.+?)[\s,:]+(?:pages?\s+)?(?<first>\d{1,4})\s*(?:-|–|to)\s*(?<last>\d{1,4})[\s,]+(?<day>\d{1,3})(?:\s*pages?)?(?:\s*(?:a|per)\s*day)?$/iu;

/**
 * Reads `Pebble Path 1-48 2`: title, first and last page, pages a day. Null when it has another shape; ranges are checked
 * where the workbook is stored.
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
