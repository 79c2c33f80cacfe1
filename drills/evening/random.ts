import { fnv1a } from './fnv1a.ts';

/** A repeatable source of chance: the same seed gives the same numbers on every machine. */
export interface Random {
  /** A number from 0 up to but not including 1, in steps of 2^-32. */
  next(): number;
  /** A whole number from 0 to n - 1. Throws RangeError unless n is a whole number from 1 up. */
  int(n: number): number;
  /** A new array of the same items in another order; every order is about equally likely. */
  shuffle<T>(items: readonly T[]): T[];
}

const WARM_UP_ROUNDS = 12;
const TWO_TO_32 = 2 ** 32;

/**
 * The generator is sfc32 (Chris Doty-Humphrey, "PractRand", public domain), its 64-bit seed two FNV-1a hashes of the text;
 * the shuffle is Fisher and Yates's, drawing from what is left ("Statistical Tables", 1938; cited from memory).
 *
 * @example
 * createRandom('wren|2026-09-07').int(1000); // 648
 */
export function createRandom(seed: string): Random {
  const nextUint32 = sfc32(fnv1a(seed), fnv1a(`${seed}|`));
  const next = () => nextUint32() / TWO_TO_32;
  const int = (n: number) => {
    if (!Number.isInteger(n) || n < 1) throw new RangeError(`cannot choose from ${n}`);
    return Math.floor(next() * n);
  };
  return { next, int, shuffle: (items) => shuffled(items, int) };
}

function sfc32(low: number, high: number): () => number {
  let a = 0;
  let b = low | 0;
  let c = high | 0;
  let counter = 1;
  const step = () => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return sum >>> 0;
  };
  for (let round = 0; round < WARM_UP_ROUNDS; round += 1) step();
  return step;
}

function shuffled<T>(items: readonly T[], int: (n: number) => number): T[] {
  const pool = [...items];
  const result: T[] = [];
  while (pool.length > 0) result.push(...pool.splice(int(pool.length), 1));
  return result;
}
