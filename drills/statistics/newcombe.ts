import { type Interval, wilson } from './wilson.ts';

/** So many right of so many asked. */
interface Count {
  readonly right: number;
  readonly asked: number;
}

/**
 * The plausible difference of two proportions that were seen apart from one another, `now` less `before`, from -1 to 1: made of
 * the two Wilson intervals, `z` standard errors wide (1.959964 for 95 %).
 *
 *     p1 - p2 - sqrt((p1 - l1)^2 + (u2 - p2)^2)  to  p1 - p2 + sqrt((u1 - p1)^2 + (p2 - l2)^2)
 *
 * Source: method 10 of Newcombe, Statistics in Medicine 17 (1998), 873-890. Where nothing was asked on one side, everything is
 * plausible: -1 to 1. Throws RangeError as `wilson` does.
 *
 * @example
 * newcombe({ right: 56, asked: 70 }, { right: 48, asked: 80 }, 1.959964); // { lower: 0.052431, upper: 0.333873 }
 */
export function newcombe(now: Count, before: Count, z: number): Interval {
  const one = wilson(now.right, now.asked, z);
  const other = wilson(before.right, before.asked, z);
  if (now.asked === 0 || before.asked === 0) return { lower: -1, upper: 1 };
  const [p, q] = [now.right / now.asked, before.right / before.asked];
  return {
    lower: p - q - Math.hypot(p - one.lower, other.upper - q),
    upper: p - q + Math.hypot(one.upper - p, q - other.lower),
  };
}
