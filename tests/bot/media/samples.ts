import {
  cardSheet,
  type DayState,
  type DigestRow,
  type Drawing,
  digestPicture,
  resultCard,
  runAnswerSheet,
  runSheet,
} from '../../../bot/media/index.ts';
import { CLASS_SAMPLES } from './class-samples.ts';
import { clock, run, written } from './faces.ts';
import { FRAME_SAMPLES } from './frame-samples.ts';

const STATES: readonly DayState[] = ['practised', 'not_today', 'silent', 'unsent', 'none'];
const NAMES = [
  'Wren',
  'Juniper',
  'Tamarind the Second of Oakfield',
  'Søren',
  'Zoë',
  'Otto 🦊',
  'שרה-לאה',
];
const STRANDS = [
  'number words',
  'number bonds',
  'take away',
  'doubles',
  'halves',
  'times tables',
  'clock',
  'counting',
];

/** A class's digest of any size, with every kind of mark and missing strands in it. */
export function sampleDigest(children: number, days: number, strands: number): Drawing {
  const rows = run(1, 1, children).map(
    (number): DigestRow => ({
      number,
      name: NAMES[(number - 1) % NAMES.length] ?? '',
      days: run(number, 1, days).map((i) => STATES[i % STATES.length] ?? 'none'),
      strands: run(number, 1, strands).map((i) =>
        i % 4 === 0 ? null : { right: i % 21, asked: 120 },
      ),
    }),
  );
  return digestPicture({
    title: 'Kingfisher class at Harbour Lane School',
    subtitle: 'Week of 3 to 7 November',
    dayLabels: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'].slice(0, days),
    strandLabels: STRANDS.slice(0, strands),
    rows,
    footer: 'A few cards a day are not a diagnosis. Look at two or three weeks before you decide.',
  });
}

const SUMS = run(0, 1, 20).map((i) => written(i % 2 === 0 ? `${i} + ${20 - i}` : `${i} − ${i}`));
const SPOKEN = ['one hundred and seventy-seven', 'seventy-three', 'fourteen'].map(written);
const TIMES = run(0, 1, 20).map((i) => clock((i % 12) + 1, (i * 5) % 60));
const ANSWERED = [
  { face: written('half of 14'), answer: '7' },
  { face: clock(12, 35), answer: 'twenty-five minutes to one' },
  { face: written('17 + ? = 20'), answer: '3' },
];
const LONG = 'counting back in ones from up to two hundred and quite a way further than that';

/** Every template at its smallest and at its largest, by name. */
export const SAMPLES: Readonly<Record<string, Drawing>> = {
  'three sums': cardSheet({ title: 'Number bonds', faces: SUMS.slice(0, 3) }),
  'twenty sums': cardSheet({ title: LONG, faces: SUMS }),
  gaps: cardSheet({ title: '', faces: run(0, 1, 11).map((n) => written(`${n} + ? = 10`)) }),
  'number words': cardSheet({ title: 'Say the number', faces: SPOKEN }),
  'an unbreakable word': cardSheet({
    title: 'x'.repeat(90),
    faces: run(0, 1, 4).map(() => written('y'.repeat(60))),
  }),
  'three clocks': cardSheet({ title: 'What time is it?', faces: TIMES.slice(0, 3) }),
  'twenty clocks': cardSheet({ title: 'What time is it?', faces: TIMES }),
  'mixed cards': cardSheet({
    title: 'A bit of each',
    faces: [...SUMS.slice(0, 4), ...TIMES.slice(0, 5), ...SPOKEN],
  }),
  'tens to 200': runSheet({ title: 'Counting in tens', numbers: run(10, 10, 20), limit: 200 }),
  'fives from 35': runSheet({ title: 'Counting in fives', numbers: run(35, 5, 15), limit: 200 }),
  'ones back from 131': runSheet({ title: LONG, numbers: run(131, -1, 20), limit: 200 }),
  'ones back to nought': runSheet({ title: '', numbers: run(20, -1, 21), limit: 20 }),
  'tens in the hundreds': runSheet({ title: '', numbers: run(340, 10, 20), limit: 1000 }),
  'fives, for the helper': runAnswerSheet({
    title: 'Counting in fives',
    numbers: run(35, 5, 15),
    limit: 200,
  }),
  'hundreds from nought': runAnswerSheet({ title: '', numbers: run(0, 100, 11), limit: 1000 }),
  'twenty-fives': runAnswerSheet({ title: LONG, numbers: run(25, 25, 20), limit: 1000 }),
  'one number': runSheet({ title: '', numbers: [7], limit: 100 }),
  'a result': resultCard({
    title: 'Wren, Tuesday',
    lines: [
      { label: LONG, right: 19, asked: 20, note: LONG },
      { label: 'twos', right: 0, asked: 40, note: '' },
      { label: 'clock', right: 0, asked: 0, note: 'not today' },
    ],
    sayAgain: ANSWERED,
    footer: 'Pebble Path: 2 pages done. Good night!',
  }),
  'a bare result': resultCard({ title: '', lines: [], sayAgain: [], footer: '' }),
  'one card again': resultCard({
    title: 'Otto',
    lines: [],
    sayAgain: ANSWERED.slice(0, 1),
    footer: LONG,
  }),
  'the smallest digest': sampleDigest(1, 1, 1),
  'a class of twelve': sampleDigest(12, 5, 6),
  'a class of thirty-six': sampleDigest(36, 5, 8),
  'a class of forty': sampleDigest(40, 7, 6),
  ...FRAME_SAMPLES,
  ...CLASS_SAMPLES,
};
