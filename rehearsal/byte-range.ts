/** A stretch of bytes, both ends included. */
export interface ByteRange {
  readonly first: number;
  readonly last: number;
}

const SINGLE = /^bytes=\s*(\d*)-(\d*)\s*$/i;

/**
 * Reads a `Range` header (RFC 9110, 14.1.2) against a file of `size` bytes.
 *
 * `all` when the whole file is the answer: without a header, for another unit, for wrong syntax and for several ranges at
 * once, which a server may leave unread (14.2). `none` when nothing of the range lies in the file.
 *
 * @example
 * readRange('bytes=-500', 10_000); // => { first: 9500, last: 9999 }
 */
export function readRange(header: string | undefined, size: number): ByteRange | 'all' | 'none' {
  const [, from = '', to = ''] = SINGLE.exec(header ?? '') ?? [];
  if (from === '' && to === '') return 'all';
  if (from === '') {
    const wanted = Math.min(Number(to), size);
    return wanted === 0 ? 'none' : { first: size - wanted, last: size - 1 };
  }
  const first = Number(from);
  if (to !== '' && Number(to) < first) return 'all';
  if (first >= size) return 'none';
  return { first, last: to === '' ? size - 1 : Math.min(Number(to), size - 1) };
}
