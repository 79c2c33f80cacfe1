import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  checkPlan,
  gradesOf,
  makeScheme,
  PARTS_A_WEEK,
  PROFILES,
  RUNGS,
  type Rung,
  type RungId,
  rungById,
  rungsInPart,
  rungsOf,
  TERM_WEEKS,
  type TermWish,
  usualRungs,
  type WeekPlan,
  YEAR_SHARES,
} from '../../../drills/index.ts';
import { orderOfSteps } from '../../../drills/scheme/order-of-steps.ts';

const GRADES = PROFILES.flatMap(({ id }) =>
  gradesOf(id).map((grade) => ({ curriculum: id, grade: grade.id })),
);
const anyWish: fc.Arbitrary<Required<TermWish>> = fc
  .record({
    at: fc.constantFrom(...GRADES),
    weeks: fc.integer(TERM_WEEKS),
    share: fc.constantFrom(...YEAR_SHARES),
  })
  .map(({ at, weeks, share }) => ({ ...at, weeks, share }));
const stepsOf = ({ parts }: WeekPlan) => parts.flatMap(rungsInPart);
const usualOf = ({ curriculum, grade }: TermWish) =>
  usualRungs(curriculum, grade).map(({ rung }) => rung);
const rung = (id: RungId): Rung => {
  const found = rungById(id);
  if (!found) throw new Error(`no such rung: ${id}`);
  return found;
};

/** In which week each step of a term comes first. */
function firstWeeks(weeks: readonly WeekPlan[]): Map<RungId, number> {
  const first = new Map<RungId, number>();
  for (const [week, plan] of weeks.entries()) {
    for (const step of stepsOf(plan)) if (!first.has(step)) first.set(step, week);
  }
  return first;
}

describe('a term made for a grade', () => {
  test('has as many weeks as asked, and every one could be sent', () => {
    fc.assert(
      fc.property(anyWish, (wish) => {
        const weeks = makeScheme(wish);
        expect(weeks).toHaveLength(wish.weeks);
        for (const plan of weeks) {
          expect(checkPlan(plan)).toEqual([]);
          expect(plan.parts.length).toBe(Math.min(PARTS_A_WEEK, usualOf(wish).length));
        }
      }),
    );
  });

  test('has only steps that the curriculum asks for in that grade, in their usual size', () => {
    fc.assert(
      fc.property(anyWish, (wish) => {
        const usual = usualOf(wish);
        for (const part of makeScheme(wish).flatMap(({ parts }) => parts)) {
          const { id, cards, seconds } = rung(part.rung);
          expect(usual).toContain(id);
          expect(part).toEqual({ rung: id, cards, seconds });
        }
      }),
    );
  });

  test('never brings a step before one it needs', () => {
    fc.assert(
      fc.property(anyWish, (wish) => {
        const first = firstWeeks(makeScheme(wish));
        for (const [id, week] of first) {
          for (const need of rung(id).needs) {
            const before = first.get(need);
            if (before !== undefined)
              expect(before, `${need} before ${id}`).toBeLessThanOrEqual(week);
          }
        }
      }),
    );
  });

  test('leaves no step out while there is room, and drops none to bring it back later', () => {
    fc.assert(
      fc.property(anyWish, (wish) => {
        const weeks = makeScheme({ ...wish, share: 'all' });
        const usual = usualOf(wish);
        const all = new Set(weeks.flatMap(stepsOf));
        expect(all.size).toBe(Math.min(usual.length, PARTS_A_WEEK * wish.weeks));
        for (const id of all) {
          const inWeeks = weeks.flatMap((plan, week) => (stepsOf(plan).includes(id) ? [week] : []));
          const [from = 0] = inWeeks;
          expect(inWeeks).toEqual(inWeeks.map((_, at) => from + at));
        }
      }),
    );
  });

  test('is the same term whenever it is made', () => {
    const wish = { curriculum: 'england', grade: '2', weeks: 10 } as const;
    expect(makeScheme(wish)).toEqual(makeScheme({ ...wish, share: 'all' }));
    const [first] = makeScheme({ curriculum: 'ccss', grade: 'K', weeks: 6 });
    expect(first?.parts[0]).toEqual({ rung: 'bonds.within5', cards: 10, seconds: 3 });
  });
});

describe('a third of the year', () => {
  test('and the two others have every step of the grade between them, in order', () => {
    const weeks = 20;
    for (const at of GRADES) {
      const thirds = (['first', 'second', 'last'] as const).map(
        (share) => new Set(makeScheme({ ...at, weeks, share }).flatMap(stepsOf)),
      );
      const all = new Set(thirds.flatMap((third) => [...third]));
      expect(all).toEqual(new Set(usualOf({ ...at, weeks })));
    }
  });
});

describe('a term that cannot be made', () => {
  test.each([[0], [21], [2.5], [Number.NaN]])('%d weeks are refused by the range', (weeks) => {
    expect(() => makeScheme({ curriculum: 'caps', grade: '1', weeks })).toThrow('from 1 to 20');
  });

  test('a grade that the curriculum does not name is refused', () => {
    expect(() => makeScheme({ curriculum: 'caps', grade: '9', weeks: 6 })).toThrow(RangeError);
  });
});

describe('the order of steps', () => {
  test('of one strand is the ladder’s', () => {
    const halves = orderOfSteps(rungsOf('halves')).map(({ id }) => id);
    expect(halves).toEqual(['halves.to10', 'halves.to20', 'halves.to40', 'halves.tens']);
  });

  test('never has a rung before one it needs, and each one once', () => {
    fc.assert(
      fc.property(fc.subarray([...RUNGS]), (some) => {
        const order = orderOfSteps(some).map(({ id }) => id);
        expect(order.toSorted()).toEqual(some.map(({ id }) => id).toSorted());
        for (const { id, needs } of some) {
          for (const need of needs) {
            if (order.includes(need)) expect(order.indexOf(need)).toBeLessThan(order.indexOf(id));
          }
        }
      }),
    );
  });
});
