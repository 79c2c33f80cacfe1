import { entry } from '../entry.ts';
import { frenchNumber } from '../numbers/fr.ts';
import type { ClockWords } from './clock-words.ts';

/**
 * French. Written from common use, not checked by a teacher of the language. On a dial the twelve is "douze heures", because
 * the hands do not say which half of the day it is; midi and minuit count as equal. So do "trois heures quinze" and the
 * Belgian "trois heures quart" and "moins quart".
 */
export const FRENCH_CLOCK: ClockWords = {
  phrases,
  leadIn: /^ilest/,
  // "1 heure" is read as "un heure"; demi and demie sound alike.
  mend: (key) => key.replace('unheure', 'uneheure').replace('demie', 'demi'),
};

function phrases(hour: number, minute: number, next: number): readonly string[] {
  const hours = names(hour);
  if (minute === 0) return hours;
  const figures = hours.map((name) => `${name} ${word(minute)}`);
  if (minute === 15) return [...each(hours, ['et quart', 'quart', 'un quart']), ...figures];
  if (minute === 30) return [...each(hours, ['et demie']), ...figures];
  if (minute < 30) return figures;
  const short = minute === 45 ? ['moins le quart', 'moins quart'] : [`moins ${word(60 - minute)}`];
  return [...each(names(next), short), ...figures];
}

function names(hour: number): readonly string[] {
  if (hour === 1) return ['une heure'];
  return [`${word(hour)} heures`, ...(hour === 12 ? ['midi', 'minuit'] : [])];
}

function each(names: readonly string[], ends: readonly string[]): readonly string[] {
  return names.flatMap((name) => ends.map((end) => `${name} ${end}`));
}

function word(n: number): string {
  return entry(frenchNumber(n), 0);
}
