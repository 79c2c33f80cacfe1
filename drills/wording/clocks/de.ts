import { entry } from '../entry.ts';
import { germanNumber } from '../numbers/de.ts';
import type { ClockWords } from './clock-words.ts';

/**
 * German. Written from common use, not checked by a teacher of the language. "halb vier" is half an hour before four, 3:30,
 * and the five minutes on either side are counted from it; "fünfundzwanzig nach drei" counts as equal. So do the regional
 * "viertel vier" (a quarter of the way to four, 3:15) and "drei viertel vier" (3:45).
 */
export const GERMAN_CLOCK: ClockWords = {
  phrases,
  leadIn: /^esist/,
  mend: (key) => key.replace('einsuhr', 'einuhr'),
};

function phrases(hour: number, minute: number, next: number): readonly string[] {
  const oclock = hour === 1 ? 'ein Uhr' : `${word(hour)} Uhr`;
  if (minute === 0) return [oclock];
  const half = `halb ${word(next)}`;
  const figures = [
    `${oclock} ${word(minute)}`,
    ...(minute === 5 ? [`${oclock} null ${word(minute)}`] : []),
  ];
  if (minute === 30) return [half, ...figures];
  const [span, side, named] =
    minute < 30 ? [minute, 'nach', word(hour)] : [60 - minute, 'vor', word(next)];
  const fromHour = spans(span).map((text) => `${text} ${side} ${named}`);
  const fromHalf = minutesFromHalf(minute, half);
  const first = span === 25 ? [...fromHalf, ...fromHour] : [...fromHour, ...fromHalf];
  return [...first, ...regional(minute, word(next)), ...figures];
}

function minutesFromHalf(minute: number, half: string): readonly string[] {
  const away = Math.abs(30 - minute);
  return away > 10 ? [] : [`${word(away)} ${minute < 30 ? 'vor' : 'nach'} ${half}`];
}

function regional(minute: number, next: string): readonly string[] {
  if (minute === 15) return [`viertel ${next}`];
  return minute === 45 ? [`drei viertel ${next}`, `dreiviertel ${next}`] : [];
}

function spans(minutes: number): readonly string[] {
  const span = word(minutes);
  return [...(minutes === 15 ? ['Viertel'] : []), span, `${span} Minuten`];
}

function word(n: number): string {
  return entry(germanNumber(n), 0);
}
