import type { CardSheetInput } from '../../../bot/media/index.ts';

/** What a card shows. */
export type Face = CardSheetInput['faces'][number];

/** A written card. */
export const written = (text: string): Face => ({ kind: 'text', text });

/** A clock card. */
export const clock = (hour: number, minute: number): Face => ({ kind: 'clock', hour, minute });

/** Numbers from `first` in steps. */
export const run = (first: number, step: number, length: number): number[] =>
  Array.from({ length }, (_, i) => first + step * i);

/** Times at which the hands overlap or nearly do, and one at which they do not. */
export const OVERLAPS = [
  [12, 0],
  [1, 5],
  [2, 10],
  [3, 15],
  [4, 20],
  [5, 25],
  [5, 30],
  [6, 30],
  [6, 35],
  [7, 35],
  [8, 40],
  [9, 50],
  [10, 55],
  [11, 55],
  [3, 45],
] as const;

/** One card of each kind, by name. */
export const KINDS: Readonly<Record<string, Face>> = {
  sum: written('3 + 4'),
  'gap at the start': written('? + 7 = 10'),
  'gap in the middle': written('10 − ? = 7'),
  'gap at the end': written('100 + 900 = ?'),
  'take away': written('1000 − 999'),
  double: written('double 500'),
  half: written('half of 1000'),
  times: written('12 × 12'),
  'one word': written('fourteen'),
};

/** The longest number words to 1000, or nearly, of five languages. */
export const LONG_WORDS = [
  'seven hundred and seventy-seven',
  'sewehonderd sewe-en-sewentig',
  'novecientos cincuenta y cuatro',
  'siebenhundertsiebenundsiebzig',
  'neuf-cent-quatre-vingt-dix-sept',
] as const;
