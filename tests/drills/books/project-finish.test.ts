import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstDayWith } from '../../../drills/books/chance-done.ts';
import {
  addDays,
  type Break,
  chanceDone,
  createRandom,
  ENOUGH_EVENINGS,
  type Finish,
  type Pace,
  paceOf,
  projectClass,
  projectFinish,
  type SchoolDay,
  schoolDaysIn,
} from '../../../drills/index.ts';
import { day } from '../../support/term.ts';

const MONDAY = day('2026-09-14');
const YEAR = addDays(MONDAY, 365);
const daysWith = (...breaks: readonly Break[]) =>
  schoolDaysIn(MONDAY, YEAR, { weekdays: [1, 2, 3, 4, 5], breaks });
const DAYS = daysWith();

const anyEvenings = fc.array(fc.option(fc.integer({ min: 0, max: 8 }), { freq: 4 }), {
  minLength: 5,
  maxLength: 20,
});
const anyLeft = fc.integer({ min: 1, max: 120 });

function paceFrom(evenings: readonly (number | null)[]): Pace {
  const pace = paceOf(evenings);
  if (!pace) throw new Error('too few evenings for a pace');
  return pace;
}

/** The days of a finish; a day after all others stands for one beyond the year. */
function datesOf(finish: Finish): readonly SchoolDay[] {
  if (finish.kind !== 'finish') return [];
  const never = addDays(YEAR, 1);
  return [finish.earliest ?? never, finish.middle ?? never, finish.latest ?? never];
}

/** Where a day stands among the days ahead: what is done already before them, what lies beyond them after. */
function placeOf(on: SchoolDay | 'done' | null | undefined): number {
  if (on === 'done') return -1;
  return on ? DAYS.indexOf(on) : DAYS.length;
}

const finishOf = (evenings: readonly (number | null)[], left: number, days = DAYS) =>
  datesOf(projectFinish({ left, pace: paceOf(evenings), days }));

describe('a child’s pace', () => {
  it('is known from five answered evenings on; those without an answer count as no pages', () => {
    const four = [2, 2, null, 2, 2];
    expect(ENOUGH_EVENINGS).toBe(5);
    expect(paceOf(four)).toBeNull();
    expect(paceOf([...four, 0])).toMatchObject({ pages: 8, evenings: 6 });
    expect(paceOf([2, 2, null, 3, 1, 2])?.spread).toBeCloseTo(0.8, 12);
  });

  it('is evener than chance for the same pages every day, and less even in bursts', () => {
    expect(paceFrom([2, 2, 2, 2, 2, 2, 2, 2]).spread).toBeLessThan(0.5);
    expect(paceFrom([0, 0, 0, 8, 0, 0, 0, 8]).spread).toBeGreaterThan(2);
    expect(paceFrom([0, 0, 0, 0, 0]).spread).toBe(0.5);
  });

  it.each([-1, 1.5, Number.NaN])('of %d pages on an evening is refused', (pages) => {
    expect(() => paceOf([pages])).toThrow(RangeError);
  });
});

describe('the finish of a book', () => {
  it('is not said too early, nor for a child who does no pages; a book without pages left is done', () => {
    const kindOf = (evenings: readonly (number | null)[], left: number) =>
      projectFinish({ left, pace: paceOf(evenings), days: DAYS }).kind;
    expect(kindOf([2, 2, 2, 2, null, null], 4)).toBe('too_early');
    expect(kindOf([0, 0, 0, 0, 0], 4)).toBe('standing');
    expect(kindOf([0, 0, 0, 0, 0], 0)).toBe('done');
    expect(kindOf([], 0)).toBe('done');
    expect(kindOf([2, 2, 2, 2, 2], 4)).toBe('finish');
  });

  it('at two pages a day takes half as many school days as there are pages', () => {
    const [, middle] = finishOf([2, 2, 2, 2, 2, 2], 13);
    expect(middle).toBe('2026-09-22');
    expect(finishOf([2, 2, 2, 2, 2, 2], 1)[1]).toBe(MONDAY);
  });

  it('lies beyond the days ahead for a child who would need longer', () => {
    const finish = projectFinish({ left: 999, pace: paceOf([0, 0, 0, 0, 1]), days: DAYS });
    expect(finish).toEqual({ kind: 'finish', earliest: null, middle: null, latest: null });
    expect(projectFinish({ left: 1, pace: paceOf([2, 2, 2, 2, 2]), days: [] })).toMatchObject({
      middle: null,
    });
  });
});

describe('the days of a finish', () => {
  it('have the middle within the range', () => {
    fc.assert(
      fc.property(anyEvenings, anyLeft, (evenings, left) => {
        const dates = finishOf(evenings, left);
        expect(dates).toEqual([...dates].sort());
      }),
    );
  });

  it('are never later for more pages on an evening', () => {
    fc.assert(
      fc.property(anyEvenings, fc.nat(19), anyLeft, (evenings, place, left) => {
        const more = evenings.map((pages, at) =>
          at === place % evenings.length && pages !== null ? pages + 1 : pages,
        );
        const [before, after] = [finishOf(evenings, left)[1], finishOf(more, left)[1]];
        if (before && after) expect(after <= before).toBe(true);
      }),
    );
  });

  it('are never sooner for more pages left, at either end', () => {
    fc.assert(
      fc.property(anyEvenings, anyLeft, (evenings, left) => {
        const later = finishOf(evenings, left + 1);
        for (const [at, date] of finishOf(evenings, left).entries()) {
          expect(date <= (later[at] ?? '')).toBe(true);
        }
      }),
    );
  });

  it('are pushed on by a break before them, never onto one of its days, and not by one after them', () => {
    fc.assert(
      fc.property(anyEvenings, anyLeft, fc.nat(60), (evenings, left, ahead) => {
        const first = addDays(MONDAY, ahead);
        const holiday = { first, last: addDays(first, 13) };
        const without = finishOf(evenings, left);
        const within = finishOf(evenings, left, daysWith(holiday));
        for (const [at, date] of without.entries()) {
          const moved = within[at] ?? '';
          expect(moved >= holiday.first && moved <= holiday.last).toBe(false);
          if (date < holiday.first) expect(moved).toBe(date);
          else if (date <= YEAR) expect(moved > date).toBe(true);
        }
      }),
    );
  });

  it('hold the true one in about eight cases of ten, whether days are even, chancy or bursts', () => {
    const random = createRandom('pages of Kingfisher class');
    const kinds: readonly (() => number)[] = [
      () => (random.int(10) < 6 ? 2 : 0),
      () => [0, 0, 1, 2, 2, 2, 2, 3][random.int(8)] ?? 0,
      () => (random.int(5) === 0 ? 8 : 0),
    ];
    for (const pagesOf of kinds) {
      const runs = 300;
      let within = 0;
      for (let run = 0; run < runs; run += 1) {
        const [earliest, , latest] = finishOf(Array.from({ length: 20 }, pagesOf), 30);
        let [left, at] = [30, -1];
        while (left > 0) {
          left -= pagesOf();
          at += 1;
        }
        const end = DAYS[at] ?? addDays(YEAR, 1);
        if (earliest && latest && end >= earliest && end <= latest) within += 1;
      }
      expect(within / runs).toBeGreaterThan(0.72);
      expect(within / runs).toBeLessThan(0.95);
    }
  });
});

describe('the chance to be done', () => {
  it('is half for as much again in as many days, and certain or none at the ends', () => {
    const pace = { pages: 10, evenings: 5, spread: 1 };
    expect(chanceDone(pace, 10, 5)).toBeCloseTo(0.5, 12);
    expect(chanceDone(pace, 0, 0)).toBe(1);
    expect(chanceDone(pace, 1, 0)).toBe(0);
    expect(chanceDone({ ...pace, pages: 0 }, 1, 99)).toBe(0);
    expect(() => chanceDone(pace, 1, -1)).toThrow(RangeError);
  });

  it('rises with the days and the pages done, and falls with the pages left', () => {
    fc.assert(
      fc.property(fc.nat(60), fc.integer({ min: 1, max: 99 }), anyLeft, (pages, days, left) => {
        const pace = { pages, evenings: 20, spread: 1 };
        const chance = chanceDone(pace, left, days);
        expect(chanceDone(pace, left, days + 1)).toBeGreaterThanOrEqual(chance);
        expect(chanceDone({ ...pace, pages: pages + 1 }, left, days)).toBeGreaterThanOrEqual(
          chance,
        );
        expect(chanceDone(pace, left + 1, days)).toBeLessThanOrEqual(chance);
      }),
    );
  });
});

describe('the first day with a chance', () => {
  it('is found among days on which the chance never falls, or there is none', () => {
    const tenth = (days: number) => days / 10;
    expect(firstDayWith(tenth, 0.5, 10)).toBe(4);
    expect(firstDayWith(tenth, 0.01, 10)).toBe(0);
    expect(firstDayWith(tenth, 1, 9)).toBeNull();
    expect(firstDayWith(tenth, 0.5, 0)).toBeNull();
  });
});

describe('the finish of a class', () => {
  const steady = (left: number) => ({ left, pace: paceFrom([2, 2, 2, 2, 2, 2, 2, 2]) });
  const unknown = { left: 20, pace: null };
  const done = { left: 0, pace: null };

  it('is not said while fewer than half of the children are known, or without children', () => {
    expect(projectClass([], DAYS)).toBeNull();
    expect(projectClass([steady(4), unknown, unknown], DAYS)).toBeNull();
    expect(projectClass([steady(4), unknown], DAYS)).toMatchObject({ known: 1 });
  });

  it('is done already where as many children are', () => {
    const tens = (count: number) => [
      ...Array(count).fill(done),
      ...Array(10 - count).fill(steady(40)),
    ];
    expect(projectClass(tens(4), DAYS)?.half).not.toBe('done');
    expect(projectClass(tens(5), DAYS)?.half).toBe('done');
    expect(projectClass(tens(8), DAYS)?.nearlyAll).not.toBe('done');
    expect(projectClass(tens(9), DAYS)?.nearlyAll).toBe('done');
  });

  it('of one child is the middle and the late end of its own', () => {
    const finish = projectClass([steady(40)], DAYS);
    const own = datesOf(projectFinish({ ...steady(40), days: DAYS }));
    expect(finish?.nearlyAll).toBe(own[2]);
    expect(Math.abs(placeOf(own[1]) - placeOf(finish?.half))).toBeLessThan(2);
  });

  it('comes to half before nearly all, and a slower child moves neither to an earlier day', () => {
    const rank = (found: ReturnType<typeof projectClass>, of: 'half' | 'nearlyAll') =>
      placeOf(found?.[of]);
    fc.assert(
      fc.property(
        fc.array(anyLeft, { minLength: 1, maxLength: 12 }),
        fc.nat(11),
        (lefts, place) => {
          const found = projectClass(lefts.map(steady), DAYS);
          const slower = lefts.map((left, at) => left + (at === place % lefts.length ? 9 : 0));
          const after = projectClass(slower.map(steady), DAYS);
          expect(rank(found, 'half')).toBeLessThanOrEqual(rank(found, 'nearlyAll'));
          expect(rank(after, 'half')).toBeGreaterThanOrEqual(rank(found, 'half'));
          expect(rank(after, 'nearlyAll')).toBeGreaterThanOrEqual(rank(found, 'nearlyAll'));
        },
      ),
      { numRuns: 40 },
    );
  });

  it('lies beyond the days ahead for a class that would need longer', () => {
    expect(projectClass([steady(999)], DAYS.slice(0, 20))).toEqual({
      half: null,
      nearlyAll: null,
      known: 1,
    });
  });
});
