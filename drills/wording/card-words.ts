import type { Language } from './language.ts';

/** The words of one language on cards and in lists of facts. */
export interface CardWords {
  readonly double: (n: number) => string;
  readonly half: (n: number) => string;
  /** One step of a count from `n`; `step` is negative when counting back. */
  readonly next: (n: number, step: number) => string;
  /** A clock without its time. */
  readonly clock: string;
}

const ENGLISH_STEPS: ReadonlyMap<number, string> = new Map([
  [2, 'twos'],
  [3, 'threes'],
  [4, 'fours'],
  [5, 'fives'],
  [10, 'tens'],
  [20, 'twenties'],
  [25, 'twenty-fives'],
  [50, 'fifties'],
  [100, 'hundreds'],
]);

/**
 * What stands on a card besides figures and signs. Figures and signs are the same everywhere: +, = and ?, the minus sign
 * U+2212 and the times sign U+00D7. Some schools, German ones among them, write a raised dot for times; ours keep the cross.
 * Short forms were chosen, since a card is narrow. Written from common use, not checked by a teacher of the language.
 *
 * @example
 * CARD_WORDS.en.next(95, 5); // 'after 95 in fives'
 */
export const CARD_WORDS: Readonly<Record<Language, CardWords>> = {
  en: {
    double: (n) => `double ${n}`,
    half: (n) => `half of ${n}`,
    next: (n, step) => stepped(`${step < 0 ? 'before' : 'after'} ${n}`, step, englishStep),
    clock: 'a clock',
  },
  af: {
    double: (n) => `dubbel ${n}`,
    half: (n) => `helfte van ${n}`,
    next: (n, step) =>
      stepped(`${step < 0 ? 'voor' : 'n\u00e1'} ${n}`, step, (size) => `in stappe van ${size}`),
    clock: '\u2019n horlosie',
  },
  es: {
    double: (n) => `doble de ${n}`,
    half: (n) => `mitad de ${n}`,
    next: (n, step) =>
      stepped(`${step < 0 ? 'antes' : 'después'} de ${n}`, step, (size) => `de ${size} en ${size}`),
    clock: 'un reloj',
  },
  de: {
    double: (n) => `verdopple ${n}`,
    half: (n) => `halbiere ${n}`,
    next: (n, step) =>
      stepped(`${step < 0 ? 'vor' : 'nach'} ${n}`, step, (size) => `in ${size}er-Schritten`),
    clock: 'eine Uhr',
  },
  fr: {
    double: (n) => `double de ${n}`,
    half: (n) => `moitié de ${n}`,
    next: (n, step) =>
      stepped(`${step < 0 ? 'avant' : 'après'} ${n}`, step, (size) => `de ${size} en ${size}`),
    clock: 'une horloge',
  },
};

/** A count in ones needs no word for its step. */
function stepped(start: string, step: number, inSteps: (size: number) => string): string {
  const size = Math.abs(step);
  return size === 1 ? start : `${start} ${inSteps(size)}`;
}

function englishStep(size: number): string {
  const name = ENGLISH_STEPS.get(size);
  return name === undefined ? `in steps of ${size}` : `in ${name}`;
}
