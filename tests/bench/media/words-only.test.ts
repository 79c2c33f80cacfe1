import { expect, it } from 'vitest';
import { USUAL_EVENING } from './drills.ts';
import { wordsOnlyBytes } from './words-only.ts';

/** What a family that chose words only is promised for an evening. */
const PROMISED = 60_000;

it('an evening in words only stays under 60 kB: texts of less than a kilobyte each, and one picture of clocks', () => {
  const bytes = wordsOnlyBytes();
  expect(bytes.reduce((sum, each) => sum + each, 0)).toBeLessThanOrEqual(PROMISED);
  const clocks = USUAL_EVENING.filter((rung) => rung.startsWith('clock.'));
  expect(clocks).toHaveLength(1);
  expect(bytes.filter((each) => each >= 1_000)).toHaveLength(clocks.length);
});
