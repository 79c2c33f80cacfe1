import { describe, expect, test } from 'vitest';
import { type ChildWeek, summariseWeek } from '../../../drills/index.ts';
import { child, FRIDAY, practised, score, unmarked, WEEK } from '../support/week.ts';

const summaryOf = (children: readonly ChildWeek[], days = WEEK) =>
  summariseWeek({ days, today: FRIDAY, children });

const practisedOn = (number: number, ...days: number[]) =>
  child(number, { evenings: days.map((at) => practised(at)) });

describe('who practised', () => {
  test('three practised days are enough, on any days of the week', () => {
    const summary = summaryOf([practisedOn(1, 0, 2, 4), practisedOn(2, 0, 1), practisedOn(3)]);
    expect(summary.practisedThree).toBe(1);
    expect(summary.children.map(({ daysPractised }) => daysPractised)).toEqual([3, 2, 0]);
  });

  test('in a week of two school days both must be practised', () => {
    const days = WEEK.slice(0, 2);
    expect(summaryOf([practisedOn(1, 0, 1), practisedOn(2, 0)], days).practisedThree).toBe(1);
  });

  test('in a week without school days nobody has practised', () => {
    expect(summaryOf([child(1)], []).practisedThree).toBe(0);
  });

  test('never more children than have joined: one whose helper left is not counted', () => {
    const left = { ...practisedOn(2, 0, 1, 2), joined: false, left: true };
    expect(summaryOf([practisedOn(1, 0, 1, 2), left])).toMatchObject({
      joined: 1,
      practisedThree: 1,
    });
  });

  test('only children with a helper count as joined', () => {
    const left = child(3, { joined: false, left: true });
    expect(summaryOf([child(1), child(2, { joined: false }), left])).toMatchObject({
      joined: 1,
      left: 1,
    });
  });
});

describe('a child of the week', () => {
  test('every day shows how its evening ended, or none where there was no evening, and only marked ones are practised', () => {
    const evenings = [
      practised(0),
      unmarked(1, 'silent'),
      unmarked(3, 'not_today'),
      unmarked(4, 'unsent'),
    ];
    const [line] = summaryOf([child(1, { evenings })]).children;
    expect(line?.days).toEqual(['practised', 'silent', 'none', 'not_today', 'unsent']);
    expect(line?.daysPractised).toBe(1);
  });

  test('the order of evenings makes no difference', () => {
    const evenings = [practised(0), unmarked(1, 'silent'), practised(2)];
    const forwards = summaryOf([child(1, { evenings })]);
    const backwards = summaryOf([child(1, { evenings: evenings.toReversed() })]);
    expect(backwards).toEqual(forwards);
  });

  test('tallies add up over the week, a strand at a time', () => {
    const evenings = [
      practised(0, { parts: [score('bonds.to10', 8, 10), score('clock.half', 5, 10)] }),
      practised(1, { parts: [score('bonds.make10', 9, 10)] }),
    ];
    const [line] = summaryOf([child(1, { evenings })]).children;
    expect([...(line?.strands ?? [])]).toEqual([
      ['bonds', { right: 17, asked: 20 }],
      ['clock', { right: 5, asked: 10 }],
    ]);
  });

  test('an evening that was not marked never counts as nought right', () => {
    const silent = { ...unmarked(1, 'silent'), parts: [score('bonds.to10', 0, 10)] };
    const evenings = [practised(0, { parts: [score('bonds.to10', 8, 10)] }), silent];
    const summary = summaryOf([child(1, { evenings })]);
    expect(summary.children[0]?.strands.get('bonds')).toEqual({ right: 8, asked: 10 });
    expect(summary.strands[0]).toMatchObject({ right: 8, asked: 10 });
  });

  test('a strand without marks is absent', () => {
    const [line] = summaryOf([child(1, { evenings: [unmarked(0, 'silent')] })]).children;
    expect(line?.strands.size).toBe(0);
  });

  test('an evening outside the week plays no part', () => {
    const evenings = [practised(4, { parts: [score('bonds.to10', 8, 10)], pages: 2 })];
    const summary = summaryOf([child(1, { evenings })], WEEK.slice(0, 4));
    expect(summary.children[0]).toMatchObject({ daysPractised: 0, pages: null });
    expect(summary.strands).toEqual([]);
  });

  test('children come in the order of the class list', () => {
    const summary = summaryOf([child(12), child(2), child(7)]);
    expect(summary.children.map(({ number }) => number)).toEqual([2, 7, 12]);
  });
});

describe('workbook pages', () => {
  test('pages count on any evening, and unknown pages add nothing', () => {
    const first = child(1, {
      evenings: [practised(0, { pages: 2 }), { ...unmarked(1, 'not_today'), pages: 1 }],
    });
    const second = child(2, { evenings: [practised(0), practised(1, { pages: 4 })] });
    const summary = summaryOf([first, second]);
    expect(summary.children.map(({ pages }) => pages)).toEqual([3, 4]);
    expect(summary.pages).toBe(7);
  });
});

test('a class without children has an empty week', () => {
  expect(summaryOf([])).toEqual({
    days: WEEK,
    joined: 0,
    left: 0,
    practisedThree: 0,
    children: [],
    strands: [],
    rungs: [],
    wobbling: [],
    calls: [],
    slower: [],
    pages: 0,
  });
});
