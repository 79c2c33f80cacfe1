import { inflateSync } from 'node:zlib';

/** A decoded indexed PNG: three bytes per pixel, rows from the top. */
export interface DecodedPng {
  readonly width: number;
  readonly height: number;
  readonly bits: number;
  readonly rgb: Uint8Array;
}

/** CRC-32 bit by bit, as PNG (third edition) annex D defines it; our encoder uses another implementation. */
export function slowCrc(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let k = 0; k < 8; k++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}

/** Reads an indexed, unfiltered PNG, checking signature, chunk order and every checksum. */
export function readPng(png: Uint8Array): DecodedPng {
  const bytes = Buffer.from(png);
  if (bytes.subarray(0, 8).toString('hex') !== '89504e470d0a1a0a') throw new Error('Not a PNG.');
  const chunks = readChunks(bytes);
  const order = chunks.map(({ type }) => type).join(' ');
  if (order !== 'IHDR PLTE IDAT IEND') throw new Error(`Chunks are ${order}.`);
  const [header, palette, data] = chunks.map(({ body }) => body);
  if (!header || !palette || !data) throw new Error('A chunk is missing.');
  const width = header.readUInt32BE(0);
  const height = header.readUInt32BE(4);
  const bits = header.readUInt8(8);
  if (header.subarray(9).toString('hex') !== '03000000')
    throw new Error('Not an indexed PNG without interlace.');
  const rows = inflateSync(data);
  const stride = 1 + Math.ceil((width * bits) / 8);
  if (rows.length !== stride * height) throw new Error('The rows have another length.');
  const rgb = new Uint8Array(width * height * 3);
  for (let y = 0; y < height; y++) {
    if (rows[y * stride] !== 0) throw new Error('A row is filtered.');
    for (let x = 0; x < width; x++) {
      const bit = x * bits;
      const byte = rows.readUInt8(y * stride + 1 + (bit >> 3));
      const index = (byte >> (8 - bits - (bit & 7))) & ((1 << bits) - 1);
      rgb.set(palette.subarray(3 * index, 3 * index + 3), 3 * (y * width + x));
    }
  }
  return { width, height, bits, rgb };
}

function readChunks(bytes: Buffer): { type: string; body: Buffer }[] {
  const chunks: { type: string; body: Buffer }[] = [];
  for (let at = 8; at < bytes.length; ) {
    const length = bytes.readUInt32BE(at);
    const checked = bytes.subarray(at + 4, at + 8 + length);
    if (slowCrc(checked) !== bytes.readUInt32BE(at + 8 + length))
      throw new Error('A checksum is wrong.');
    chunks.push({ type: checked.toString('latin1', 0, 4), body: checked.subarray(4) });
    at += 12 + length;
  }
  return chunks;
}
