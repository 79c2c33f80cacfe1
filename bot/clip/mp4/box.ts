/** Whole numbers as bytes, high byte first, `size` bytes each. */
function uints(size: 1 | 2 | 4, values: readonly number[]): Buffer {
  const bytes = Buffer.alloc(size * values.length);
  for (const [i, value] of values.entries()) bytes.writeUIntBE(value, i * size, size);
  return bytes;
}

/** Numbers of one byte each. */
export const u8 = (...values: number[]): Buffer => uints(1, values);
/** Numbers of two bytes each, high byte first. */
export const u16 = (...values: number[]): Buffer => uints(2, values);
/** Numbers of four bytes each, high byte first. */
export const u32 = (...values: number[]): Buffer => uints(4, values);
/** Plain ASCII, without a closing zero. */
export const ascii = (text: string): Buffer => Buffer.from(text, 'latin1');
/** As many zeros: reserved fields, and times, which stay nought so that equal clips are equal bytes. */
export const zeros = (count: number): Buffer => Buffer.alloc(count);

/**
 * A box: its length, its four-letter type, its content. Source: ISO/IEC 14496-12, 4.2.
 *
 * @example
 * box('free', Uint8Array.of(7)); // => 0, 0, 0, 9, 'f', 'r', 'e', 'e', 7
 */
export function box(type: string, ...parts: readonly Uint8Array[]): Buffer {
  const length = parts.reduce((sum, part) => sum + part.length, 8);
  return Buffer.concat([u32(length), ascii(type), ...parts], length);
}

/** A box that begins with a version and 24 flags. */
export function fullBox(
  type: string,
  { version = 0, flags = 0 }: { version?: number; flags?: number },
  ...parts: readonly Uint8Array[]
): Buffer {
  return box(type, u32(version * 2 ** 24 + flags), ...parts);
}

/** A box found in a file: where its content begins and where it ends. */
export interface Span {
  readonly begin: number;
  readonly end: number;
}

/**
 * Finds a box by the types that lead to it. `skip` says how many bytes stand before the first box inside a type that is
 * no plain container.
 *
 * @throws {RangeError} when there is no such box.
 */
export function findBox(
  file: Uint8Array,
  path: readonly string[],
  skip: Readonly<Record<string, number>> = {},
): Span {
  const view = Buffer.from(file.buffer, file.byteOffset, file.byteLength);
  let span: Span = { begin: 0, end: file.length };
  for (const type of path) {
    const inside = childOf(view, span, type);
    span = {
      begin: inside.begin + (type === path.at(-1) ? 0 : (skip[type] ?? 0)),
      end: inside.end,
    };
  }
  return span;
}

function childOf(file: Buffer, { begin, end }: Span, type: string): Span {
  for (let at = begin; at + 8 <= end; ) {
    const length = file.readUInt32BE(at);
    if (file.toString('latin1', at + 4, at + 8) === type)
      return { begin: at + 8, end: at + length };
    if (length < 8) break;
    at += length;
  }
  throw new RangeError(`Found no box '${type}' from byte ${begin} to ${end}.`);
}
