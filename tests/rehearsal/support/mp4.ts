/** A box (ISO/IEC 14496-12, 4.2). */
function box(type: string, ...inside: Uint8Array[]): Buffer {
  const body = Buffer.concat(inside);
  const head = Buffer.alloc(8);
  head.writeUInt32BE(body.length + 8, 0);
  head.write(type, 4, 'latin1');
  return Buffer.concat([head, body]);
}

/** The same box with its length in 64 bits. */
function wideBox(type: string, ...inside: Uint8Array[]): Buffer {
  const body = Buffer.concat(inside);
  const head = Buffer.alloc(16);
  head.writeUInt32BE(1, 0);
  head.write(type, 4, 'latin1');
  head.writeBigUInt64BE(BigInt(body.length + 16), 8);
  return Buffer.concat([head, body]);
}

function movieHeader(units: number, scale: number, isLong: boolean): Buffer {
  const body = Buffer.alloc(isLong ? 112 : 100);
  body[0] = isLong ? 1 : 0;
  body.writeUInt32BE(scale, isLong ? 20 : 12);
  if (isLong) body.writeBigUInt64BE(BigInt(units), 24);
  else body.writeUInt32BE(units, 16);
  return box('mvhd', body);
}

function track(width: number, height: number, isLong: boolean): Buffer {
  const body = Buffer.alloc(isLong ? 96 : 84);
  body[0] = isLong ? 1 : 0;
  body.writeUInt32BE(width * 65_536, body.length - 8);
  body.writeUInt32BE(height * 65_536, body.length - 4);
  return box('trak', box('tkhd', body));
}

export interface Mp4Options {
  readonly width?: number;
  readonly height?: number;
  readonly seconds?: number;
  /** Ticks a second of the movie's clock; 0 is none. */
  readonly scale?: number;
  /** Headers with 64-bit times, and a data box with a 64-bit length. */
  readonly isLong?: boolean;
  /** What the data box holds. */
  readonly data?: Uint8Array;
}

/** The headers of an MP4 file: a track of sound, then one of pictures. It cannot be played. */
export function mp4(options: Mp4Options = {}): Uint8Array {
  const { width = 480, height = 480, seconds = 12, scale = 1000, isLong = false } = options;
  const { data = new Uint8Array() } = options;
  const units = Math.round(seconds * scale);
  return Buffer.concat([
    box('ftyp', Buffer.from('isom\0\0\0\0isom', 'latin1')),
    box(
      'moov',
      movieHeader(units, scale, isLong),
      track(0, 0, isLong),
      track(width, height, isLong),
    ),
    isLong ? wideBox('mdat', data) : box('mdat', data),
  ]);
}
