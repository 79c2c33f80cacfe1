import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import { createPainter } from '../../../bot/media/index.ts';
import {
  eveningScreen,
  fixScreen,
  type Occasion,
  pagesScreen,
} from '../../../bot/screens/evening-screen.ts';
import type { Screen } from '../../../bot/screens/screen.ts';
import type { EveningView } from '../../../db/index.ts';
import {
  bonds,
  clocks,
  EVENING_ID,
  finished,
  fives,
  scored,
  TUESDAY,
  view,
  WEDNESDAY,
} from '../support/evening.ts';

const painter = createPainter();
const screenOf = (each: EveningView, occasion?: Occasion, today = TUESDAY) =>
  eveningScreen(each, today, { painter }, occasion);
const actionsOf = ({ buttons }: Screen) => buttons.flat().map(({ data }) => unpack(data));
const kindsOf = (screen: Screen) => [...new Set(actionsOf(screen).map((action) => action?.kind))];
const labelsOf = ({ buttons }: Screen) => buttons.map((row) => row.map(({ label }) => label));

const partOf = (part: number) =>
  view({ started: true, results: [0, 1, 2].map((at) => (at < part ? scored(bonds) : null)) });
const marking = (part: number, missed: number[] = []) =>
  view({ started: true, marking: { part, missed } });

const STATES: readonly [string, EveningView, Occasion, string[]][] = [
  ['offered', view(), 'evening', ['start', 'later', 'notToday']],
  ['offered again', view(), 'tap', ['start', 'later', 'notToday']],
  ['nudged', view(), 'nudge', ['start', 'notToday']],
  ['reminded', view(), 'reminder', ['start', 'notToday']],
  ['put off for later', view({ remindAt: new Date(0) }), 'tap', ['start', 'notToday']],
  ['declined', view({ declined: true }), 'tap', ['start']],
  ['at its first part', partOf(0), 'tap', ['allRight', 'mark', 'stopToday']],
  ['at its second part', partOf(1), 'tap', ['allRight', 'mark', 'stopToday']],
  ['at a run', partOf(2), 'tap', ['allRight', 'mark', 'stopToday']],
  ['marking cards', marking(0), 'tap', ['toggle', 'done', 'stopToday']],
  ['marking a run', marking(2), 'tap', ['said', 'stopToday']],
  ['stopped for today', view({ started: true, stopped: true }), 'tap', ['start']],
  ['stopped after a part', { ...partOf(1), stopped: true }, 'tap', ['start', 'fix']],
  ['asking for pages', finished({ pages: null }), 'tap', ['pages']],
  ['finished', finished(), 'tap', ['fix']],
];

describe('an evening on the screen', () => {
  it.each(STATES)('that is %s offers what can be done then, and nothing else', (...state) => {
    const [, each, occasion, kinds] = state;
    const screen = screenOf(each, occasion);
    expect(kindsOf(screen)).toEqual(kinds);
    for (const action of actionsOf(screen)) expect(action).toMatchObject({ evening: EVENING_ID });
  });

  it.each(STATES)('that was %s offers nothing once its day is over', (...state) => {
    const [, each, occasion] = state;
    expect(screenOf(each, occasion, WEDNESDAY)).toMatchObject({ buttons: [] });
  });

  it.each([0, 1, 2])('at part %d speaks of that part only', (part) => {
    for (const screen of [screenOf(partOf(part)), screenOf(marking(part))]) {
      for (const action of actionsOf(screen)) {
        if (action && 'part' in action) expect(action.part).toBe(part);
      }
    }
  });

  it('takes two taps from its offer to a perfect first part, and one for each part after it', () => {
    expect(actionsOf(screenOf(view()))).toContainEqual({ kind: 'start', evening: EVENING_ID });
    for (const part of [0, 1, 2]) {
      const all = { kind: 'allRight', evening: EVENING_ID, part };
      expect(actionsOf(screenOf(partOf(part)))[0]).toEqual(all);
    }
  });

  it('put off for later says the time of the family’s own zone', () => {
    const later = view({ remindAt: new Date('2026-09-15T16:00:00Z') });
    expect(screenOf(later).text.text).toContain('You asked for one reminder, at 18:00.');
  });
});

describe('marking', () => {
  it('has a button for each card, two in a row, then Done', () => {
    expect(labelsOf(screenOf(marking(0, [2])))).toEqual([
      ['1. 3 + 4 = 7', '2. 5 + 5 = 10'],
      ['✗ 3. 9 + 1 = 10', '4. 2 + 6 = 8'],
      ['Done'],
      ['Stop for today'],
    ]);
  });

  it('has a row for each clock, because times are long words', () => {
    expect(labelsOf(screenOf(marking(1)))).toEqual([
      ['1. half past three'],
      ['2. half past twelve'],
      ['3. half past nine'],
      ['Done'],
      ['Stop for today'],
    ]);
  });

  it('a run has its numbers as said, each worth its place, and none', () => {
    const screen = screenOf(marking(2));
    expect(labelsOf(screen)).toEqual([['35', '40', '45', '50'], ['None yet'], ['Stop for today']]);
    const said = actionsOf(screen).map((action) => action?.kind === 'said' && action.said);
    expect(said).toEqual([1, 2, 3, 4, 0, false]);
  });

  it('a long run has five numbers in a row', () => {
    const drill = { version: 1, parts: [{ ...fives, length: 12 }] } as const;
    const screen = screenOf(view({ drill, marking: { part: 0, missed: [] } }));
    expect(screen.buttons.map((row) => row.length)).toEqual([5, 5, 2, 1, 1]);
  });
});

describe('pictures', () => {
  it('stand on parts and results only', () => {
    const pictured = STATES.filter(([, each, occasion]) => screenOf(each, occasion).picture);
    expect(pictured.map(([name]) => name)).toEqual([
      'at its first part',
      'at its second part',
      'at a run',
      'marking cards',
      'marking a run',
      'stopped for today',
      'stopped after a part',
      'finished',
    ]);
  });

  it('of a part stay the same while it is marked, so that nothing is uploaded again', () => {
    const [asked, marked, tapped] = [partOf(0), marking(0), marking(0, [1])].map(
      (each) => screenOf(each).picture?.hash,
    );
    expect(asked).toMatch(/^[0-9a-f]{64}$/);
    expect([marked, tapped]).toEqual([asked, asked]);
  });

  it('of other cards are other pictures', () => {
    const hashes = [0, 1, 2].map((part) => screenOf(partOf(part)).picture?.hash);
    expect(new Set(hashes).size).toBe(3);
  });

  it('of a part have words in their place that give no answer away', () => {
    expect(screenOf(partOf(0)).words).toBe('1. 3 + 4\n2. 5 + 5\n3. 9 + 1\n4. 2 + 6');
  });

  it('are PNG files when they are asked for', () => {
    const bytes = screenOf(finished()).picture?.paint();
    expect(
      Buffer.from(bytes ?? [])
        .subarray(1, 4)
        .toString(),
    ).toBe('PNG');
  });
});

describe('asking for pages', () => {
  it.each([
    [14, 15, ['None', '1', '2', '3', '4']],
    [14, 14, ['None', '1', '2', '3']],
    [46, 47, ['None', '1', '2', '3']],
    [48, 48, ['None', '1']],
  ])('of pages %d to %d goes from none to two more, but not past the book', (from, to, labels) => {
    const book = { title: 'Pebble Path', from, to, last: 48, next: null };
    const screen = pagesScreen(finished({ book, pages: null }));
    expect(labelsOf(screen).flat()).toEqual(labels);
    const pages = actionsOf(screen).map((action) => action?.kind === 'pages' && action.pages);
    expect(pages).toEqual(labels.map((_, at) => at));
  });
});

describe('changing a mark', () => {
  it('offers the marked parts, the workbook and the way back', () => {
    const drill = { version: 1, parts: [bonds, clocks] } as const;
    const screen = fixScreen(view({ drill, started: true, results: [scored(bonds), null] }));
    expect(actionsOf(screen)).toEqual([
      { kind: 'mark', evening: EVENING_ID, part: 0 },
      { kind: 'fixPages', evening: EVENING_ID },
      { kind: 'start', evening: EVENING_ID },
    ]);
    expect(labelsOf(screen)).toEqual([['adding within 10'], ['Pebble Path'], ['Back']]);
  });

  it('offers no pages without a workbook', () => {
    expect(kindsOf(fixScreen(finished({ book: null, pages: null })))).toEqual(['mark', 'start']);
  });
});

describe('words only', () => {
  const inWords = (part: number) => eveningScreen(partOf(part), TUESDAY, { painter, way: 'words' });

  it('show a part without a picture, its cards in the text', () => {
    expect(inWords(0).picture).toBeUndefined();
    expect(inWords(0).text.text).toContain('\n1. ');
  });

  it('show clocks as a picture all the same', () => {
    expect(inWords(1).picture?.hash).toBe(screenOf(partOf(1)).picture?.hash);
  });

  it('never leave the clocks above what follows: a small picture takes their place', () => {
    const after = inWords(2);
    expect(after.picture).toBeDefined();
    expect(after.picture?.hash).not.toBe(inWords(1).picture?.hash);
    expect(after.picture?.paint().length).toBeLessThan(6000);
    expect(after.text.text).toContain('Start at');
  });
});
