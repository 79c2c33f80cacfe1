import { describe, expect, test } from 'vitest';
import {
  gradesOf,
  isUsual,
  PROFILES,
  type ProfileId,
  profileById,
  RUNGS,
  type RungId,
  rungById,
  usualRungs,
} from '../../../drills/index.ts';

const rungsOf = (...asked: Parameters<typeof usualRungs>) =>
  usualRungs(...asked).map(({ rung }) => rung);

/** Where a profile first places each rung: 0 is its youngest grade. */
function firstGrades(profile: ProfileId): Map<RungId, number> {
  const first = new Map<RungId, number>();
  for (const [at, { id }] of gradesOf(profile).entries()) {
    for (const rung of rungsOf(profile, id)) if (!first.has(rung)) first.set(rung, at);
  }
  return first;
}

describe('profiles', () => {
  test('there are four curricula and our own order', () => {
    expect(PROFILES.map(({ id }) => id)).toEqual(['england', 'ccss', 'caps', 'acara', 'own']);
  });

  test('a profile is found by its id, and nothing else is', () => {
    expect(profileById('caps')?.title).toBe('South Africa, CAPS and teaching plan 2022');
    expect(profileById('CAPS')).toBeNull();
    expect(profileById('toString')).toBeNull();
  });

  test.each<[ProfileId, string[]]>([
    ['england', ['Year 1', 'Year 2', 'Year 3']],
    ['ccss', ['Kindergarten', 'Grade 1', 'Grade 2', 'Grade 3']],
    ['caps', ['Grade 1', 'Grade 2', 'Grade 3']],
    ['acara', ['Year 1', 'Year 2', 'Year 3']],
    ['own', []],
  ])('%s calls its grades as that curriculum does', (profile, labels) => {
    expect(gradesOf(profile).map(({ label }) => label)).toEqual(labels);
    expect(profile !== 'ccss' || gradesOf('ccss')[0]?.id === 'K').toBe(true);
  });

  test('every statement stands in a grade of its profile and places rungs that exist, each once', () => {
    for (const { id, grades, statements } of PROFILES) {
      for (const { grade, text, rungs } of statements) {
        expect(grades.map((each) => each.id)).toContain(grade);
        expect(rungs.length, `${id}: ${text}`).toBeGreaterThan(0);
        expect(rungs.filter((rung) => rungById(rung) === null)).toEqual([]);
        expect(new Set(rungs).size).toBe(rungs.length);
      }
    }
  });
});

describe('usualRungs', () => {
  test('Kindergarten of the Common Core adds within 5 and makes 10', () => {
    expect(rungsOf('ccss', 'K', 'bonds')).toEqual(['bonds.within5', 'bonds.make10']);
  });

  test('each rung comes once, in ladder order, with the first statement that asks for it', () => {
    for (const { id, grades } of PROFILES) {
      for (const grade of grades) {
        const usual = usualRungs(id, grade.id);
        const places = usual.map(({ rung }) => RUNGS.findIndex((each) => each.id === rung));
        expect(places).toEqual([...new Set(places)].toSorted((a, b) => a - b));
        for (const { rung, statement } of usual) {
          expect(statement?.grade).toBe(grade.id);
          expect(
            rungById(rung)?.sources.some((line) => line.startsWith(statement?.text ?? '')),
          ).toBe(true);
        }
      }
    }
  });

  test('a strand narrows the list', () => {
    const whole = rungsOf('england', '2');
    expect(rungsOf('england', '2', 'times')).toEqual(
      whole.filter((rung) => rung.startsWith('times.')),
    );
    expect(rungsOf('england', '1', 'times')).toEqual([]);
  });

  test('our own order gives every rung, whatever the grade', () => {
    expect(rungsOf('own', '')).toEqual(RUNGS.map(({ id }) => id));
    expect(usualRungs('own', '7', 'halves').map(({ statement }) => statement)).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });

  test('a grade that the profile does not name is refused with those it has', () => {
    const message = 'Common Core (United States) has no grade 4; its grades are K, 1, 2, 3';
    expect(() => usualRungs('ccss', '4')).toThrow(message);
    expect(() => isUsual('ccss', '4', 'bonds.to10')).toThrow(message);
    expect(() => usualRungs('england', 'Year 1')).toThrow(RangeError);
  });
});

describe('isUsual', () => {
  test('no clock is read in Grade 1 of South Africa', () => {
    expect(isUsual('caps', '1', 'clock.half')).toBe(false);
    expect(isUsual('caps', '2', 'clock.half')).toBe(true);
  });

  test('it agrees with the list, rung by rung', () => {
    for (const { id, grades } of PROFILES) {
      for (const grade of grades) {
        const usual = new Set(rungsOf(id, grade.id));
        for (const { id: rung } of RUNGS) {
          expect(isUsual(id, grade.id, rung)).toBe(usual.has(rung));
        }
      }
    }
  });

  test('in our own order every rung is usual', () => {
    for (const { id } of RUNGS) expect(isUsual('own', '1', id)).toBe(true);
  });
});

describe('the order of grades', () => {
  test.each(PROFILES.map(({ id }) => id))(
    'in %s no rung comes in an easier grade than what it needs',
    (profile) => {
      const first = firstGrades(profile);
      for (const [rung, grade] of first) {
        for (const need of rungById(rung)?.needs ?? []) {
          expect(first.get(need) ?? 0, `${rung} needs ${need}`).toBeLessThanOrEqual(grade);
        }
      }
    },
  );

  test('every rung of facts is usual somewhere', () => {
    const placed = new Set(PROFILES.flatMap(({ id }) => [...firstGrades(id).keys()]));
    const ours = RUNGS.filter(({ kind, id }) => kind === 'facts' && !placed.has(id));
    expect(ours.map(({ id }) => id)).toEqual([]);
  });

  test('the runs that nobody asks for are known', () => {
    const placed = new Set(PROFILES.flatMap(({ id }) => [...firstGrades(id).keys()]));
    expect(
      RUNGS.filter(({ id }) => !placed.has(id)).map(({ id, sources }) => [id, sources]),
    ).toEqual(
      ['counting.tensoff', 'counting.tensoffback'].map((id) => [
        id,
        ['common practice, no source'],
      ]),
    );
  });
});
