import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { longestRun, RUNGS, type RunRung, rungById, runStarts } from '../../../drills/index.ts';

const RUNS = RUNGS.filter((rung): rung is RunRung => rung.kind === 'run');

function run(id: string): RunRung {
  const rung = rungById(id);
  if (rung?.kind !== 'run') throw new Error(`${id} makes no runs`);
  return rung;
}

const numbersFrom = (rung: RunRung, start: number, length: number) =>
  Array.from({ length }, (_, at) => start + at * (rung.direction === 'on' ? 1 : -1) * rung.step);

const anyRun = fc
  .constantFrom(...RUNS)
  .chain((rung) =>
    fc.tuple(fc.constant(rung), fc.integer({ min: 1, max: Math.min(25, longestRun(rung)) })),
  );

describe('runStarts', () => {
  test('ten tens within 100 begin at nought or at ten', () => {
    expect(runStarts(run('counting.tens100'), 10)).toEqual([0, 10]);
  });

  test('counting back begins at the largest number', () => {
    expect(runStarts(run('counting.tensback100'), 10)).toEqual([90, 100]);
    expect(runStarts(run('counting.onesback20'), 20)).toEqual([19, 20]);
  });

  test('the whole range leaves one start', () => {
    expect(runStarts(run('counting.tens100'), 11)).toEqual([0]);
    expect(runStarts(run('counting.onesback20'), 21)).toEqual([20]);
  });

  test('a limit that is no multiple of the step is not reached', () => {
    expect(runStarts(run('counting.threesback100'), 34)).toEqual([99]);
  });

  test('off the full tens no start is a full ten', () => {
    expect(runStarts(run('counting.tensoff100'), 10)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
    expect(runStarts(run('counting.tensoffback100'), 10)).toEqual([
      91, 92, 93, 94, 95, 96, 97, 98, 99,
    ]);
  });

  test('ten ones across hundreds to 200 have numbers on both sides of 100', () => {
    expect(runStarts(run('counting.onesacross'), 10)).toEqual([92, 93, 94, 95, 96, 97, 98, 99]);
    expect(runStarts(run('counting.onesbackacross'), 3)).toEqual([101]);
  });

  test('a run of two numbers can cross nothing and may begin anywhere', () => {
    expect(runStarts(run('counting.onesacross'), 2)).toHaveLength(200);
  });

  test('a run that is longer than the range has no start', () => {
    expect(runStarts(run('counting.tens100'), 12)).toEqual([]);
    expect(runStarts(run('counting.tensoff100'), 11)).toEqual([]);
  });

  test.each([0, -1, 2.5, Number.NaN])('a run of %d numbers is refused', (length) => {
    expect(() => runStarts(run('counting.tens'), length)).toThrow(
      `a run of ${length} numbers: give a whole number from 1 up`,
    );
  });

  test('the same rung and length give the same list', () => {
    const rung = run('counting.ones1000');
    expect(runStarts(rung, 10)).toBe(runStarts(rung, 10));
    expect(runStarts(rung, 9)).not.toEqual(runStarts(rung, 10));
  });
});

describe('any run', () => {
  const holds = (check: (rung: RunRung, length: number, starts: readonly number[]) => void) =>
    fc.assert(
      fc.property(anyRun, ([rung, length]) => check(rung, length, runStarts(rung, length))),
      { numRuns: 500 },
    );

  test('there is a start, and the starts rise', () => {
    holds((_, __, starts) => {
      expect(starts.length).toBeGreaterThan(0);
      expect(starts).toEqual(starts.toSorted((a, b) => a - b));
    });
  });

  test('every number stays between 0 and the limit, on or off the multiples as the rung says', () => {
    holds((rung, length, starts) => {
      for (const number of starts.flatMap((start) => numbersFrom(rung, start, length))) {
        const fits = number >= 0 && number <= rung.limit;
        const isMultiple = number % rung.step === 0;
        if (!fits || isMultiple !== (rung.starts === 'multiples')) {
          expect.fail(`${rung.id} of ${length} says ${number}`);
        }
      }
    });
  });

  test('a rung that crosses hundreds has a number below and a number above one', () => {
    holds((rung, length, starts) => {
      if (rung.crosses === undefined || length < 3) return;
      for (const start of starts) {
        const hundreds = numbersFrom(rung, start, length).map((n) => Math.floor(n / 100));
        const inside = numbersFrom(rung, start, length).slice(1, -1);
        expect(new Set(hundreds).size).toBeGreaterThan(1);
        expect(inside.some((n) => n % 100 === 0)).toBe(true);
      }
    });
  });
});

describe('longestRun', () => {
  test.each([
    ['counting.tens100', 11],
    ['counting.tensoff100', 10],
    ['counting.threes100', 34],
    ['counting.onesback20', 21],
    ['counting.onesacross', 201],
  ])('%s holds %d numbers', (id, longest) => {
    expect(longestRun(run(id))).toBe(longest);
  });

  test('a run one longer has no start on any rung', () => {
    for (const rung of RUNS) {
      expect(runStarts(rung, longestRun(rung)).length, rung.id).toBeGreaterThan(0);
      expect(runStarts(rung, longestRun(rung) + 1), rung.id).toEqual([]);
    }
  });
});
