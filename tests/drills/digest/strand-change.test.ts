import { describe, expect, test } from 'vitest';
import { strandChange, strandWeeks } from '../../../drills/digest/strand-change.ts';
import { addDays, type ChildWeek, type RungId, summariseWeek } from '../../../drills/index.ts';
import { child, FRIDAY, practised, score, WEEK } from '../support/week.ts';

const MONDAY = WEEK[0] ?? FRIDAY;
const ago = (days: number) => addDays(MONDAY, -days);

/** A child with one evening this week and one `back` days before Monday. */
function both(
  number: number,
  now: { rung: RungId; right: number },
  before: { rung: RungId; right: number },
  back = 3,
): ChildWeek {
  return child(number, {
    evenings: [practised(2, { parts: [score(now.rung, now.right, 10)] })],
    earlier: [{ day: ago(back), parts: [score(before.rung, before.right, 10)] }],
  });
}

const many = (now: number, before: number) =>
  Array.from({ length: 10 }, (_, at) =>
    both(at + 1, { rung: 'halves.to10', right: now }, { rung: 'halves.to10', right: before }),
  );

describe('a strand beside the week before', () => {
  test('up and down are said when chance would hardly bring the difference, as its docstring says', () => {
    expect(strandChange(many(9, 7), 'halves', WEEK)).toEqual({
      kind: 'up',
      now: { right: 90, asked: 100 },
      before: { right: 70, asked: 100 },
    });
    expect(strandChange(many(7, 9), 'halves', WEEK).kind).toBe('down');
  });

  test('a card or two more are about the same', () => {
    expect(strandChange(many(9, 9), 'halves', WEEK).kind).toBe('same');
    const one = [both(1, { rung: 'halves.to10', right: 9 }, { rung: 'halves.to10', right: 7 })];
    expect(strandChange(one, 'halves', WEEK).kind).toBe('same');
  });

  test('a week without marks is new, never a rise from nought', () => {
    const fresh = child(1, { evenings: [practised(2, { parts: [score('halves.to10', 9, 10)] })] });
    expect(strandChange([fresh], 'halves', WEEK)).toEqual({ kind: 'new' });
  });

  test('two weeks ago is not last week', () => {
    const old = both(1, { rung: 'halves.to10', right: 9 }, { rung: 'halves.to10', right: 2 }, 8);
    expect(strandChange([old], 'halves', WEEK)).toEqual({ kind: 'new' });
  });

  test('the seven days before the week’s first school day are last week, the seventh among them', () => {
    const seventh = both(
      1,
      { rung: 'halves.to10', right: 9 },
      { rung: 'halves.to10', right: 2 },
      7,
    );
    expect(strandChange([seventh], 'halves', WEEK)).toMatchObject({ kind: 'up' });
  });

  test('a harder step is a new step, not a fall', () => {
    const moved = both(1, { rung: 'halves.to20', right: 4 }, { rung: 'halves.to10', right: 10 });
    expect(strandChange([moved], 'halves', WEEK)).toEqual({ kind: 'new_step' });
  });

  test('only children and steps that are in both weeks are compared', () => {
    const newcomer = child(99, {
      evenings: [practised(1, { parts: [score('halves.to10', 0, 10)] })],
    });
    const gone = child(98, { earlier: [{ day: ago(2), parts: [score('halves.to10', 0, 10)] }] });
    expect(strandChange([...many(9, 7), newcomer, gone], 'halves', WEEK)).toEqual(
      strandChange(many(9, 7), 'halves', WEEK),
    );
  });

  test('it stands in the digest beside the strand’s own tally', () => {
    const { strands } = summariseWeek({ days: WEEK, today: FRIDAY, children: many(9, 7) });
    expect(strands).toMatchObject([{ strand: 'halves', right: 90, asked: 100 }]);
    expect(strands[0]?.change.kind).toBe('up');
  });
});

describe('a strand’s last four weeks', () => {
  test('stand oldest first with this week last, and a week without marks is missing', () => {
    const two = [
      both(1, { rung: 'halves.to10', right: 9 }, { rung: 'halves.to20', right: 7 }, 3),
      both(2, { rung: 'halves.to10', right: 8 }, { rung: 'halves.to10', right: 6 }, 17),
    ];
    expect(strandWeeks(two, 'halves', WEEK)).toEqual([
      { right: 6, asked: 10 },
      null,
      { right: 7, asked: 10 },
      { right: 17, asked: 20 },
    ]);
  });

  test('of nobody are four missing weeks, as its docstring says', () => {
    expect(strandWeeks([], 'halves', WEEK)).toEqual([null, null, null, null]);
  });
});
