import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runEvidence, runSteps } from '../../../drills/index.ts';

const fives = { start: 35, step: 5, length: 4 };

describe('what a counting run says of its steps', () => {
  test('steps taken are right, the one where the child stopped is wrong, later ones are not known', () => {
    expect(runEvidence({ ...fives, said: 2 })).toEqual([
      { fact: 'next:35+5', right: true },
      { fact: 'next:40+5', right: false },
    ]);
  });

  test('a whole run has no wrong step', () => {
    expect(runEvidence({ ...fives, said: 4 })).toEqual([
      { fact: 'next:35+5', right: true },
      { fact: 'next:40+5', right: true },
      { fact: 'next:45+5', right: true },
    ]);
  });

  test('only the start said is a stop at the first step', () => {
    expect(runEvidence({ ...fives, said: 1 })).toEqual([{ fact: 'next:35+5', right: false }]);
  });

  test('where not even the start was said, no step is known', () => {
    expect(runEvidence({ ...fives, said: 0 })).toEqual([]);
  });

  test('a run of one number has no steps', () => {
    expect(runEvidence({ ...fives, length: 1, said: 1 })).toEqual([]);
    expect(runSteps({ ...fives, length: 0 })).toEqual([]);
  });

  test('counting back names the steps back', () => {
    expect(runSteps({ start: 3, step: -1, length: 3 })).toEqual(['next:3-1', 'next:2-1']);
  });

  test.each([-1, 5, 1.5, Number.NaN])('%d numbers said of four are refused', (said) => {
    expect(() => runEvidence({ ...fives, said })).toThrow(
      `${said} numbers said: a run of 4 has 0 to 4`,
    );
  });

  test('steps below nought are refused', () => {
    expect(() => runEvidence({ start: 5, step: -5, length: 3, said: 3 })).toThrow(RangeError);
  });

  test('any run says one less than was said right, at most one wrong, and that one last', () => {
    const runs = fc
      .record({
        start: fc.integer({ min: 0, max: 500 }),
        step: fc.integer({ min: 1, max: 10 }),
        length: fc.integer({ min: 1, max: 20 }),
      })
      .chain((run) => fc.record({ run: fc.constant(run), said: fc.nat(run.length) }));
    fc.assert(
      fc.property(runs, ({ run, said }) => {
        const steps = runEvidence({ ...run, said });
        expect(steps.filter(({ right }) => right)).toHaveLength(Math.max(0, said - 1));
        expect(steps.slice(0, -1).every(({ right }) => right)).toBe(true);
        const stopped = said > 0 && said < run.length;
        expect(steps.some(({ right }) => !right)).toBe(stopped);
        expect(steps.map(({ fact }) => fact)).toEqual(runSteps(run).slice(0, steps.length));
      }),
    );
  });
});
