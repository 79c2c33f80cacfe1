import { decodeText } from './decode-text.ts';
import { readCsv } from './read-csv.ts';
import { readXlsx } from './read-xlsx.ts';
import { type ReadTable, TABLE_LIMITS } from './table.ts';

/** How a zip archive begins, and how the spreadsheets before 2007 and locked ones do (a compound file). */
const ZIP = [0x50, 0x4b, 0x03, 0x04];
const COMPOUND = [0xd0, 0xcf, 0x11, 0xe0];

/** Reads a class list as it was sent. What it is, is told by its first bytes: names of files cannot be relied on. */
export async function readTable(bytes: Uint8Array): Promise<ReadTable> {
  if (bytes.length > TABLE_LIMITS.bytes) return { problem: { kind: 'big' } };
  if (startsWith(bytes, COMPOUND)) return { problem: { kind: 'old' } };
  if (startsWith(bytes, ZIP)) return readXlsx(bytes);
  const text = decodeText(bytes);
  return text === null ? { problem: { kind: 'unknown' } } : readCsv(text);
}

function startsWith(bytes: Uint8Array, first: readonly number[]): boolean {
  return first.every((byte, at) => bytes[at] === byte);
}
