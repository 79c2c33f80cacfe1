import type { CardScores } from './choice-scores.ts';

/** A part should go right in so many of ten cards, as far as the child's state allows. Common practice, no source. */
const EXPECTED_SCORE = 0.8;

/** Sums of chances that make exactly eight of ten may fall short by so little. */
const ROUNDING = 1e-9;

/** An exchange that makes a part surer by less than this is not worth a card. Ours. */
const LEAST_STEP = 0.02;

/**
 * The same places with as many exchanged for surer ones as it takes until eight of ten right answers can be expected, at most
 * half of them. Each exchange is the one that gives up least worth for what it adds to the expected score.
 */
export function encourage(
  chosen: readonly number[],
  candidates: readonly number[],
  { recall, worth }: CardScores,
): number[] {
  const cards = [...chosen];
  const free = candidates.filter((at) => !cards.includes(at));
  let missing = EXPECTED_SCORE * cards.length;
  for (const at of cards) missing -= recall[at] ?? 0;

  for (let turn = 0; turn < Math.floor(cards.length / 2) && missing > ROUNDING; turn += 1) {
    const { out, into } = cheapestExchange(cards, free, missing, recall, worth);
    const [gone, come] = [cards[out], free[into]];
    if (gone === undefined || come === undefined) break;
    missing -= (recall[come] ?? 0) - (recall[gone] ?? 0);
    cards[out] = come;
    free[into] = gone;
  }
  return cards;
}

function cheapestExchange(
  cards: readonly number[],
  free: readonly number[],
  missing: number,
  recall: Float64Array,
  worth: Float64Array,
): { out: number; into: number } {
  let best = { out: -1, into: -1 };
  let lowest = Number.POSITIVE_INFINITY;
  for (let out = 0; out < cards.length; out += 1) {
    const card = cards[out] ?? -1;
    const chance = recall[card] ?? 0;
    const value = worth[card] ?? 0;
    for (let into = 0; into < free.length; into += 1) {
      const other = free[into] ?? -1;
      const step = (recall[other] ?? 0) - chance;
      if (step < LEAST_STEP) continue;
      const price = (value - (worth[other] ?? 0)) / Math.min(step, missing);
      if (price < lowest) {
        lowest = price;
        best = { out, into };
      }
    }
  }
  return best;
}
