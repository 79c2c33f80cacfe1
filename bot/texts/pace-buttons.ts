import type { SchoolDay } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { shortDate } from './words.ts';

/** What buttons about how often the drill comes say, to whoever reads them now. */
export const PACE_BUTTONS = {
  get everyDay(): string {
    return say('pace-buttons-every-day');
  },
  get startAgain(): string {
    return say('pace-buttons-start-again');
  },
  get oneWeek(): string {
    return say('pace-buttons-one-week');
  },
  get twoWeeks(): string {
    return say('pace-buttons-two-weeks');
  },
  get otherDay(): string {
    return say('pace-buttons-other-day');
  },
  get fewer(): string {
    return say('pace-buttons-fewer');
  },
} as const;

/** A pause until a day: `Until Mon 5 Oct`. */
export function untilButton(day: SchoolDay): string {
  return say('pace-buttons-until', { day: shortDate(day) });
}

/** Keeps it daily for a child, `4. Robin`, or not any more. */
export function keepButton(who: string, isKept: boolean): string {
  return say(isKept ? 'pace-buttons-let-go' : 'pace-buttons-keep', { who });
}
