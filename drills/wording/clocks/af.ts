import { entry } from '../entry.ts';
import { afrikaansNumber } from '../numbers/af.ts';
import type { ClockWords } from './clock-words.ts';

/**
 * Afrikaans. Written from common use, not checked by a teacher of the language. "halfvier" is half an hour before four,
 * 3:30, in one word; "half vier" counts as equal. The minutes are counted from the full hour on both sides ("vyf-en-twintig
 * oor drie"), the way a dial is first taught; counting from the half hour ("vyf voor halfvier") counts as equal.
 */
export const AFRIKAANS_CLOCK: ClockWords = { phrases, leadIn: /^ditis|^dis/, mend: (key) => key };

function phrases(hour: number, minute: number, next: number): readonly string[] {
  const h = word(hour);
  // A hyphen keeps the two vowels of drie-uur and sewe-uur apart.
  const oclock = `${h}${h.endsWith('e') ? '-' : ''}uur`;
  if (minute === 0) return [oclock];
  const half = `half${word(next)}`;
  const figures = `${oclock} ${word(minute)}`;
  if (minute === 30) return [half, `half ${word(next)}`, figures];
  if (minute < 30) {
    const fromHalf = minute < 20 ? [] : [`${word(30 - minute)} voor ${half}`];
    return [...spans(minute).map((span) => `${span} oor ${h}`), ...fromHalf, figures];
  }
  const fromHalf = minute > 40 ? [] : [`${word(minute - 30)} oor ${half}`];
  return [...spans(60 - minute).map((span) => `${span} voor ${word(next)}`), ...fromHalf, figures];
}

function spans(minutes: number): readonly string[] {
  const span = word(minutes);
  return [...(minutes === 15 ? ['kwart'] : []), span, `${span} minute`];
}

function word(n: number): string {
  return entry(afrikaansNumber(n), 0);
}
