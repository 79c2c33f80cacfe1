import { STRANDS, type WeekSummary } from '../../drills/index.ts';
import { DAY_WORDS, growthWords, tableHeader } from '../texts/digest-table.ts';

/** Tells spreadsheet programs that the bytes are UTF-8; without it they garble names. */
const BYTE_ORDER_MARK = '\ufeff';

/**
 * The digest as a table: a row a child, with a word for each day, right and asked for each strand, and where the child's own
 * scores go in each. What is missing is an empty cell, never a nought. Comma-separated values after RFC 4180.
 */
export function digestTable(summary: WeekSummary): string {
  const strands = STRANDS.filter((strand) => summary.strands.some((row) => row.strand === strand));
  const header = tableHeader(summary.days, strands);
  const rows = summary.children.map((child) => [
    child.number,
    child.nickname,
    ...child.days.map((status) => DAY_WORDS[status]),
    child.daysPractised,
    ...strands.flatMap((strand) => {
      const tally = child.strands.get(strand);
      return [tally?.right ?? '', tally?.asked ?? ''];
    }),
    child.pages ?? '',
    ...strands.map((strand) => growthWords(child.growth.get(strand))),
  ]);
  return (
    BYTE_ORDER_MARK + [header, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('')
  );
}

/**
 * One cell: quoted where RFC 4180 asks for it, and kept from being run as a formula (a name that begins with `=`, `+`, `-`
 * or `@`, narrow or wide, gets an apostrophe, as OWASP's note on CSV injection advises).
 *
 * @example
 * cell('=SUM(A1)'); // "'=SUM(A1)"
 * cell('Otto, B'); // '"Otto, B"'
 */
export function cell(value: string | number): string {
  if (typeof value === 'number') return String(value);
  const text = /^[=+\-@\t\r\n＝＋－＠]/u.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
