/** Every word a picture adds to what it is given, so that another language can replace them all in one place. */
export interface PictureWords {
  readonly start: string;
  /** The numbers of a counting run, in the variant for the helper. */
  readonly path: string;
  /** The two sentences above a counting run: where it starts, and by how much it goes on (negative: back). */
  readonly startAt: (first: number) => string;
  readonly count: (step: number) => string;
  readonly score: (right: number, asked: number) => string;
  /** Where a card stands among its part's cards, from 1. */
  readonly position: (card: number, of: number) => string;
  /** The frame before the first card: how many there are, how long each stays, and what to do. */
  readonly cards: (count: number) => string;
  readonly secondsEach: (seconds: number) => string;
  readonly sayEach: string;
  /** The frame after the last card. */
  readonly finished: string;
  readonly markTogether: string;
  readonly sayAgain: string;
  readonly practised: string;
  readonly notToday: string;
  readonly silent: string;
  readonly unsent: string;
  readonly notAsked: string;
  /** The three standings of a cell on the class map, and a cell with too few answers to tell. */
  readonly secure: string;
  readonly growing: string;
  readonly notYet: string;
  readonly tooFew: string;
  /** Above the dots of a child's term. */
  readonly evenings: (count: number) => string;
  /** A share as a whole number of hundredths, 0 to 100. */
  readonly percent: (hundredths: number) => string;
}

const STEPS: Readonly<Record<number, string>> = {
  1: 'ones',
  2: 'twos',
  3: 'threes',
  4: 'fours',
  5: 'fives',
  10: 'tens',
  20: 'twenties',
  25: 'twenty-fives',
  50: 'fifties',
  100: 'hundreds',
};

/**
 * The pictures' words in English. A step without a name of its own is written as a numeral.
 *
 * @example
 * ENGLISH.count(-1); // => 'Count back in ones.'
 * ENGLISH.count(7); // => 'Count on in 7s.'
 */
export const ENGLISH: PictureWords = {
  start: 'start',
  path: 'to say',
  startAt: (first) => `Start at ${first}.`,
  count: (step) => {
    const size = Math.abs(step);
    return `Count ${step < 0 ? 'back' : 'on'} in ${STEPS[size] ?? `${size}s`}.`;
  },
  score: (right, asked) => `${right} of ${asked}`,
  position: (card, of) => `${card} of ${of}`,
  cards: (count) => (count === 1 ? '1 card' : `${count} cards`),
  secondsEach: (seconds) => (seconds === 1 ? '1 second each' : `${seconds} seconds each`),
  sayEach: 'Say each answer aloud.',
  finished: 'That was the last card.',
  markTogether: 'Now mark it together.',
  sayAgain: 'Say again at breakfast',
  practised: 'practised',
  notToday: 'not today',
  silent: 'no answer',
  unsent: 'not delivered',
  notAsked: 'not asked yet',
  secure: 'secure',
  growing: 'growing',
  notYet: 'not yet',
  tooFew: 'too few to tell',
  evenings: (count) => {
    if (count === 0) return 'No evening yet this term';
    return count === 1 ? '1 evening this term' : `${count} evenings this term`;
  },
  percent: (hundredths) => `${hundredths}%`,
};
