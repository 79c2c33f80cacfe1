import {
  add,
  clock,
  double,
  type FactId,
  from,
  gap,
  half,
  lead,
  less,
  sub,
  times,
  word,
} from '../facts/fact-id.ts';

/** Number words from 0 to `last`. */
export function wordsTo(last: number): readonly FactId[] {
  return range(0, last).map(word);
}

/** Number words of the full tens, 10 to `last`. */
export function wordsOfTens(last: number): readonly FactId[] {
  return range(1, last / 10).map((n) => word(10 * n));
}

/** Every sum of two numbers from 0 up whose total is at most `total`; both orders of a pair count. */
export function sumsTo(total: number): readonly FactId[] {
  return pairsTo(total).map(([a, b]) => add(a, b));
}

/**
 * Ties `n + n` to a total of at most `total`, and near ties `n + (n + 1)` in both orders; none with a nought.
 *
 * @example
 * tiesTo(4); // ['add:1+1', 'add:2+2', 'add:1+2', 'add:2+1']
 */
export function tiesTo(total: number): readonly FactId[] {
  const ties = range(1, Math.floor(total / 2)).map((n) => add(n, n));
  const nearTies = range(1, Math.floor((total - 1) / 2)).flatMap((n) => [
    add(n, n + 1),
    add(n + 1, n),
  ]);
  return [...ties, ...nearTies];
}

/** The 36 sums of two one-digit numbers that are more than 10. */
export function bridgingSums(): readonly FactId[] {
  return bridgingPairs().map(([a, b]) => add(a, b));
}

/** The mirror of {@link bridgingSums}: 11 to 18 less a one-digit number, with a one-digit number left. */
export function bridgingDifferences(): readonly FactId[] {
  return bridgingPairs().map(([a, b]) => sub(a + b, b));
}

/** Every difference that starts from at most `start`. */
export function differencesFrom(start: number): readonly FactId[] {
  return range(0, start).flatMap((a) => range(0, a).map((b) => sub(a, b)));
}

/** 11 to 19 less a one-digit number, never below 10, so that no ten is crossed. */
export function differencesOfTeens(): readonly FactId[] {
  return range(11, 19).flatMap((a) => range(0, a - 10).map((b) => sub(a, b)));
}

/** What makes `total`, from each number 0 to `total`. */
export function gapsTo(total: number): readonly FactId[] {
  return range(0, total).map((a) => gap(a, total));
}

/** A missing number at either place of every sum of at most `total`. */
export function gapsAnywhereTo(total: number): readonly FactId[] {
  return pairsTo(total).flatMap(([a, b]) => [gap(a, a + b), lead(b, a + b)]);
}

/** A missing number at either place of every difference that starts from at most `start`. */
export function gapsAnywhereFrom(start: number): readonly FactId[] {
  return pairsTo(start).flatMap(([b, rest]) => [less(b + rest, rest), from(b, rest)]);
}

/** Doubles of 1 to `last`. */
export function doublesTo(last: number): readonly FactId[] {
  return range(1, last).map(double);
}

/** Doubles of the full tens, with a result of at most `result`. */
export function doublesOfTens(result: number): readonly FactId[] {
  return range(1, Math.floor(result / 20)).map((n) => double(10 * n));
}

/** Halves of the even numbers 2 to `last`. */
export function halvesTo(last: number): readonly FactId[] {
  return range(1, last / 2).map((n) => half(2 * n));
}

/** Halves of the full tens 10 to `last`, so half of 30 too. */
export function halvesOfTens(last: number): readonly FactId[] {
  return range(1, last / 10).map((n) => half(10 * n));
}

/** All twelve hours at each of these minutes. */
export function clocksAt(minutes: readonly number[]): readonly FactId[] {
  return minutes.flatMap((minute) => range(1, 12).map((hour) => clock(hour, minute)));
}

/** A times table in its own order, `1 × table` to `10 × table`, as it is said: three twos are six. */
export function tableOf(table: number): readonly FactId[] {
  return range(1, 10).map((n) => times(n, table));
}

function pairsTo(total: number): [number, number][] {
  return range(0, total).flatMap((a) => range(0, total - a).map((b): [number, number] => [a, b]));
}

function bridgingPairs(): [number, number][] {
  return range(2, 9).flatMap((a) => range(11 - a, 9).map((b): [number, number] => [a, b]));
}

function range(first: number, last: number): number[] {
  return Array.from({ length: last - first + 1 }, (_, index) => first + index);
}
