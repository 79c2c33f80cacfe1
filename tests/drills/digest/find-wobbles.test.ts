import { describe, expect, test } from 'vitest';
import { add, type ChildWeek, type FactId, summariseWeek } from '../../../drills/index.ts';
import { child, facts, practised, unmarked, WEEK } from '../support/week.ts';

const wobblesOf = (...children: ChildWeek[]) => summariseWeek({ days: WEEK, children }).wobbling;

const evening = (at: number, missed: FactId[], right: FactId[] = []) =>
  practised(at, { facts: facts({ missed, right }) });

describe('wobbling facts', () => {
  test('a fact two children missed wobbles', () => {
    const wobbles = wobblesOf(
      child(1, { evenings: [evening(0, ['add:3+4'])] }),
      child(2, { evenings: [evening(0, ['add:3+4']), evening(1, [], ['add:3+4'])] }),
    );
    expect(wobbles).toEqual([{ fact: 'add:3+4', missed: 2, asked: 3, children: 2 }]);
  });

  test('a fact one child missed on two days wobbles', () => {
    const evenings = [evening(0, ['add:3+4']), evening(2, ['add:3+4'])];
    expect(wobblesOf(child(1, { evenings }))).toEqual([
      { fact: 'add:3+4', missed: 2, asked: 2, children: 1 },
    ]);
  });

  test('one miss never makes a fact wobble, nor two on one evening', () => {
    expect(wobblesOf(child(1, { evenings: [evening(0, ['add:3+4'])] }))).toEqual([]);
    expect(wobblesOf(child(1, { evenings: [evening(0, ['add:3+4', 'add:3+4'])] }))).toEqual([]);
  });

  test('an evening that was not marked adds no miss', () => {
    const silent = { ...unmarked(1, 'silent'), facts: facts({ missed: ['add:3+4'] }) };
    expect(wobblesOf(child(1, { evenings: [evening(0, ['add:3+4']), silent] }))).toEqual([]);
  });

  test('two misses in two weigh less than eight in nine', () => {
    const often = Array.from({ length: 8 }, (_, index) =>
      child(index + 1, { evenings: [evening(0, ['sub:9-4'])] }),
    );
    const rare = [20, 21].map((number) => child(number, { evenings: [evening(0, ['add:1+1'])] }));
    const known = child(30, {
      evenings: [evening(0, [], ['sub:9-4', ...manySums(40)])],
    });
    expect(wobblesOf(...rare, ...often, known).map(({ fact }) => fact)).toEqual([
      'sub:9-4',
      'add:1+1',
    ]);
  });

  test('in a class that misses often, two in two weigh more than four in nine', () => {
    const half = Array.from({ length: 9 }, (_, index) =>
      child(index + 1, {
        evenings: [index < 4 ? evening(0, ['sub:9-4']) : evening(0, [], ['sub:9-4'])],
      }),
    );
    const both = [20, 21].map((number) => child(number, { evenings: [evening(0, ['add:1+1'])] }));
    const unsure = child(30, { evenings: [evening(0, manySums(20))] });
    expect(wobblesOf(...half, ...both, unsure).map(({ fact }) => fact)).toEqual([
      'add:1+1',
      'sub:9-4',
    ]);
  });

  test('the same misses out of fewer marks come first', () => {
    const wobbles = wobblesOf(
      child(1, { evenings: [evening(0, ['add:3+4', 'sub:9-4']), evening(1, [], ['add:3+4'])] }),
      child(2, { evenings: [evening(0, ['add:3+4', 'sub:9-4'])] }),
    );
    expect(wobbles.map(({ fact }) => fact)).toEqual(['sub:9-4', 'add:3+4']);
  });

  test('at most six are named, and ties go by spelling whatever the order of the class', () => {
    const missed = manySums(8);
    const one = child(1, { evenings: [evening(0, missed)] });
    const other = child(2, { evenings: [evening(0, missed.toReversed())] });
    const expected = [...missed].sort().slice(0, 6);
    expect(wobblesOf(one, other).map(({ fact }) => fact)).toEqual(expected);
    expect(wobblesOf(other, one).map(({ fact }) => fact)).toEqual(expected);
  });
});

function manySums(count: number): FactId[] {
  return Array.from({ length: count }, (_, index) => add(index, 50));
}
