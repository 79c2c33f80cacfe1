import { describe, expect, test } from 'vitest';
import { type ChildWeek, type RungId, summariseWeek } from '../../../drills/index.ts';
import { child, FRIDAY, practised, score, WEEK } from '../support/week.ts';

/** A child marked on one rung, ten of ten unless said otherwise; `own` says that its steps are not the class's. */
function on(number: number, rung: RungId, { right = 10, own = false } = {}): ChildWeek {
  const part = score(rung, right, 10);
  const parts = [own ? { ...part, own: true as const } : part];
  return child(number, { evenings: [practised(0, { parts })] });
}

const rungsOf = (children: readonly ChildWeek[]) =>
  summariseWeek({ days: WEEK, today: FRIDAY, children }).rungs;

const CLASS = [1, 2, 3].map((number) => on(number, 'halves.to20'));

describe('a child with steps of its own', () => {
  test('leaves what is said of the class’s step as it is without it', () => {
    const [alone] = rungsOf(CLASS);
    for (const rung of ['halves.to10', 'halves.to40'] as const) {
      const others = [4, 5, 6, 7].map((number) => on(number, rung, { right: 0, own: true }));
      expect(rungsOf([...CLASS, ...others])).toEqual([alone]);
    }
    expect(alone).toMatchObject({ proposal: { kind: 'move_up' }, notYet: 0, next: 'halves.to40' });
  });

  test('counts on a step of the class that it practises all the same', () => {
    const [summary] = rungsOf([...CLASS, on(4, 'halves.to20', { right: 0, own: true })]);
    expect(summary).toMatchObject({ children: 4, notYet: 1, asked: 40 });
  });

  test('is the class where everybody has such steps', () => {
    const all = [1, 2, 3].map((number) => on(number, 'halves.to10', { own: true }));
    expect(rungsOf(all)).toMatchObject([{ rung: 'halves.to10', children: 3 }]);
  });
});

test('children who practise the class’s other step are still missing on this one', () => {
  const others = [4, 5, 6, 7].map((number) => on(number, 'doubles.to10'));
  const [, halves] = rungsOf([...CLASS, ...others]);
  expect(halves).toMatchObject({ rung: 'halves.to20', proposal: { kind: 'too_little' } });
});
