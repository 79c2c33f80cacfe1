import { crc32, inflateRawSync } from 'node:zlib';

/** A file in a zip archive. */
export interface ZipEntry {
  readonly name: string;
  readonly bytes: Uint8Array;
}

// Signatures and places as in APPNOTE.TXT 6.3.10, 4.3.7, 4.3.12 and 4.3.16.
const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;
const END_LENGTH = 22;
const LONGEST_COMMENT = 65_535;
const STORED = 0;
const DEFLATED = 8;

/**
 * Unpacks the files of an archive that are wanted, and stops as soon as they come to more than `most` bytes, whatever the
 * archive says of their sizes: a small file can unpack to gigabytes. Null when they do.
 *
 * @throws {RangeError} for bytes that are no such archive.
 */
export function unzip(
  bytes: Uint8Array,
  most: number,
  isWanted: (name: string) => boolean,
): ZipEntry[] | null {
  const zip = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const entries: ZipEntry[] = [];
  let left = most;
  for (const { name, method, packed } of listed(zip)) {
    if (!isWanted(name)) continue;
    const unpacked = unpack(packed, method, left);
    if (unpacked === null) return null;
    left -= unpacked.length;
    entries.push({ name, bytes: unpacked });
  }
  return entries;
}

/** An archive of these files as they are, for whom can only read archives. */
export function zipOf(entries: readonly ZipEntry[]): Buffer {
  const locals: Buffer[] = [];
  const directory: Buffer[] = [];
  let offset = 0;
  for (const { name, bytes } of entries) {
    const path = Buffer.from(name, 'utf8');
    const sums = [crc32(bytes), bytes.length, bytes.length];
    const local = record(LOCAL, [20, 0, STORED, 0, 0x21], sums, [path.length, 0]);
    const central = record(CENTRAL, [20, 20, 0, STORED, 0, 0x21], sums, [path.length, 0, 0, 0, 0]);
    const place = Buffer.alloc(8);
    place.writeUInt32LE(offset, 4);
    locals.push(local, path, Buffer.from(bytes));
    directory.push(central, place, path);
    offset += local.length + path.length + bytes.length;
  }
  const size = directory.reduce((sum, { length }) => sum + length, 0);
  const count = entries.length;
  const end = record(END, [0, 0, count, count], [size, offset], [0]);
  return Buffer.concat([...locals, ...directory, end]);
}

function* listed(zip: Buffer) {
  const end = findEnd(zip);
  const count = zip.readUInt16LE(end + 10);
  let at = zip.readUInt32LE(end + 16);
  for (let index = 0; index < count; index += 1) {
    if (zip.readUInt32LE(at) !== CENTRAL) throw new RangeError('no entry where one should be');
    const [name, extra, comment] = [28, 30, 32].map((place) => zip.readUInt16LE(at + place));
    const local = zip.readUInt32LE(at + 42);
    if (zip.readUInt32LE(local) !== LOCAL) throw new RangeError('an entry without its file');
    const start = local + 30 + zip.readUInt16LE(local + 26) + zip.readUInt16LE(local + 28);
    yield {
      name: zip.toString('utf8', at + 46, at + 46 + (name ?? 0)),
      method: zip.readUInt16LE(at + 10),
      packed: zip.subarray(start, start + zip.readUInt32LE(at + 20)),
    };
    at += 46 + (name ?? 0) + (extra ?? 0) + (comment ?? 0);
  }
}

function findEnd(zip: Buffer): number {
  const first = Math.max(0, zip.length - END_LENGTH - LONGEST_COMMENT);
  for (let at = zip.length - END_LENGTH; at >= first; at -= 1) {
    if (zip.readUInt32LE(at) === END) return at;
  }
  throw new RangeError('no end of an archive');
}

/** Null when it comes to more than `most` bytes. */
function unpack(packed: Buffer, method: number, most: number): Buffer | null {
  if (method === STORED) return packed.length > most ? null : packed;
  if (method !== DEFLATED) throw new RangeError('packed in a way that is not read');
  try {
    // A limit of nothing would be taken for none.
    return inflateRawSync(packed, { maxOutputLength: Math.max(1, most) });
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw new RangeError('a file that does not unpack', { cause: error });
  }
}

function record(
  signature: number,
  shorts: readonly number[],
  longs: readonly number[],
  more: readonly number[],
): Buffer {
  const bytes = Buffer.alloc(4 + 2 * shorts.length + 4 * longs.length + 2 * more.length);
  let at = bytes.writeUInt32LE(signature);
  for (const short of shorts) at = bytes.writeUInt16LE(short, at);
  for (const long of longs) at = bytes.writeUInt32LE(long, at);
  for (const short of more) at = bytes.writeUInt16LE(short, at);
  return bytes;
}
