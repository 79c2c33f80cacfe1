import { regularisedBeta } from '../statistics/beta-function.ts';
import type { Pace } from './pace.ts';

/**
 * The chance that a child at this pace has done `left` more pages within `days` school days.
 *
 * Pages come as in a Poisson process whose rate is known from the evenings seen, so that the pages of the next days are
 * negative binomial: with `pages` on `evenings` days behind us, P(at least L in n days) = I_(n / (n + evenings))(L, pages),
 * the regularised incomplete beta function (Gelman et al., Bayesian Data Analysis, chapter 2: the Poisson model with its
 * conjugate gamma; the prior of no weight at all). Counts are divided by the spread first, as in a quasi-Poisson model
 * (McCullagh and Nelder, Generalized Linear Models, chapter 6, from memory): that keeps the mean and scales the variance.
 *
 * It does not know of weeks: a child who works at weekends only is as likely to go on by a little each day. 1 when nothing is
 * left; 0 on no day, and for a child who does no pages. Throws RangeError unless `days` is 0 or more.
 *
 * @example
 * chanceDone({ pages: 10, evenings: 5, spread: 1 }, 10, 5); // 0.5: as much again in as many days
 */
export function chanceDone(pace: Pace, left: number, days: number): number {
  if (!(days >= 0)) throw new RangeError(`${days} days: 0 or more`);
  if (left <= 0) return 1;
  if (days === 0 || pace.pages === 0) return 0;
  const share = days / (days + pace.evenings);
  return regularisedBeta(share, left / pace.spread, pace.pages / pace.spread);
}

/**
 * The place of the first of `days` days, counted from 0, by which `chance` (which never falls from day to day) has reached
 * `share`; null when none has.
 *
 * @example
 * firstDayWith((days) => days / 10, 0.5, 10); // 4: the fifth day
 */
export function firstDayWith(
  chance: (days: number) => number,
  share: number,
  days: number,
): number | null {
  let low = 1;
  let high = days;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (chance(middle) >= share) high = middle;
    else low = middle + 1;
  }
  return days > 0 && chance(low) >= share ? low - 1 : null;
}
