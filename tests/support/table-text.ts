/**
 * Reads comma-separated values after RFC 4180 into rows of cells, without the byte order mark at the start. Throws when the
 * text does not end with a line break.
 */
export function parseTable(text: string): string[][] {
  const body = text.replace(/^\ufeff/, '');
  if (!body.endsWith('\r\n')) throw new Error('the last row does not end with a line break');
  const rows: string[][] = [];
  let row: string[] = [];
  for (const [, quoted, plain = '', end] of body.matchAll(
    /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g,
  )) {
    row.push(quoted?.replaceAll('""', '"') ?? plain);
    if (end === ',') continue;
    rows.push(row);
    row = [];
  }
  return rows;
}
