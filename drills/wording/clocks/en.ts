import { entry } from '../entry.ts';
import { englishNumber } from '../numbers/en.ts';
import type { ClockWords } from './clock-words.ts';

/**
 * English. Written from common use, not checked by a teacher of the language. Usual is the British and South African
 * "past" and "to"; "after", "of" and "till", "a quarter", "three thirty", and the informal British "half three" for half
 * past three count as equal. Noon, midday and midnight are names of the twelve.
 */
export const ENGLISH_CLOCK: ClockWords = { phrases, leadIn: /^its|^itis/, mend: (key) => key };

function phrases(hour: number, minute: number, next: number): readonly string[] {
  const h = word(hour);
  if (minute === 0) {
    return [`${h} o\u2019clock`, ...(hour === 12 ? ['noon', 'midday', 'midnight'] : [])];
  }
  if (minute === 5) return [...past(h, 5), `${h} oh five`, `${h} o five`, `${h} zero five`];
  const figures = `${h} ${word(minute)}`;
  if (minute < 30) return [...past(h, minute), figures];
  if (minute === 30) return [`half past ${h}`, `half ${h}`, figures];
  return [...to(word(next), 60 - minute), figures];
}

function past(hour: string, minutes: number): readonly string[] {
  return spans(minutes).flatMap((span) => [`${span} past ${hour}`, `${span} after ${hour}`]);
}

function to(hour: string, minutes: number): readonly string[] {
  return spans(minutes).flatMap((span) => [
    `${span} to ${hour}`,
    `${span} till ${hour}`,
    `${span} of ${hour}`,
  ]);
}

function spans(minutes: number): readonly string[] {
  const span = word(minutes);
  return [...(minutes === 15 ? ['quarter', 'a quarter'] : []), span, `${span} minutes`];
}

function word(n: number): string {
  return entry(englishNumber(n), 0);
}
