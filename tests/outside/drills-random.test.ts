import { describe, expect, test } from 'vitest';
import { fnv1a } from '../../drills/evening/fnv1a.ts';
import { createRandom } from '../../drills/index.ts';

// Source: test vectors of the 32-bit FNV-1a hash (Fowler, Noll and Vo), from memory.
describe('FNV-1a', () => {
  test.each([
    ['', 0x811c9dc5],
    ['a', 0xe40c292c],
    ['foobar', 0xbf9cf968],
  ])('the hash of %j is %d', (text, hash) => {
    expect(fnv1a(text)).toBe(hash);
  });
});

// Source: the same hash worked out byte by byte from the draft's text, over the bytes that Node's Buffer gives.
describe('FNV-1a of any text', () => {
  test.each([['Zoë|2026'], ['wren|2026-09-07'], ['数を 5'], ['a\u{1f426}b'], ['\ud800']])(
    'the hash of %j is that of its UTF-8 bytes',
    (text) => {
      const hash = Buffer.from(text, 'utf8').reduce(
        (before: bigint, byte) => ((before ^ BigInt(byte)) * 0x01000193n) % 2n ** 32n,
        0x811c9dc5n,
      );
      expect(fnv1a(text)).toBe(Number(hash));
    },
  );
});

// Source: sfc32 as in Doty-Humphrey's PractRand, from memory, written once more with whole numbers of any size,
// so that a slip in the 32-bit arithmetic shows.
describe('sfc32', () => {
  test.each([['wren'], ['otto|2026-09-07'], ['']])('the numbers of seed %j agree', (seed) => {
    const random = createRandom(seed);
    const draws = Array.from({ length: 200 }, () => BigInt(random.next() * 2 ** 32));
    const reference = referenceSfc32(BigInt(fnv1a(seed)), BigInt(fnv1a(`${seed}|`)));
    expect(draws).toEqual(Array.from({ length: 200 }, reference));
  });
});

function referenceSfc32(low: bigint, high: bigint): () => bigint {
  const wrap = (value: bigint) => BigInt.asUintN(32, value);
  let [a, b, c, counter] = [0n, low, high, 1n];
  const step = () => {
    const sum = wrap(a + b + counter);
    [a, b] = [b ^ (b >> 9n), wrap(c + (c << 3n))];
    c = wrap(wrap((c << 21n) | (c >> 11n)) + sum);
    counter += 1n;
    return sum;
  };
  for (let round = 0; round < 12; round += 1) step();
  return step;
}
