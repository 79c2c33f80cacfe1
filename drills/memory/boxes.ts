import type { MemoryModel, MemoryState } from './model.ts';

/** Days to leave a card alone in boxes 1 to 5: each box waits twice as long as the one before it. */
export const BOX_GAPS = [1, 2, 4, 8, 16] as const;

// Both tables are ours, without a source: what a teacher would guess of a class that knows most of what it practises.
const FRESH_RECALL = [0.7, 0.85, 0.92, 0.95, 0.97];
const NEW_RECALL = [0.65, 0.55, 0.45, 0.35, 0.3, 0.25];

/** Recall halves in so many of its box's gaps, so that on the day a card is due about a twelfth of it is gone. Ours. */
const HALVES_IN_GAPS = 8;

/** State: box (0 while unasked, then 1 to 5), day last asked, starting difficulty. */
const stateOf = (box: number, day: number, difficulty: number): MemoryState => [
  box,
  day,
  difficulty,
];

/**
 * Five boxes of cards, as a teacher can explain them: a right answer moves a card up one box, a wrong one back to the first,
 * and each box is asked half as often as the one below it (sorting cards into boxes is Leitner's, "So lernt man lernen",
 * 1972; the gaps of 1, 2, 4, 8 and 16 days are common practice, no source).
 *
 * A card moves up once a day at most, and not by a mark that came late for an earlier day. A first right answer leads straight
 * to the second box. What a relative lends moves no card, and how an answer was seen plays no part. `recall` reads a table by
 * box and lateness, `worth` is 1 on the day a card is due and grows with lateness; both are estimates of ours.
 *
 * @example
 * boxes.learn(boxes.start(2), { day: 20, right: true, way: 'card', share: 1 }); // [2, 20, 2]
 */
export const boxes: MemoryModel = {
  name: 'boxes',

  start: (difficulty) => stateOf(0, 0, difficulty),

  learn(state, { day, right, share }) {
    const [box = 0, last = 0, difficulty = 0] = state;
    if (share < 1) return state;
    if (box === 0) return stateOf(right ? 2 : 1, day, difficulty);
    const moves = day > last ? 1 : 0;
    const next = right ? Math.min(BOX_GAPS.length, box + moves) : 1;
    return stateOf(next, Math.max(last, day), difficulty);
  },

  recall(state, day) {
    const [box = 0, , difficulty = 0] = state;
    if (box === 0) return NEW_RECALL[difficulty] ?? 0.25;
    return (FRESH_RECALL[box - 1] ?? 0.5) * 2 ** (-gapsSince(state, day) / HALVES_IN_GAPS);
  },

  worth: (state, day) => (state[0] === 0 ? 1 : gapsSince(state, day)),
};

/** How many of its box's gaps have passed since a card was asked: 1 when it is due. */
function gapsSince([box = 1, last = 0]: MemoryState, day: number): number {
  return Math.max(0, day - last) / (BOX_GAPS[box - 1] ?? 1);
}
