import { describe, expect, it } from 'vitest';
import { faceWidth } from '../../bot/media/face-line.ts';
import { fitFace } from '../../bot/media/fit-face.ts';
import { cardFrame, hasGlyphs } from '../../bot/media/index.ts';
import { textBoxes } from '../bot/media/text-boxes.ts';
import { publishedSpeller } from '../drills/support/number-rules.ts';

/** Source: the spell-out rules of the Unicode Consortium's CLDR 48 (npm cldr-rbnf 48.2.0), rule-based number format, UTS #35. */
const SPELLERS = [
  ['af', '%spellout-cardinal'],
  ['de', '%spellout-cardinal-neuter'],
  ['en', '%spellout-cardinal-verbose'],
  ['es', '%spellout-cardinal-masculine'],
  ['fr', '%spellout-cardinal-masculine'],
] as const;

const NUMBERS = Array.from({ length: 1001 }, (_, n) => n);
const LIMITS = {
  maxWidth: 416,
  maxHeight: 364,
  size: 112,
  phraseFrom: 64,
  wordFrom: 44,
  minSize: 30,
};
/** Common practice, no source: a word set at 30 of 480 px is 22 px high on a phone 360 px wide; accessibility guides ask for 16. */
const READABLE = 30;

describe.each(SPELLERS)('the published number words from 0 to 1000 in "%s"', (locale, set) => {
  const words = NUMBERS.map(publishedSpeller(locale, set));

  it('can all be drawn by both weights of the font', () => {
    expect(words.filter((word) => !hasGlyphs(word))).toEqual([]);
  });

  it('fit on a card uncut, on three lines or fewer, and large enough', () => {
    for (const word of words) {
      const { lines, size } = fitFace(word, LIMITS);
      expect(lines.length, word).toBeLessThanOrEqual(3);
      expect(size, word).toBeGreaterThanOrEqual(READABLE);
      expect(
        lines.every((line) => faceWidth(line, size) <= LIMITS.maxWidth),
        word,
      ).toBe(true);
      const letters = (text: string) => text.replace(/[\s-]/g, '');
      expect(letters(lines.join('')), word).toBe(letters(word));
    }
  });

  it('reach the frame of a card', () => {
    const longest = words.reduce((a, b) => (b.length > a.length ? b : a));
    const drawn = textBoxes(
      cardFrame({ face: { kind: 'text', text: longest }, position: 1, of: 1 }),
    ).slice(1);
    expect(drawn.map(({ content }) => content)).toEqual(fitFace(longest, LIMITS).lines);
  });
});
