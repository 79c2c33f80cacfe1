import { readdirSync, readFileSync, statSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { GOLDENS, goldenFile, KEPT, paintedNow } from './golden-pictures.ts';
import { type DecodedPng, readPng } from './read-png.ts';

/** Pixels whose worst channel differs by more than a faint edge would, as a share of all; 1 for another size. */
function changed(a: DecodedPng, b: DecodedPng): number {
  if (a.width !== b.width || a.height !== b.height) return 1;
  let count = 0;
  for (let i = 0; i < a.rgb.length; i += 3) {
    const differs = [0, 1, 2].some(
      (channel) => Math.abs((a.rgb[i + channel] ?? 0) - (b.rgb[i + channel] ?? 0)) > 48,
    );
    if (differs) count += 1;
  }
  return count / (a.width * a.height);
}

/** One pixel in a thousand: other machines round the edges of letters otherwise. */
const TOLERANCE = 0.001;

describe('a picture looks as it did when it was looked at', () => {
  it.each(KEPT)('"%s"', (name) => {
    const golden = readPng(readFileSync(goldenFile(name)));
    expect(
      changed(readPng(paintedNow(name)), golden),
      'looked at it? then: npx tsx tests/pictures/keep-goldens.ts',
    ).toBeLessThan(TOLERANCE);
  });

  it('would not pass with the hands of another time or with the answers marked', () => {
    const as = (name: string, other: string) =>
      changed(readPng(paintedNow(name)), readPng(readFileSync(goldenFile(other))));
    expect(as('frame: clock 5:25', 'frame: clock 5:30')).toBeGreaterThan(TOLERANCE);
    expect(as('frame: gap in the middle', 'frame: gap at the start')).toBeGreaterThan(TOLERANCE);
    expect(as('fives, for the helper', 'fives from 35')).toBeGreaterThan(TOLERANCE);
  });

  it('takes no more than 300 kB, and no file too many', () => {
    const files = readdirSync(GOLDENS).map((file) => `${GOLDENS}${file}`);
    expect(files.sort()).toEqual(KEPT.map(goldenFile).sort());
    expect(files.reduce((sum, file) => sum + statSync(file).size, 0)).toBeLessThan(300_000);
  });
});
