import { readSheet } from 'read-excel-file/node';
import { checkTable, type ReadTable, TABLE_LIMITS } from './table.ts';
import { unzip, zipOf } from './zip.ts';

/** What a sheet's cells are read from; pictures and the rest of a workbook are not even unpacked. */
const PARTS =
  /^(?:\[Content_Types\]\.xml|_rels\/\.rels|xl\/(?:_rels\/|worksheets\/)?[^/]+\.(?:xml|rels))$/u;

/**
 * Reads the first sheet of a workbook (Office Open XML, ECMA-376). It is unpacked here, within a limit, and only then handed
 * to the reader, which knows none. Numbers and dates become texts; a formula counts as what it came to when it was saved.
 */
export async function readXlsx(bytes: Uint8Array): Promise<ReadTable> {
  try {
    const parts = unzip(bytes, TABLE_LIMITS.unpackedBytes, (name) => PARTS.test(name));
    if (parts === null) return { problem: { kind: 'big' } };
    const rows: readonly (readonly unknown[])[] = await readSheet(zipOf(parts));
    return checkTable(rows.map((row) => row.map(cellText)));
  } catch {
    // Whatever the reader makes of it: the teacher is asked for another file.
    return { problem: { kind: 'unknown' } };
  }
}

function cellText(cell: unknown): string {
  if (cell === null || cell === undefined) return '';
  return cell instanceof Date ? cell.toISOString().slice(0, 10) : String(cell);
}
