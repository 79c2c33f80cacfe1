import { describe, expect, it } from 'vitest';
import { DIGEST_CAUTION, digest } from '../../../bot/texts/digest.ts';
import { type ChildWeek, rungById, type WeekSummary } from '../../../drills/index.ts';
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

  it('of a class that every helper has left says that, not that nobody joined', () => {
    const left = week(1, 'Wren', { joined: false, left: true, evenings: [] });
    const never = week(2, 'Otto', { joined: false, evenings: [] });
    expect(firstLine([left, never])).toBe('Kingfisher class: every helper has left.');
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
      '\n\nRight of asked\nadding within 10: 40 of 50\nNo advice where too few of the children practised.\n\n',
    );
    expect(text).toContain(
      '\n\nWobbling\n3 + 4 = 7: missed 5 of 5, by one child\nthe clock at half past three: missed 5 of 5, by one child\n',
    );
    expect(text).toContain(
      '\n\nTo call\n2. Otto: messages no longer arrive\n3. Juniper: 4 evenings in a row without an answer\n5. Sorrel: its helper has left\n4. Tamarind: no helper has joined yet\n',
    );
    expect(text).toContain('\n\nWorkbook: 10 pages done.\n');
  });

  it('names a sum and its turned-round twin in one line, and a step of a count with what comes next', () => {
    const facts = (['add:7+8', 'add:8+7'] as const).map((fact) => ({ fact, right: false }));
    const runs = [{ start: 90, step: 5, length: 5, said: 2 }];
    const evenings = [practised(WEEK[0] ?? never(), { facts, runs })];
    const text = textOf(summaryOf([week(1, 'Wren', { evenings }), week(2, 'Otto', { evenings })]));
    expect(text).toContain('\n7 + 8 = 15 and 8 + 7 = 15: missed 4 of 4, by 2 children\n');
    expect(text).toContain('\nafter 95 in fives, 100: missed 2 of 2, by 2 children\n');
  });

  it('says nothing of pages when nobody was asked for any', () => {
    const evenings = [practised(WEEK[0] ?? never(), { pages: null })];
    expect(textOf(summaryOf([week(1, 'Wren', { evenings })]))).not.toContain('Workbook');
  });

  it('fits into one message of 4096 characters in the largest class with the longest names', () => {
    // The Bot API's limit of a message. Six parts a plan, sixty children, thirty in the smaller group of each.
    const rungs = [
      ...(['bonds.to10', 'takeaway.to10', 'doubles.to10'] as const),
      ...(['halves.to20', 'clock.half', 'clock.mixed'] as const),
    ];
    const children = Array.from({ length: 60 }, (_, at) => {
      const parts = rungs.flatMap((id) => {
        const found = rungById(id);
        const right = at < 30 ? 10 : 2;
        return found ? [{ strand: found.strand, rung: found.id, right, asked: 10 }] : [];
      });
      const evenings = WEEK.map((day) => practised(day, { parts }));
      return week(at + 1, 'W'.repeat(40), { evenings, reachable: false });
    });
    const text = textOf(summaryOf(children));
    expect(text.match(/need more time/g)).toHaveLength(6);
    expect(text.length).toBeLessThan(4_096);
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
