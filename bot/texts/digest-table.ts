import type { EveningStatus, Growth, SchoolDay, Strand } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { strandName } from './part-title.ts';
import { shortDate } from './words.ts';

/** The table's headings, in the order of its columns. */
export function tableHeader(days: readonly SchoolDay[], strands: readonly Strand[]): string[] {
  const titles = strands.map(strandName);
  return [
    say('digest-table-number'),
    say('digest-table-nickname'),
    ...days.map(shortDate),
    say('digest-table-days-practised'),
    ...titles.flatMap((strand) => [
      say('digest-table-right', { strand }),
      say('digest-table-asked', { strand }),
    ]),
    say('digest-table-pages'),
    ...titles.map((strand) => say('digest-table-over-weeks', { strand })),
  ];
}

/** What a day's cell in the table says. */
export const DAY_WORDS: Readonly<Record<EveningStatus | 'none', string>> = {
  get practised() {
    return say('digest-table-practised');
  },
  get not_today() {
    return say('digest-table-not_today');
  },
  get silent() {
    return say('digest-table-silent');
  },
  get unsent() {
    return say('digest-table-unsent');
  },
  none: '',
};

/**
 * Where a child's own scores go, with how many evenings say so; empty where there is nothing.
 *
 * @example
 * growthWords({ trend: 'steady', evenings: 9, aWeek: 0 }); // 'steady (9 evenings)'
 */
export function growthWords(growth: Growth | undefined): string {
  if (!growth) return '';
  const { trend, evenings } = growth;
  return say('digest-table-growth', { trend: say(`digest-table-${trend}`), evenings });
}
