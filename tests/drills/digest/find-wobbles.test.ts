import { describe, expect, test } from 'vitest';
import { add, type ChildWeek, type FactId, summariseWeek } from '../../../drills/index.ts';
import { child, FRIDAY, facts, practised, unmarked, WEEK } from '../support/week.ts';

const wobblesOf = (...children: ChildWeek[]) =>
  summariseWeek({ days: WEEK, today: FRIDAY, children }).wobbling;
const namesOf = (...children: ChildWeek[]) => wobblesOf(...children).map((each) => each.facts[0]);

const evening = (at: number, missed: FactId[], right: FactId[] = []) =>
  practised(at, { facts: facts({ missed, right }) });

describe('a fact wobbles', () => {
  test('when two children missed it', () => {
    const wobbles = wobblesOf(
      child(1, { evenings: [evening(0, ['add:3+4'])] }),
      child(2, { evenings: [evening(0, ['add:3+4']), evening(1, [], ['add:3+4'])] }),
    );
    expect(wobbles).toEqual([{ facts: ['add:3+4'], missed: 2, asked: 3, children: 2 }]);
  });

  test('when one child missed it on two days', () => {
    const evenings = [evening(0, ['add:3+4']), evening(2, ['add:3+4'])];
    expect(wobblesOf(child(1, { evenings }))).toEqual([
      { facts: ['add:3+4'], missed: 2, asked: 2, children: 1 },
    ]);
  });

  test('never by one miss, nor by two on one evening', () => {
    expect(wobblesOf(child(1, { evenings: [evening(0, ['add:3+4'])] }))).toEqual([]);
    expect(wobblesOf(child(1, { evenings: [evening(0, ['add:3+4', 'add:3+4'])] }))).toEqual([]);
  });

  test('never by an evening that was not marked', () => {
    const silent = { ...unmarked(1, 'silent'), facts: facts({ missed: ['add:3+4'] }) };
    expect(wobblesOf(child(1, { evenings: [evening(0, ['add:3+4']), silent] }))).toEqual([]);
  });
});

describe('the order of wobbling facts', () => {
  test('two misses in two weigh less than eight in nine', () => {
    const often = Array.from({ length: 8 }, (_, index) =>
      child(index + 1, { evenings: [evening(0, ['sub:9-4'], ['add:2+2'])] }),
    );
    const rare = [20, 21].map((number) =>
      child(number, { evenings: [evening(0, ['add:1+1'], ['add:2+2'])] }),
    );
    const known = child(30, { evenings: [evening(0, [], ['sub:9-4', ...manySums(40)])] });
    expect(namesOf(...rare, ...often, known)).toEqual(['sub:9-4', 'add:1+1']);
  });

  test('the same misses out of fewer marks come first', () => {
    const wobbles = namesOf(
      child(1, { evenings: [evening(0, ['add:3+4', 'sub:9-4']), evening(1, [], ['add:3+4'])] }),
      child(2, { evenings: [evening(0, ['add:3+4', 'sub:9-4'])] }),
    );
    expect(wobbles).toEqual(['sub:9-4', 'add:3+4']);
  });

  test('one child’s awful evening does not lead a fact that three children missed over days', () => {
    // Child 1 misses ten of ten on Monday. One of these, 0 + 50, it misses on Tuesday again: 2 of 2 against 6 of 9.
    const awful = child(1, {
      evenings: [evening(0, manySums(10)), evening(1, [add(0, 50)], manySums(9, 70))],
    });
    const others = Array.from({ length: 3 }, (_, index) =>
      child(index + 2, {
        evenings: [
          evening(index, ['sub:9-4'], manySums(9, 70)),
          evening(3, [], ['sub:9-4', ...manySums(8, 70)]),
          evening(4, ['sub:9-4'], manySums(9, 70)),
        ],
      }),
    );
    expect(namesOf(awful, ...others)).toEqual(['sub:9-4', add(0, 50)]);
  });

  test('of two facts missed as often, the one whose misses come from an evening gone wrong comes second', () => {
    const wrong = child(1, { evenings: [evening(0, [add(1, 50), ...manySums(9, 70)])] });
    const fine = child(2, { evenings: [evening(0, [add(2, 50)], manySums(9, 80))] });
    const both = child(3, { evenings: [evening(0, [add(1, 50), add(2, 50)], manySums(9, 80))] });
    expect(namesOf(wrong, fine, both)).toEqual([add(2, 50), add(1, 50)]);
  });

  test('an awful evening that nobody shares names no fact at all', () => {
    expect(wobblesOf(child(1, { evenings: [evening(0, manySums(20))] }))).toEqual([]);
  });

  test('at most six are named, and ties go by spelling whatever the order of the class', () => {
    const missed = manySums(8);
    const one = child(1, { evenings: [evening(0, missed)] });
    const other = child(2, { evenings: [evening(0, missed.toReversed())] });
    const expected = [...missed].sort().slice(0, 6);
    expect(namesOf(one, other)).toEqual(expected);
    expect(namesOf(other, one)).toEqual(expected);
  });
});

describe('a sum and its turned-round twin', () => {
  test('count together and are named together, the one missed more often first', () => {
    const wobbles = wobblesOf(
      child(1, { evenings: [evening(0, ['add:8+7']), evening(1, [], ['add:7+8'])] }),
      child(2, { evenings: [evening(0, ['add:8+7']), evening(1, ['add:7+8'])] }),
    );
    expect(wobbles).toEqual([{ facts: ['add:8+7', 'add:7+8'], missed: 3, asked: 4, children: 2 }]);
  });

  test('are named by the one spelling that was missed', () => {
    const children = [1, 2].map((number) =>
      child(number, { evenings: [evening(0, ['add:8+7'], ['add:7+8'])] }),
    );
    expect(wobblesOf(...children)).toEqual([
      { facts: ['add:8+7'], missed: 2, asked: 4, children: 2 },
    ]);
  });

  test('of two children who missed one each, make one wobble', () => {
    const wobbles = namesOf(
      child(1, { evenings: [evening(0, ['times:3x5'])] }),
      child(2, { evenings: [evening(0, ['times:5x3'])] }),
    );
    expect(wobbles).toEqual(['times:3x5']);
  });

  test('are not a take-away and its partner, which stay two facts', () => {
    const wobbles = wobblesOf(
      child(1, { evenings: [evening(0, ['sub:7-3'])] }),
      child(2, { evenings: [evening(0, ['sub:7-4'])] }),
    );
    expect(wobbles).toEqual([]);
  });
});

describe('a step of a counting run', () => {
  const run = (at: number, said: number) =>
    practised(at, { runs: [{ start: 102, step: -1, length: 6, said }] });

  test('wobbles where two children stopped; the steps before it were right', () => {
    // 102, 101, 100 are said and 99 is not: two steps right, the third wrong.
    const children = [1, 2].map((number) => child(number, { evenings: [run(0, 3)] }));
    expect(wobblesOf(...children, child(3, { evenings: [run(0, 6)] }))).toEqual([
      { facts: ['next:100-1'], missed: 2, asked: 3, children: 2 },
    ]);
  });

  test('does not wobble in a run that was said to its end', () => {
    expect(wobblesOf(...[1, 2].map((n) => child(n, { evenings: [run(0, 6)] })))).toEqual([]);
  });
});

function manySums(count: number, base = 50): FactId[] {
  return Array.from({ length: count }, (_, index) => add(index, base));
}
