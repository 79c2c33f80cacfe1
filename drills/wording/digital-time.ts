import type { ClockTime } from './clocks/clock-words.ts';

/** Hour, then a colon, stop or h, then two figures of minutes; or an hour with h alone. */
const FIGURES = /^(\d{1,2})\s*(?:[:.h]\s*(\d{2})|h)$/;
/** A word or sign for "hour" that some languages put after the figures. */
const AFTERWARDS = /\s*(?:uhr|uur|h)$/;

/**
 * A time written in figures, 3:30, 03:30, 3.30, 3h30, 3 h or 3:30 Uhr; null for anything else. A dial does not say which half
 * of the day it is, so its hours are 1 to 12: 15:30 and 0:30 say more than the hands do and are not read.
 *
 * @example
 * parseDigitalTime('3h30'); // { hour: 3, minute: 30 }
 */
export function parseDigitalTime(text: string): ClockTime | null {
  const plain = text.normalize('NFKC').trim().toLowerCase();
  const match =
    FIGURES.exec(plain) ?? (plain.length > 20 ? null : FIGURES.exec(plain.replace(AFTERWARDS, '')));
  if (match === null) return null;
  const hour = Number(match[1]);
  const minute = Number(match[2] ?? '0');
  return hour >= 1 && hour <= 12 && minute <= 59 ? { hour, minute } : null;
}
