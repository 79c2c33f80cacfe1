/** What a class list sent as a file may have. Far more than any class needs, and little enough to read at once. */
export const TABLE_LIMITS = {
  /** Of the file as it is sent. */
  bytes: 1_000_000,
  /** Of a spreadsheet's parts together once they are unpacked. */
  unpackedBytes: 8_000_000,
  rows: 500,
  columns: 40,
} as const;

/** A table's cells by row and column, as texts; an empty cell is an empty text. A row of it is a row of the spreadsheet. */
export type Table = readonly (readonly string[])[];

/**
 * Why a file cannot be read as a table.
 *
 * - `big`: over {@link TABLE_LIMITS}, unpacked or not
 * - `rows`, `columns`: more than {@link TABLE_LIMITS} of them
 * - `old`: a spreadsheet in the format before 2007, or one locked with a password
 * - `quote`: a quotation mark that is out of place, in `row`
 * - `unknown`: neither a spreadsheet nor text
 * - `empty`: nothing in it
 */
export type TableProblem =
  | { readonly kind: 'big' | 'rows' | 'columns' | 'old' | 'unknown' | 'empty' }
  | { readonly kind: 'quote'; readonly row: number };

/** A table, or why there is none. */
export type ReadTable = { readonly table: Table } | { readonly problem: TableProblem };

/** Takes a table as it was read: within the limits, and with something in it. */
export function checkTable(table: Table): ReadTable {
  if (table.length > TABLE_LIMITS.rows) return { problem: { kind: 'rows' } };
  if (table.some((row) => row.length > TABLE_LIMITS.columns)) {
    return { problem: { kind: 'columns' } };
  }
  const isEmpty = table.every((row) => row.every((cell) => cell.trim() === ''));
  return isEmpty ? { problem: { kind: 'empty' } } : { table };
}
