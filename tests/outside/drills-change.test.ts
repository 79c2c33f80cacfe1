import { sampleStandardDeviation, sum } from 'simple-statistics';
import { expect, test } from 'vitest';
import { createRandom, newcombe } from '../../drills/index.ts';

const Z = 1.959964;

// Source: Newcombe, Statistics in Medicine 17 (1998), 873-890, table II, method 10 at 95 %; read from memory, please check
// against the paper. The columns are 56/70 - 48/80, 9/10 - 3/10, 6/7 - 2/7 and 5/56 - 0/29.
test.each([
  [[56, 70], [48, 80], 0.0524, 0.3339],
  [[9, 10], [3, 10], 0.1705, 0.809],
  [[6, 7], [2, 7], 0.0582, 0.8062],
  [[5, 56], [0, 29], -0.0381, 0.1926],
] as const)('%j beside %j is plausible from %d to %d', (now, before, lower, upper) => {
  const [right, asked] = now;
  const found = newcombe({ right, asked }, { right: before[0], asked: before[1] }, Z);
  expect(found.lower).toBeCloseTo(lower, 3);
  expect(found.upper).toBeCloseTo(upper, 3);
});

test('for many answers it is the textbook interval, by the sample spread of a reference library', () => {
  // With 0 and 1 as values, the standard error of a difference of means is sqrt(s1^2/n1 + s2^2/n2).
  const values = (right: number, asked: number) =>
    Array.from({ length: asked }, (_, i) => (i < right ? 1 : 0));
  const [now, before] = [values(6_200, 10_000), values(5_900, 10_000)];
  const error = Math.sqrt(
    sampleStandardDeviation(now) ** 2 / now.length +
      sampleStandardDeviation(before) ** 2 / before.length,
  );
  const middle = sum(now) / now.length - sum(before) / before.length;
  const found = newcombe({ right: 6_200, asked: 10_000 }, { right: 5_900, asked: 10_000 }, Z);
  expect(found.lower).toBeCloseTo(middle - Z * error, 4);
  expect(found.upper).toBeCloseTo(middle + Z * error, 4);
});

test('two weeks of the same children are called different in about one of twenty, by simulation', () => {
  const random = createRandom('two weeks alike');
  const count = () =>
    Array.from({ length: 100 }, () => random.int(100) < 85).filter(Boolean).length;
  const runs = 2_000;
  const alarms = Array.from({ length: runs }, () => {
    const { lower, upper } = newcombe(
      { right: count(), asked: 100 },
      { right: count(), asked: 100 },
      Z,
    );
    return lower > 0 || upper < 0;
  }).filter(Boolean).length;
  expect(alarms / runs).toBeGreaterThan(0.02);
  expect(alarms / runs).toBeLessThan(0.065);
});
