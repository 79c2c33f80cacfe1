/** `nal_unit_type` values this folder handles. Source: ITU-T H.264, table 7-1. */
export const NAL = { slice: 1, idr: 5, sps: 7, pps: 8 } as const;

/** The type in a NAL unit's first byte. */
export function nalType(unit: Uint8Array): number {
  return (unit[0] ?? 0) & 0x1f;
}

/**
 * Splits units that are each led by their length in four bytes, as MP4 files hold them.
 *
 * @throws {RangeError} when a length points past the end.
 */
export function splitByLength(bytes: Uint8Array): Uint8Array[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const units: Uint8Array[] = [];
  for (let at = 0; at < bytes.length; ) {
    const length = at + 4 <= bytes.length ? view.getUint32(at) : bytes.length;
    if (length === 0 || at + 4 + length > bytes.length) {
      throw new RangeError(`Got a NAL unit of ${length} bytes at ${at} of ${bytes.length}.`);
    }
    units.push(bytes.subarray(at + 4, at + 4 + length));
    at += 4 + length;
  }
  return units;
}

/**
 * Splits a byte stream at its start codes (0 0 1, with any number of zeros before).
 * Source: ITU-T H.264, annex B.
 *
 * @example
 * splitByStartCode(Uint8Array.of(0, 0, 0, 1, 9, 0, 0, 1, 7, 7)); // => [9], [7, 7]
 */
export function splitByStartCode(stream: Uint8Array): Uint8Array[] {
  const units: Uint8Array[] = [];
  let begin = -1;
  for (let at = 0; at + 2 < stream.length; at += 1) {
    if (stream[at] !== 0 || stream[at + 1] !== 0 || stream[at + 2] !== 1) continue;
    if (begin >= 0) units.push(withoutTrailingZeros(stream.subarray(begin, at)));
    begin = at + 3;
    at += 2;
  }
  if (begin >= 0) units.push(withoutTrailingZeros(stream.subarray(begin)));
  return units;
}

function withoutTrailingZeros(unit: Uint8Array): Uint8Array {
  let end = unit.length;
  while (end > 0 && unit[end - 1] === 0) end -= 1;
  return unit.subarray(0, end);
}

/** A unit's payload without the bytes that keep start codes from appearing in it (7.4.1 of the standard). */
export function unescapeUnit(unit: Uint8Array): Uint8Array {
  return unit.filter(
    (byte, at) => !(at >= 2 && byte === 3 && unit[at - 1] === 0 && unit[at - 2] === 0),
  );
}

/** Adds the bytes that keep start codes from appearing in a unit. */
export function escapeUnit(unit: Uint8Array): Uint8Array {
  const out: number[] = [];
  let zeros = 0;
  for (const byte of unit) {
    if (zeros >= 2 && byte <= 3) {
      out.push(3);
      zeros = 0;
    }
    out.push(byte);
    zeros = byte === 0 ? zeros + 1 : 0;
  }
  return Uint8Array.from(out);
}
