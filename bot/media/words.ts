import { say } from '../language/index.ts';

/** Every word a picture adds to what it is given. */
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

/**
 * The pictures' words in the language of whoever looks at them. They are asked for when a picture is drawn, never before.
 *
 * @example
 * pictureWords().count(-1); // => 'Count back in ones.'
 * pictureWords().count(7); // => 'Count on in 7s.'
 */
export function pictureWords(): PictureWords {
  return {
    start: say('pictures-start'),
    path: say('pictures-to-say'),
    startAt,
    count: countBy,
    score: (right, asked) => say('pictures-score', { right, asked }),
    position: (card, of) => say('pictures-position', { card, of }),
    cards: (count) => say('plan-cards', { count }),
    secondsEach: (count) => say('pictures-seconds', { count }),
    sayEach: say('pictures-say-each'),
    finished: say('pictures-finished'),
    markTogether: say('pictures-mark-together'),
    sayAgain: say('pictures-say-again'),
    practised: say('pictures-practised'),
    notToday: say('pictures-not-today'),
    silent: say('pictures-silent'),
    unsent: say('pictures-unsent'),
    notAsked: say('pictures-not-asked'),
    secure: say('pictures-secure'),
    growing: say('pictures-growing'),
    notYet: say('pictures-not-yet'),
    tooFew: say('pictures-too-few'),
    evenings: (count) =>
      count === 0 ? say('pictures-no-evening') : say('pictures-evenings', { count }),
    percent: (hundredths) => say('pictures-percent', { hundredths }),
  };
}

/**
 * Where a counting run starts, told to the child.
 *
 * @example
 * startAt(35); // => 'Start at 35.'
 */
export function startAt(number: number): string {
  return say('pictures-start-at', { number });
}

/**
 * By how much a counting run goes on (negative: back), told to the child.
 *
 * @example
 * countBy(-10); // => 'Count back in tens.'
 */
export function countBy(step: number): string {
  const steps = say('steps-size', { step: Math.abs(step) });
  return step < 0 ? say('pictures-count-back', { steps }) : say('pictures-count-on', { steps });
}
