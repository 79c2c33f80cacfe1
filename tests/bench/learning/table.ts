import type { Line } from './comparison.ts';
import type { Interval } from './interval.ts';

type Cell = (line: Line) => string;

const COLUMNS: readonly (readonly [string, Cell])[] = [
  ['policy', ({ policy }) => policy],
  ['known', ({ known }) => show(known, 1)],
  ['gained', ({ gained }) => show(gained, 1)],
  ['an evening', ({ gainedAnEvening }) => show(gainedAnEvening, 2)],
  ['nearly', ({ nearly }) => show(nearly, 1)],
  ['score %', ({ score }) => (100 * score.mean).toFixed(1)],
  ['most known', ({ reachedMost, eveningsToMost }) => mostKnown(reachedMost, eveningsToMost)],
  ['gained x random', ({ ofBaseline }) => show(ofBaseline.gained, 2)],
  ['known x random', ({ ofBaseline }) => show(ofBaseline.known, 2)],
  ['gained x oracle', ({ ofOracle }) => show(ofOracle.gained, 2)],
  ['known x oracle', ({ ofOracle }) => show(ofOracle.known, 2)],
];

/** What the columns mean, for under the table. */
export const LEGEND = [
  'known: facts with a true chance of a right answer of 0.9 or more on the school day after the last; nearly: 0.8 or more.',
  'gained: known at the end less known before the first evening; an evening: for each evening practised.',
  'score: mean true chance of a right answer over all cards. +- is half of a 95 % interval over seeds.',
  'most known: children with nine facts in ten known at some week\u2019s end, and the middle one of their evenings until then.',
  'x random, x oracle: the same classes under "same random cards for all" and "oracle, nearest to known" are 1.',
];

/** A plain text table, numbers to the right. */
export function renderTable(lines: readonly Line[]): string {
  const rows = [
    COLUMNS.map(([title]) => title),
    ...lines.map((line) => COLUMNS.map(([, cell]) => cell(line))),
  ];
  const widths = COLUMNS.map((_, at) => Math.max(...rows.map((row) => row[at]?.length ?? 0)));
  return rows
    .map((row) =>
      row
        .map((text, at) =>
          at === 0 ? text.padEnd(widths[at] ?? 0) : text.padStart(widths[at] ?? 0),
        )
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

function show({ mean, half }: Interval, digits: number): string {
  const width = Number.isNaN(half) ? '' : ` +-${half.toFixed(digits)}`;
  return `${mean.toFixed(digits)}${width}`;
}

function mostKnown(percent: number, evenings: number | null): string {
  return evenings === null ? 'none' : `${percent.toFixed(0)} % (${evenings})`;
}
