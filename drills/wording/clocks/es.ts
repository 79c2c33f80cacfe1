import { entry } from '../entry.ts';
import { spanishNumber } from '../numbers/es.ts';
import type { ClockWords } from './clock-words.ts';

/**
 * Spanish. Written from common use, not checked by a teacher of the language. Usual is "y" up to the half hour and "menos"
 * after it; "las tres y treinta y cinco", the American "veinte para las cuatro", and a time without its article count as
 * equal. Mediodía and medianoche are names of the twelve. A bare "tres" is a number, not a time.
 */
export const SPANISH_CLOCK: ClockWords = {
  phrases,
  leadIn: /^son(?=las)|^es(?=la)/,
  // "la 1" is read as "la uno".
  mend: (key) => key.replaceAll('uno', 'una'),
};

function phrases(hour: number, minute: number, next: number): readonly string[] {
  const now = name(hour);
  if (minute === 0) {
    const twelve = hour === 12 ? ['mediodía', 'medianoche'] : [];
    return [now, `${now} en punto`, `${bare(hour)} en punto`, ...twelve];
  }
  const figures = [now, bare(hour)].flatMap((start) => [
    `${start} y ${word(minute)}`,
    `${start} ${word(minute)}`,
  ]);
  if (minute <= 30) {
    const special = minute === 15 ? 'cuarto' : minute === 30 ? 'media' : null;
    if (special === null) return figures;
    return [`${now} y ${special}`, `${bare(hour)} y ${special}`, ...figures];
  }
  return [...before(next, 60 - minute), ...figures];
}

function before(next: number, minutes: number): readonly string[] {
  const span = minutes === 15 ? 'cuarto' : word(minutes);
  return [
    `${name(next)} menos ${span}`,
    `${bare(next)} menos ${span}`,
    `${span} para ${name(next)}`,
    minutes === 15 ? `un cuarto para ${name(next)}` : `faltan ${span} para ${name(next)}`,
  ];
}

function name(hour: number): string {
  return `${hour === 1 ? 'la' : 'las'} ${bare(hour)}`;
}

function bare(hour: number): string {
  return hour === 1 ? 'una' : word(hour);
}

function word(n: number): string {
  return entry(spanishNumber(n), 0);
}
