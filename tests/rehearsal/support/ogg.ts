export interface OggOptions {
  readonly seconds?: number;
  /** Samples to leave out at the start (RFC 7845, 5.1). */
  readonly skipped?: number;
}

/** A page (RFC 3533, 6) with one packet in one segment. Its checksum is left at nought. */
function page(position: bigint, packet: Uint8Array): Buffer {
  const head = Buffer.alloc(28);
  head.write('OggS', 0, 'latin1');
  head.writeBigInt64LE(position, 6);
  head[26] = 1;
  head[27] = packet.length;
  return Buffer.concat([head, packet]);
}

/** The headers of an Ogg file with Opus sound (RFC 7845, 5.1), and a last page without any. It cannot be played. */
export function ogg({ seconds = 7, skipped = 312 }: OggOptions = {}): Uint8Array {
  const head = Buffer.alloc(19);
  head.write('OpusHead', 0, 'latin1');
  head[8] = 1;
  head[9] = 1;
  head.writeUInt16LE(skipped, 10);
  head.writeUInt32LE(48_000, 12);
  const samples = Math.round(seconds * 48_000) + skipped;
  return Buffer.concat([
    page(0n, head),
    page(
      BigInt(samples),
      Buffer.from([0xfc, 0xff, 0xfe, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0]),
    ),
  ]);
}
