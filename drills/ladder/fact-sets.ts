import { add, clock, double, type FactId, gap, half, sub } from '../facts/fact-id.ts';

/** Every sum of two numbers from 0 up whose total is at most `total`; both orders of a pair count. */
export function sumsTo(total: number): readonly FactId[] {
  return range(0, total).flatMap((a) => range(0, total - a).map((b) => add(a, b)));
}

/** Every difference that starts from at most `start`. */
export function differencesFrom(start: number): readonly FactId[] {
  return range(0, start).flatMap((a) => range(0, a).map((b) => sub(a, b)));
}

/** What makes `total`, from each number 0 to `total`. */
export function gapsTo(total: number): readonly FactId[] {
  return range(0, total).map((a) => gap(a, total));
}

/** Doubles of 1 to `last`. */
export function doublesTo(last: number): readonly FactId[] {
  return range(1, last).map((n) => double(n));
}

/** Halves of the even numbers 2 to `last`. */
export function halvesTo(last: number): readonly FactId[] {
  return range(1, last / 2).map((n) => half(2 * n));
}

/** All twelve hours at each of these minutes. */
export function clocksAt(minutes: readonly number[]): readonly FactId[] {
  return minutes.flatMap((minute) => range(1, 12).map((hour) => clock(hour, minute)));
}

function range(first: number, last: number): number[] {
  return Array.from({ length: last - first + 1 }, (_, index) => first + index);
}
