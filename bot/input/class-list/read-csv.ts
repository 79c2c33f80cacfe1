import { CsvError, parse } from 'csv-parse/sync';
import { checkTable, type ReadTable, TABLE_LIMITS, type Table } from './table.ts';

/** What stands between two cells: RFC 4180 has the comma; spreadsheet programs also write the others. */
const SEPARATORS = [',', ';', '\t'] as const;
/** A first line by which spreadsheet programs are told the separator; it is no row. Common practice, no source. */
const SEPARATOR_LINE = /^sep=([,;\t])(?:\r\n|\r|\n)/iu;

/**
 * Reads text in rows and cells, as RFC 4180 describes it, with commas, semicolons or tabs, whichever makes rows of one width.
 * Rows may differ in length, and lines may end in LF alone; a quotation mark inside a cell without quotation marks is refused,
 * with its row.
 *
 * @example
 * readCsv('Nickname;Group\r\nWren;"red; first"'); // { table: [['Nickname', 'Group'], ['Wren', 'red; first']] }
 */
export function readCsv(text: string): ReadTable {
  const named = SEPARATOR_LINE.exec(text);
  const body = named ? text.slice(named[0].length) : text;
  const tries = (named?.[1] ? [named[1]] : SEPARATORS).map((separator) => split(body, separator));
  const read = tries.flatMap((each) => ('table' in each ? [each.table] : []));
  const best = read.toSorted((one, other) => evenness(other) - evenness(one)).at(0);
  if (best) return checkTable(best);
  return tries[0] ?? { problem: { kind: 'unknown' } };
}

function split(text: string, separator: string): ReadTable {
  try {
    const table: string[][] = parse(text, {
      delimiter: separator,
      record_delimiter: ['\r\n', '\n', '\r'],
      relax_column_count: true,
      // One row too many tells that there are too many, and the others need not be read.
      to: TABLE_LIMITS.rows + 1,
    });
    return { table };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    return { problem: { kind: 'quote', row: rowOf(error) } };
  }
}

/** The row with the quotation mark, after those that were read; one that is never closed spoils the row it was opened in. */
function rowOf({ records }: CsvError): number {
  return typeof records === 'number' ? records + 1 : 1;
}

/** The share of rows that have the commonest width; nothing when that is a single cell. Wider rows win between equals. */
function evenness(table: Table): number {
  const widths = new Map<number, number>();
  const rows = table.filter((row) => row.some((cell) => cell.trim() !== ''));
  for (const { length } of rows) widths.set(length, (widths.get(length) ?? 0) + 1);
  const [width, often] = [...widths].toSorted(([, one], [, other]) => other - one)[0] ?? [1, 0];
  return width === 1 ? 0 : often / rows.length + width / 10_000;
}
