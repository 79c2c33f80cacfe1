/**
 * How an evening is made from the plan.
 *
 * - `full`: as planned.
 * - `short`: about half of each part, for a tired evening.
 * - `catch_up`: as long as planned, after missed evenings: what was missed or is longest unseen, nothing new, an easy start.
 * - `again`: the cards of an evening before once more, in another order, to beat one's own score.
 */
export const VARIANTS = ['full', 'short', 'catch_up', 'again'] as const;

/** One of {@link VARIANTS}. */
export type Variant = (typeof VARIANTS)[number];

/** So many planned evenings in a row without a mark call for a gentle restart. Our choice, no source. */
export const MISSED_BEFORE_CATCH_UP = 2;

/**
 * What a child's next planned evening should be, by how many evenings in a row went unmarked just before it.
 *
 * @example
 * variantAfter(2); // 'catch_up'
 */
export function variantAfter(missedInARow: number): 'full' | 'catch_up' {
  return missedInARow >= MISSED_BEFORE_CATCH_UP ? 'catch_up' : 'full';
}

/** The fewest cards of a short part: what a plan may ask for at least. */
const FEWEST_CARDS = 3;

/**
 * How many cards a variant asks of a part planned with `cards`: half of them rounded up and at least 3 when it is short,
 * never more than planned. The rung's whole set may be smaller still.
 *
 * @example
 * cardsIn('short', 9); // 5
 */
export function cardsIn(variant: Variant, cards: number): number {
  if (variant !== 'short') return cards;
  return Math.min(cards, Math.max(FEWEST_CARDS, Math.ceil(cards / 2)));
}
