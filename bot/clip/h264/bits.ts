/** Reads bits, high bits first, with the codes H.264 uses for its headers. Source: ITU-T H.264, 7.2 and 9.1. */
export interface BitReader {
  /** An unsigned number of `count` bits, at most 32. */
  readonly bits: (count: number) => number;
  /** An unsigned Exp-Golomb number, `ue(v)`. */
  readonly unsigned: () => number;
  /** A signed Exp-Golomb number, `se(v)`. */
  readonly signed: () => number;
}

/**
 * A reader over bytes. Reading past the end throws a RangeError.
 *
 * @example
 * bitReader(Uint8Array.of(0b00101_000)).unsigned(); // => 4
 */
export function bitReader(bytes: Uint8Array): BitReader {
  let at = 0;
  const bit = () => {
    const byte = bytes[at >> 3];
    if (byte === undefined) throw new RangeError(`Read past the end: ${bytes.length} bytes.`);
    const value = (byte >> (7 - (at & 7))) & 1;
    at += 1;
    return value;
  };
  const bits = (count: number) => {
    let value = 0;
    for (let i = 0; i < count; i += 1) value = value * 2 + bit();
    return value;
  };
  const unsigned = () => {
    let zeros = 0;
    while (bit() === 0) zeros += 1;
    return 2 ** zeros - 1 + bits(zeros);
  };
  const signed = () => {
    const code = unsigned();
    return code % 2 === 0 ? 0 - code / 2 : (code + 1) / 2;
  };
  return { bits, unsigned, signed };
}

/** Writes bits, high bits first. */
export interface BitWriter {
  /** An unsigned number in `count` bits. */
  readonly bits: (value: number, count: number) => void;
  /** An unsigned Exp-Golomb number, `ue(v)`. */
  readonly unsigned: (value: number) => void;
  /** What was written, closed by a 1 and filled with zeros to a whole byte (`rbsp_trailing_bits`). */
  readonly close: () => Uint8Array;
}

/**
 * A writer that starts empty.
 *
 * @example
 * const writer = bitWriter(); writer.unsigned(4); writer.close(); // => 0b00101_100
 */
export function bitWriter(): BitWriter {
  const written: number[] = [];
  const bits = (value: number, count: number) => {
    for (let i = count - 1; i >= 0; i -= 1) written.push(Math.floor(value / 2 ** i) % 2);
  };
  const unsigned = (value: number) => {
    const length = Math.floor(Math.log2(value + 1));
    bits(0, length);
    bits(value + 1, length + 1);
  };
  const close = () => {
    const out = new Uint8Array(Math.ceil((written.length + 1) / 8));
    for (const [i, bit] of [...written, 1].entries()) {
      out[i >> 3] = (out[i >> 3] ?? 0) | (bit << (7 - (i & 7)));
    }
    return out;
  };
  return { bits, unsigned, close };
}
