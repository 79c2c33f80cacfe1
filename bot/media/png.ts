import { crc32, deflateSync } from 'node:zlib';
import { chooseColours, type IndexedColours, type Rgb, rgbKey } from './png-palette.ts';

const SIGNATURE = [137, 80, 78, 71, 13, 10, 26, 10];
const INDEXED = 3;

/**
 * Writes RGBA pixels (rows from the top, alpha ignored) as an indexed PNG of at most `maxColours` colours (2 to 256).
 * Colours of `kept` that occur stay exact. Flat pictures come out at about a quarter of the bytes of a full-colour PNG. Equal pixels give equal bytes
 * on the same Node release (the compressor is Node's own).
 *
 * @throws {RangeError} when the pixels do not fill width x height, or `maxColours` is out of range.
 * @see https://www.w3.org/TR/png-3/
 */
export function encodeIndexedPng(
  pixels: Uint8Array,
  width: number,
  height: number,
  maxColours: number,
  kept: readonly Rgb[] = [],
): Uint8Array {
  if (pixels.length !== width * height * 4 || width < 1 || height < 1) {
    throw new RangeError(`Got ${pixels.length} bytes for ${width} x ${height} pixels of 4 bytes.`);
  }
  if (!Number.isInteger(maxColours) || maxColours < 2 || maxColours > 256) {
    throw new RangeError(`Got ${maxColours} colours: a palette holds 2 to 256.`);
  }
  const indexed = chooseColours(pixels, maxColours, kept);
  const bits = bitsFor(indexed.colours.length);
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header[8] = bits;
  header[9] = INDEXED;
  return Buffer.concat([
    Buffer.from(SIGNATURE),
    chunk('IHDR', header),
    chunk('PLTE', Buffer.from(indexed.colours.flat())),
    chunk('IDAT', deflateSync(packRows(pixels, width, height, bits, indexed), { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function bitsFor(colours: number): 1 | 2 | 4 | 8 {
  if (colours <= 2) return 1;
  if (colours <= 4) return 2;
  return colours <= 16 ? 4 : 8;
}

/** Palette indexes, `bits` each and high bits first, every row led by filter byte 0 and padded to a whole byte. */
function packRows(
  pixels: Uint8Array,
  width: number,
  height: number,
  bits: number,
  { nearest }: IndexedColours,
): Buffer {
  const perByte = 8 / bits;
  const stride = 1 + Math.ceil(width / perByte);
  const rows = Buffer.alloc(stride * height);
  // Neighbours are mostly alike, and looking a colour up costs more than all the rest.
  let key = -1;
  let index = 0;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const here = rgbKey(pixels, 4 * (y * width + x));
      if (here !== key) {
        key = here;
        index = nearest.get(here) ?? 0;
      }
      const at = y * stride + 1 + Math.floor(x / perByte);
      rows[at] = (rows[at] ?? 0) | (index << (8 - bits * ((x % perByte) + 1)));
    }
  }
  return rows;
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
}
