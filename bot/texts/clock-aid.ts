import { clockPhrase, type FactId, type Language } from '../../drills/index.ts';
import { say } from '../language/index.ts';

/** How to read one clock, in the words that stand beside its drawing. */
export interface ClockAidWords {
  /** What each hand is called, by its length and thickness, and what it says. */
  readonly short: { readonly hand: string; readonly says: string };
  readonly long: { readonly hand: string; readonly says: string };
  /** From the 31st minute on: how many are left until the next hour. */
  readonly left: string | null;
  /** The time as the class says it, and in figures. */
  readonly phrase: string;
  readonly figures: string;
}

/** Over the drawing of how clocks are read. */
export function clockAidTitle(): string {
  return say('clock-aid-title');
}

/** How each hand is read, over several clocks. */
export function clockAidRules(): readonly string[] {
  return [say('clock-aid-short-rule'), say('clock-aid-long-rule')];
}

/**
 * How to read a clock: the hands in the reader's language, the time in the class's.
 *
 * @example
 * clockAidWords({ hour: 3, minute: 30 }, 'en').figures; // '3:30'
 */
export function clockAidWords(
  { hour, minute }: { readonly hour: number; readonly minute: number },
  language: Language,
): ClockAidWords {
  const next = (hour % 12) + 1;
  const isFull = minute === 0;
  return {
    short: {
      hand: say('clock-aid-short'),
      says: isFull
        ? say('clock-aid-at-hour', { hour })
        : say('clock-aid-past-hour', { hour, next }),
    },
    long: {
      hand: say('clock-aid-long'),
      says: isFull
        ? say('clock-aid-at-top')
        : say('clock-aid-minutes', { numeral: minute / 5, minutes: minute }),
    },
    left: minute > 30 ? say('clock-aid-left', { left: 60 - minute, next }) : null,
    phrase: clockPhrase(hour, minute, language),
    figures: inFigures(hour, minute),
  };
}

/** The time on a clock card in figures, `3:30`; null for any other card. */
export function timeInFigures(fact: FactId): string | null {
  const match = /^clock:(\d\d)(\d\d)$/.exec(fact);
  return match ? inFigures(Number(match[1]), Number(match[2])) : null;
}

function inFigures(hour: number, minute: number): string {
  return `${hour}:${String(minute).padStart(2, '0')}`;
}
