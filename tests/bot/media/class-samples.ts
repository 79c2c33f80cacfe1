import {
  classMap,
  type Drawing,
  type MapCell,
  progressPicture,
  type StrandScore,
  type StrandWeeks,
  trendPicture,
} from '../../../bot/media/index.ts';
import { run } from './faces.ts';

const NAMES = ['Wren', 'Otter', 'Robin', 'Tamarind the Second of Oakfield', 'Zoë', 'שרה-לאה', '🦊'];
const LABELS = [
  'number words',
  'number bonds',
  'take away',
  'doubles',
  'halves',
  'times tables',
  'clock',
  'counting',
];
const WEEKS = run(1, 1, 12).map((week) => `week ${week}`);
const FOOTER =
  'A few cards a day are not a diagnosis. Look at two or three weeks before you decide.';

const CELLS: readonly (MapCell | null)[] = [
  { right: 20, asked: 20, standing: 'secure' },
  { right: 15, asked: 20, standing: 'growing' },
  { right: 2, asked: 20, standing: 'not_yet' },
  { right: 3, asked: 4, standing: 'few' },
  null,
];

/** A class map of any size with every kind of cell in it. */
export function sampleMap(children: number, strands: number): Drawing {
  return classMap({
    title: 'Kingfisher class at Harbour Lane School',
    strandLabels: LABELS.slice(0, strands),
    rows: run(1, 1, children).map((number) => ({
      number,
      name: NAMES[number % NAMES.length] ?? '',
      cells: run(number, 1, strands).map((i) => CELLS[i % CELLS.length] ?? null),
    })),
    footer: FOOTER,
  });
}

function strands(count: number, weeks: number): StrandWeeks[] {
  const score = (i: number): StrandScore | null =>
    i % 5 === 0 ? null : { right: i % 21, asked: 20 };
  return LABELS.slice(0, count).map((label, i) => ({
    label,
    weeks: run(i + 1, 3, weeks).map(score),
  }));
}

/** Pictures of a child's term and of a class, by name. */
export const CLASS_SAMPLES: Readonly<Record<string, Drawing>> = {
  'the smallest class map': sampleMap(1, 1),
  'a class map of thirty-six': sampleMap(36, 8),
  'a class map nobody practised for': classMap({
    title: '',
    strandLabels: LABELS,
    rows: run(1, 1, 3).map((number) => ({ number, name: 'Wren', cells: LABELS.map(() => null) })),
    footer: '',
  }),
  'a term': progressPicture({
    title: 'Wren, this term',
    evenings: 37,
    weekLabels: WEEKS.slice(0, 6),
    strands: strands(4, 6),
    footer: 'Wren’s own evenings only.',
  }),
  'a long term': progressPicture({
    title: 'Tamarind the Second of Oakfield, this term',
    evenings: 80,
    weekLabels: WEEKS,
    strands: strands(8, 12),
    footer: FOOTER,
  }),
  'a term not begun': progressPicture({
    title: '',
    evenings: 0,
    weekLabels: ['week 1'],
    strands: [{ label: 'halves', weeks: [null] }],
    footer: '',
  }),
  'a trend': trendPicture({
    title: 'Kingfisher class, week by week',
    weekLabels: WEEKS.slice(0, 4),
    strands: strands(8, 4),
    footer: FOOTER,
  }),
};
