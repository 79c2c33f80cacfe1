import { describe, expect, it } from 'vitest';
import { checkPlan, firstPlan, PROFILES, usualRungs, yearShare } from '../../../drills/index.ts';
import { day } from '../support/day.ts';

const GRADES = PROFILES.flatMap(({ id: curriculum, grades }) =>
  grades.map(({ id: grade }) => ({ curriculum, grade })),
);

describe('how much of the school year is over', () => {
  it.each([
    ['england', '2026-09-03', 0],
    ['england', '2026-10-05', 1 / 9],
    ['england', '2027-06-30', 1],
    ['england', '2027-08-01', 1],
    ['caps', '2027-02-01', 0],
    ['caps', '2026-11-25', 1],
    ['acara', '2027-01-31', 1],
  ] as const)('%s on %s: %d', (curriculum, on, share) => {
    expect(yearShare(curriculum, day(on))).toBeCloseTo(share, 12);
  });
});

describe.each(GRADES)('a first plan for $curriculum $grade', ({ curriculum, grade }) => {
  it('can be used as it is, in every month, and has steps usual in the grade only', () => {
    const usual = new Set<string>(usualRungs(curriculum, grade).map(({ rung }) => rung));
    for (let month = 1; month <= 12; month += 1) {
      const on = day(`2026-${String(month).padStart(2, '0')}-15`);
      const plan = firstPlan({ curriculum, grade, day: on });
      expect(checkPlan(plan)).toEqual([]);
      for (const { rung } of plan.parts) expect(usual).toContain(rung);
    }
  });
});

it('a first plan in spring has gone further than one in autumn', () => {
  const on = (date: string) => firstPlan({ curriculum: 'england', grade: '2', day: day(date) });
  expect(on('2026-09-14').parts).toHaveLength(5);
  expect(on('2027-04-15')).not.toEqual(on('2026-09-14'));
});
