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
 * the shuffle is Fisher and Yates's in place, as Durstenfeld gave it (Communications of the ACM 7(7), 1964, 420; cited from
 * memory).
 *
 * @example
 * createRandom('wren|2026-09-07').int(1000); // 648
 */
export function createRandom(seed: string): Random {
  const low = fnv1a(seed);
  // The second hash is that of the seed with a stroke behind it; it goes on where the first one ended.
  return new Sfc32(low, fnv1a('|', low));
}

// A class, because each part of each evening makes one: functions made anew every time would cost more than the numbers.
class Sfc32 implements Random {
  #a = 0;
  #b: number;
  #c: number;
  #counter = 1;

  constructor(low: number, high: number) {
    this.#b = low | 0;
    this.#c = high | 0;
    for (let round = 0; round < WARM_UP_ROUNDS; round += 1) this.#step();
  }

  next(): number {
    return this.#step() / TWO_TO_32;
  }

  int(n: number): number {
    if (!Number.isInteger(n) || n < 1) throw new RangeError(`cannot choose from ${n}`);
    return Math.floor(this.next() * n);
  }

  shuffle<T>(items: readonly T[]): T[] {
    const result = [...items];
    for (let left = result.length; left > 1; left -= 1) {
      const drawn = this.int(left);
      // Both places exist; an item may itself be undefined.
      const item = result[drawn] as T;
      result[drawn] = result[left - 1] as T;
      result[left - 1] = item;
    }
    return result;
  }

  #step(): number {
    const sum = (((this.#a + this.#b) | 0) + this.#counter) | 0;
    this.#counter = (this.#counter + 1) | 0;
    this.#a = this.#b ^ (this.#b >>> 9);
    this.#b = (this.#c + (this.#c << 3)) | 0;
    this.#c = (((this.#c << 21) | (this.#c >>> 11)) + sum) | 0;
    return sum >>> 0;
  }
}
