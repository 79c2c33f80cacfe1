import { describe, expect, test } from 'vitest';
import {
  add,
  addDays,
  type ChildPast,
  double,
  type FactId,
  type Mark,
  type PastDay,
  rebuildMemory,
  reportChild,
  type SchoolDay,
} from '../../../drills/index.ts';
import { FRIDAY, score, WEEK } from '../support/week.ts';

const DOUBLES = [1, 2, 3, 4, 5].map(double);

function evening(day: SchoolDay, rest: Partial<PastDay> = {}): PastDay {
  return { day, status: 'practised', parts: [score('doubles.to5', 5, 5)], pages: null, ...rest };
}

function past(rest: Partial<ChildPast> = {}): ChildPast {
  const marks = WEEK.flatMap((day) =>
    DOUBLES.map((fact): Mark => ({ fact, day, right: true, way: 'card' })),
  );
  return {
    days: WEEK,
    evenings: WEEK.map((day) => evening(day)),
    memory: rebuildMemory(marks),
    today: FRIDAY,
    ...rest,
  };
}

const missed = (fact: FactId): Mark => ({ fact, day: FRIDAY, right: false, way: 'card' });

describe('a child’s report', () => {
  test('counts the evenings practised among the school days; one without marks is missing, not nought', () => {
    const evenings = [
      evening(WEEK[0] ?? FRIDAY),
      evening(WEEK[1] ?? FRIDAY, { status: 'silent', parts: [] }),
      evening(WEEK[2] ?? FRIDAY, { status: 'not_today', parts: [] }),
    ];
    expect(reportChild(past({ evenings }))).toMatchObject({
      practised: 1,
      schoolDays: 5,
      first: WEEK[0],
      last: FRIDAY,
      strands: [{ strand: 'doubles', right: 5, asked: 5 }],
    });
  });

  test('scores of an evening that does not count as practised add nothing', () => {
    const evenings = [evening(FRIDAY), evening(WEEK[1] ?? FRIDAY, { status: 'silent' })];
    expect(reportChild(past({ evenings })).strands[0]?.asked).toBe(5);
  });

  test('a day outside the calendar counts when it was practised, so that there is never more practised than there was', () => {
    const saturday = addDays(FRIDAY, 1);
    const report = reportChild(past({ evenings: [evening(saturday)] }));
    expect([report.practised, report.schoolDays, report.last]).toEqual([1, 6, saturday]);
  });

  test('of a child without an evening says nothing at all', () => {
    const empty = reportChild({ days: [], evenings: [], memory: new Map(), today: FRIDAY });
    expect(empty).toEqual({
      first: null,
      last: null,
      schoolDays: 0,
      practised: 0,
      weeks: [],
      strands: [],
      pages: null,
      practise: [],
      goOn: [],
    });
  });

  test('pages are added up, and unknown ones are unknown', () => {
    const evenings = [evening(FRIDAY, { pages: 2 }), evening(WEEK[0] ?? FRIDAY, { pages: null })];
    expect(reportChild(past({ evenings })).pages).toBe(2);
    expect(reportChild(past()).pages).toBeNull();
  });
});

describe('a strand of a report', () => {
  test('stands week by week under Mondays, and a week without it is missing', () => {
    const before = addDays(FRIDAY, -7);
    const evenings = [
      evening(before, { parts: [score('bonds.to10', 3, 10)] }),
      evening(FRIDAY, { parts: [score('doubles.to5', 4, 5)] }),
    ];
    const report = reportChild(past({ days: [before, FRIDAY], evenings }));
    expect(report.weeks).toEqual([addDays(FRIDAY, -11), addDays(FRIDAY, -4)]);
    expect(report.strands.map(({ strand, weeks }) => [strand, weeks])).toEqual([
      ['bonds', [{ right: 3, asked: 10 }, null]],
      ['doubles', [null, { right: 4, asked: 5 }]],
    ]);
  });

  test('the latest twelve weeks are drawn, however long the past is', () => {
    const evenings = Array.from({ length: 20 }, (_, i) => evening(addDays(FRIDAY, -7 * i)));
    const days = evenings.map(({ day }) => day);
    const report = reportChild(past({ days, evenings }));
    expect(report.weeks).toHaveLength(12);
    expect(report.weeks.at(-1)).toBe(addDays(FRIDAY, -4));
    expect(report.practised).toBe(20);
  });

  test('says of what a child is sure, and proposes the step after the hardest one', () => {
    const report = reportChild(past());
    expect(report.strands[0]?.steps).toEqual([{ rung: 'doubles.to5', level: 'secure' }]);
    expect(report.goOn).toEqual(['doubles.to10']);
    expect(report.strands[0]?.meeting).toEqual([]);
  });

  test('names what a child is still meeting, in its strand, and proposes no step on from there', () => {
    const parts = [score('bonds.to10', 0, 3)];
    const marks = [add(3, 4), add(2, 6), add(1, 8)].flatMap((fact) => [missed(fact), missed(fact)]);
    const report = reportChild(
      past({ evenings: [evening(FRIDAY, { parts })], memory: rebuildMemory(marks) }),
    );
    expect(report.strands[0]?.meeting.toSorted()).toEqual([add(1, 8), add(2, 6), add(3, 4)]);
    expect(report.practise.toSorted()).toEqual([add(1, 8), add(2, 6), add(3, 4)]);
    expect(report.goOn).toEqual([]);
  });

  test('too few answers are said to be too few', () => {
    const evenings = [evening(FRIDAY, { parts: [score('doubles.to5', 3, 3)] })];
    const [fact = double(1)] = DOUBLES;
    const memory = rebuildMemory([{ fact, day: FRIDAY, right: true, way: 'card' }]);
    expect(reportChild(past({ evenings, memory })).strands[0]?.steps).toEqual([
      { rung: 'doubles.to5', level: 'too_few' },
    ]);
  });
});
