/** Fewest evenings on which somebody said how many pages were done, before anything is projected from them. */
export const ENOUGH_EVENINGS = 5;

/** How a child gets on with its pages: `pages` done on `evenings` school days, and how uneven the days are. */
export interface Pace {
  readonly pages: number;
  readonly evenings: number;
  /** Variance over mean of a day's pages: 1 as in a Poisson process, less for the same pages every day. */
  readonly spread: number;
}

/** The spread is taken to be 1 as if so many days had shown it: a handful of evenings says little about it. */
const PRIOR_DAYS = 4;

/**
 * A child's pace from the evenings that asked for pages, one number each: the pages done, or null where nobody said, which
 * moves the book on by nothing and so counts as none. Null when fewer than {@link ENOUGH_EVENINGS} were answered.
 *
 * The spread is the variance over the mean (the index of dispersion: Cox and Lewis, The Statistical Analysis of Series of
 * Events, 1966, from memory), drawn towards 1. Throws RangeError for pages that are no whole number from 0 up.
 *
 * @example
 * paceOf([2, 2, null, 3, 1, 2]); // { pages: 10, evenings: 6, spread: 0.8 }
 */
export function paceOf(evenings: readonly (number | null)[]): Pace | null {
  const wrong = evenings.find((each) => each !== null && !(Number.isInteger(each) && each >= 0));
  if (wrong !== undefined) throw new RangeError(`${wrong} pages: a whole number from 0 up`);
  if (evenings.filter((each) => each !== null).length < ENOUGH_EVENINGS) return null;
  const days = evenings.map((each) => each ?? 0);
  const pages = days.reduce((sum, each) => sum + each, 0);
  const mean = pages / days.length;
  const squares = days.reduce((sum, each) => sum + (each - mean) ** 2, 0);
  const uneven = mean === 0 ? 0 : squares / mean;
  return {
    pages,
    evenings: days.length,
    spread: (PRIOR_DAYS + uneven) / (PRIOR_DAYS + days.length - 1),
  };
}
