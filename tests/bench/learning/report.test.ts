import { describe, expect, test } from 'vitest';
import type { ClassOutcome } from './class-term.ts';
import { compare } from './comparison.ts';
import { intervalOf } from './interval.ts';
import { readOptions } from './options.ts';
import { renderTable } from './table.ts';

const outcome = (known: number, toMost: readonly number[] = []): ClassOutcome => ({
  children: 4,
  knownBefore: 10,
  known,
  nearly: 60,
  evenings: 20,
  score: 0.84,
  toMost,
});

describe('an interval', () => {
  test('of 1, 2, 3 is 2 and 2.484 to either side', () => {
    const { mean, half } = intervalOf([1, 2, 3]);
    expect(mean).toBe(2);
    expect(half).toBeCloseTo(4.303 / Math.sqrt(3), 3);
  });

  test('of one value has no width', () => {
    expect(intervalOf([5]).half).toBeNaN();
  });

  test('of no values is refused', () => {
    expect(() => intervalOf([])).toThrow(RangeError);
  });
});

describe('a comparison', () => {
  const random = [outcome(30), outcome(40)];
  const line = compare('ours', [outcome(40, [18, 12]), outcome(55, [15])], random, random);

  test('ratios are taken seed by seed, of what is known and of what was gained', () => {
    expect(line.ofBaseline.gained.mean).toBeCloseTo((30 / 20 + 45 / 30) / 2, 9);
    expect(line.ofBaseline.known.mean).toBeCloseTo((40 / 30 + 55 / 40) / 2, 9);
    expect(line.gainedAnEvening.mean).toBeCloseTo((30 / 20 + 45 / 20) / 2, 9);
  });

  test('those who never came so far are counted, and left out of the middle', () => {
    expect(line.reachedMost).toBeCloseTo((100 * 3) / 8, 9);
    expect(line.eveningsToMost).toBe(15);
    expect(compare('none', random, random, random).eveningsToMost).toBeNull();
  });

  test('the table has a line for each policy under a line of titles, all columns apart', () => {
    const lines = renderTable([line, { ...line, policy: 'a longer name' }]).split('\n');
    expect(lines).toHaveLength(3);
    expect(lines[0]).toMatch(/^policy\s+known\s+gained/);
    expect(lines[1]).toContain('38 % (15)');
  });
});

describe('the flags', () => {
  test('say how much is simulated', () => {
    expect(readOptions(['--quick', '--days', '20']).days).toBe(20);
    expect(readOptions(['--quick']).children).toBeLessThan(readOptions([]).children);
    expect(readOptions(['--seeds', '3', '--tuning'])).toMatchObject({
      seeds: 3,
      seedPrefix: 'tune',
    });
  });

  test.each(['0', '-1', '2.5', 'many', '10001'])('%s children are refused', (text) => {
    expect(() => readOptions([`--children=${text}`])).toThrow(`--children ${text}`);
  });

  test('a flag that does not exist is refused', () => {
    expect(() => readOptions(['--slow'])).toThrow('--slow');
  });
});
