import { describe, expect, it } from 'vitest';
import { DIGEST_CAUTION, digest } from '../../../bot/texts/digest.ts';
import type { ChildWeek, WeekSummary } from '../../../drills/index.ts';
import { practised, summaryOf, WEEK, week } from '../support/kingfisher.ts';

const textOf = (summary: WeekSummary) => digest('Kingfisher class', summary).text;
const firstLine = (children: readonly ChildWeek[], days = WEEK) =>
  textOf(summaryOf(children, days)).split('\n')[0];

describe('the first line of a digest', () => {
  const two = [week(1, 'Wren'), week(2, 'Otto', { evenings: [] })];

  it.each([
    [5, 'three days or more'],
    [3, 'three days or more'],
    [2, 'both days'],
    [1, 'the one day'],
  ])('of %d days says who practised enough', (days, words) => {
    expect(firstLine(two, WEEK.slice(0, days))).toBe(
      `Kingfisher class: 1 of 2 practised on ${words}.`,
    );
  });

  it('of a week without school days has nothing to tell', () => {
    expect(textOf(summaryOf(two, [])).split('\n').slice(0, 2)).toEqual([
      'Kingfisher class: no evenings to tell of.',
      'No school days in these seven days.',
    ]);
  });

  it('of a class that nobody has joined says so', () => {
    const alone = week(1, 'Wren', { joined: false, evenings: [] });
    expect(firstLine([alone])).toBe('Kingfisher class: no family has joined yet.');
    expect(firstLine([])).toBe('Kingfisher class: no family has joined yet.');
  });
});

describe('a digest', () => {
  it('says what was practised, what wobbles and whom to call', () => {
    const text = textOf(
      summaryOf([
        week(1, 'Wren'),
        week(2, 'Otto', { reachable: false, evenings: [] }),
        week(3, 'Juniper', { silentRun: 4, evenings: [] }),
        week(4, 'Tamarind', { joined: false, evenings: [] }),
        week(5, 'Sorrel', { joined: false, left: true, evenings: [] }),
      ]),
    );
    expect(text).toContain(
      '\n\nRight of asked\nnumber bonds: 40 of 50, wait (1 of 3 children practised this, too few to tell)\n',
    );
    expect(text).toContain(
      '\n\nWobbling\n3 + 4 = 7: missed 5 of 5\nthe clock at half past three: missed 5 of 5\n',
    );
    expect(text).toContain(
      '\n\nTo call\n2. Otto: messages no longer arrive\n3. Juniper: 4 evenings in a row without an answer\n5. Sorrel: its helper has left\n4. Tamarind: no helper has joined yet\n',
    );
    expect(text).toContain('\n\nWorkbook: 10 pages done.\n');
  });

  it.each<[string, number, number, number, string]>([
    ['stay', 3, 5, 10, 'stay (0 of 3 children got 9 in 10 or better)'],
    ['move on', 1, 9, 10, 'move on (1 of 1 child got 9 in 10 or better)'],
    ['stay', 3, 7, 7, 'stay (0 of 3 children got 9 in 10 or better; 3 had fewer than 8 to answer)'],
  ])(
    'says why a strand shall %s, of %d children with %d of %d',
    (_, joined, right, asked, words) => {
      const parts = [{ strand: 'bonds', rung: 'bonds.to10', right, asked }] as const;
      const evenings = [practised(WEEK[0] ?? never(), { parts })];
      const children = Array.from({ length: joined }, (_one, at) =>
        week(at + 1, `Wren ${at + 1}`, { evenings }),
      );
      expect(textOf(summaryOf(children))).toContain(
        `number bonds: ${right * joined} of ${asked * joined}, ${words}\n`,
      );
    },
  );

  it('names the strands that are ready to move on', () => {
    const parts = [{ strand: 'bonds', rung: 'bonds.to10', right: 10, asked: 10 }] as const;
    const evenings = WEEK.map((day) => practised(day, { parts }));
    const children = [1, 2, 3].map((number) => week(number, `Wren ${number}`, { evenings }));
    expect(textOf(summaryOf(children))).toContain('\nReady to move on: number bonds.\n');
    expect(textOf(summaryOf([]))).toContain('\nNothing is ready to move on yet.\n');
  });

  it('says nothing of pages when nobody was asked for any', () => {
    const evenings = [practised(WEEK[0] ?? never(), { pages: null })];
    expect(textOf(summaryOf([week(1, 'Wren', { evenings })]))).not.toContain('Workbook');
  });

  it('ends with what a score is not', () => {
    expect(textOf(summaryOf([])).endsWith(`\n${DIGEST_CAUTION}`)).toBe(true);
  });

  it('lists five calls and counts the others', () => {
    const children = Array.from({ length: 8 }, (_, at) =>
      week(at + 1, 'Wren', { reachable: false }),
    );
    expect(textOf(summaryOf(children))).toContain('\nand 3 more\n');
  });
});

function never(): never {
  throw new Error('the week has a first day');
}
