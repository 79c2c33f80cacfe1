import type { Language, SchoolDay } from '../../drills/index.ts';
import { localeOf, readIn, say } from '../language/index.ts';
import { countBy, startAt } from '../media/words.ts';

/** The words on printed paper, in one language. */
export interface PaperWords {
  /** A child whose nickname the font cannot draw. */
  readonly child: (number: number) => string;
  readonly page: (page: number, of: number) => string;
  readonly answers: string;
  readonly name: string;
  /** A counting run as one task; `step` is negative when counting back. */
  readonly run: (start: number, step: number) => string;
  /** After the empty box for a score. */
  readonly outOf: (cards: number) => string;
  readonly pagesDone: string;
  /** Where a child goes on in its workbook. */
  readonly fromPage: (page: number) => string;
  readonly adult: string;
  /** At the foot of a practice sheet, for the adult. */
  readonly howToMark: string;
  /** On a join slip: what it is for, how to open it, what to send instead, what stands before the last day, and whom to give it to. */
  readonly whatItIs: string;
  readonly scan: string;
  readonly orSend: (place: string) => string;
  readonly until: string;
  readonly onlyThisFamily: string;
}

/**
 * What stands on paper in each language of the cards, whoever prints it. Only the English was written for adults who read it at
 * home; no native teacher checked the others.
 *
 * @example
 * PAPER_WORDS.de.run(35, 5); // 'Fang bei 35 an. Zähle in 5er-Schritten weiter.'
 */
export const PAPER_WORDS: Readonly<Record<Language, PaperWords>> = {
  en: wordsIn('en'),
  af: wordsIn('af'),
  es: wordsIn('es'),
  de: wordsIn('de'),
  fr: wordsIn('fr'),
};

function wordsIn(language: Language): PaperWords {
  const read = (work: () => string) => readIn(language, work);
  return {
    child: (number) => read(() => say('paper-child', { number })),
    page: (page, of) => read(() => say('paper-page', { page, of })),
    get answers() {
      return read(() => say('paper-answers'));
    },
    get name() {
      return read(() => say('paper-name'));
    },
    run: (start, step) => read(() => `${startAt(start)} ${countBy(step)}`),
    outOf: (cards) => read(() => say('paper-of', { cards })),
    get pagesDone() {
      return read(() => say('paper-pages-done'));
    },
    fromPage: (page) => read(() => say('paper-from-page', { page })),
    get adult() {
      return read(() => say('paper-adult'));
    },
    get howToMark() {
      return read(() => say('paper-how-to-mark'));
    },
    get whatItIs() {
      return read(() => say('paper-what-it-is'));
    },
    get scan() {
      return read(() => say('paper-scan'));
    },
    orSend: (place) => read(() => say('paper-or-send', { place })),
    get until() {
      return read(() => say('paper-until'));
    },
    get onlyThisFamily() {
      return read(() => say('paper-this-family'));
    },
  };
}

/** A day as it is written out in a language: `12 November 2026`. English is as in Britain. */
export function longDate(day: SchoolDay, language: Language): string {
  const format = { dateStyle: 'long', timeZone: 'UTC' } as const;
  return new Intl.DateTimeFormat(localeOf(language), format).format(new Date(`${day}T00:00:00Z`));
}
