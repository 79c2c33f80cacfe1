import {
  type EveningStatus,
  type Growth,
  type SchoolDay,
  type Strand,
  strandTitle,
} from '../../drills/index.ts';
import { count, shortDate } from './words.ts';

/** The table's headings, in the order of its columns. */
export function tableHeader(days: readonly SchoolDay[], strands: readonly Strand[]): string[] {
  const titles = strands.map(strandTitle);
  return [
    'number',
    'nickname',
    ...days.map(shortDate),
    'days practised',
    ...titles.flatMap((title) => [`${title} right`, `${title} asked`]),
    'pages',
    ...titles.map((title) => `${title} over four weeks`),
  ];
}

/** What a day's cell in the table says. */
export const DAY_WORDS: Readonly<Record<EveningStatus | 'none', string>> = {
  practised: 'practised',
  not_today: 'not today',
  silent: 'no answer',
  unsent: 'not delivered',
  none: '',
};

const TREND_WORDS: Readonly<Record<Growth['trend'], string>> = {
  rising: 'rising',
  steady: 'steady',
  falling: 'falling',
  too_little: 'too little to tell',
};

/**
 * Where a child's own scores go, with how many evenings say so; empty where there is nothing.
 *
 * @example
 * growthWords({ trend: 'steady', evenings: 9, aWeek: 0 }); // 'steady (9 evenings)'
 */
export function growthWords(growth: Growth | undefined): string {
  if (!growth) return '';
  return `${TREND_WORDS[growth.trend]} (${count(growth.evenings, 'evening', 'evenings')})`;
}
