/** Every word a picture adds to what it is given, so that another language can replace them all in one place. */
export interface PictureWords {
  readonly start: string;
  /** The two sentences above a counting run: where it starts, and by how much it goes on (negative: back). */
  readonly startAt: (first: number) => string;
  readonly count: (step: number) => string;
  readonly score: (right: number, asked: number) => string;
  readonly sayAgain: string;
  readonly practised: string;
  readonly notToday: string;
  readonly silent: string;
  readonly unsent: string;
  readonly notAsked: string;
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
  startAt: (first) => `Start at ${first}.`,
  count: (step) => {
    const size = Math.abs(step);
    return `Count ${step < 0 ? 'back' : 'on'} in ${STEPS[size] ?? `${size}s`}.`;
  },
  score: (right, asked) => `${right} of ${asked}`,
  sayAgain: 'Say again at breakfast',
  practised: 'practised',
  notToday: 'not today',
  silent: 'no answer',
  unsent: 'not delivered',
  notAsked: 'not asked yet',
};
