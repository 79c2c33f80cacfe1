import { describe, expect, it } from 'vitest';
import { PALETTE } from '../../bot/media/palette.ts';
import { contrastRatio } from '../bot/media/contrast-ratio.ts';
import { textsOnGrounds } from '../bot/media/grounds.ts';
import { SAMPLES } from '../bot/media/samples.ts';

/** WCAG 2.2, success criteria 1.4.3 (text) and 1.4.11 (graphics): the least contrast each allows. */
const TEXT = 4.5;
const GRAPHICS = 3;

/**
 * Source: WCAG 2.2, https://www.w3.org/TR/WCAG22/#contrast-minimum and #non-text-contrast. The vectors are worked from the
 * definition of contrast ratio there; #767676 and #949494 are the well-known last greys to pass on white.
 */
describe('the contrast ratio the tests compute', () => {
  it.each([
    ['#000000', '#ffffff', 21, true, true],
    ['#767676', '#ffffff', 4.5422, true, true],
    ['#777777', '#ffffff', 4.4781, false, true],
    ['#949494', '#ffffff', 3.0335, false, true],
    ['#959595', '#ffffff', 2.9953, false, false],
    ['#ff0000', '#ffffff', 3.9985, false, true],
    ['#0000ff', '#ffffff', 8.5925, true, true],
    ['#ffffff', '#ffffff', 1, false, false],
  ])('is as worked for %s on %s, and passes where it should', (a, b, ratio, text, graphics) => {
    expect(contrastRatio(a, b)).toBeCloseTo(ratio, 4);
    expect(contrastRatio(b, a)).toBeCloseTo(ratio, 4);
    expect(contrastRatio(a, b) >= TEXT).toBe(text);
    expect(contrastRatio(a, b) >= GRAPHICS).toBe(graphics);
  });
});

describe('the palette', () => {
  const grounds = ['paper', 'card', 'tint'] as const;
  const inks = ['ink', 'softInk', 'accent'] as const;

  it.each(grounds.flatMap((ground) => inks.map((ink) => [ink, ground] as const)))(
    'lets %s carry text on %s',
    (ink, ground) => {
      expect(contrastRatio(PALETTE[ink], PALETTE[ground])).toBeGreaterThanOrEqual(TEXT);
    },
  );

  it('lets paper and card carry marks and words on ink and accent', () => {
    expect(contrastRatio(PALETTE.paper, PALETTE.ink)).toBeGreaterThanOrEqual(TEXT);
    expect(contrastRatio(PALETTE.card, PALETTE.accent)).toBeGreaterThanOrEqual(TEXT);
  });

  it.each([
    ['the long hand on the face', PALETTE.accent, PALETTE.card],
    ['the short hand on the face', PALETTE.ink, PALETTE.card],
    ['the frame of an empty answer box', PALETTE.accent, PALETTE.paper],
    ['the frame of a cell not yet known', PALETTE.ink, PALETTE.card],
    ['a secure cell beside a growing one', PALETTE.accent, PALETTE.tint],
    ['a bar of an earlier week inside its frame', PALETTE.tint, PALETTE.accent],
    ['the mark of what was not asked', PALETTE.softInk, PALETTE.paper],
    ['the filled part of a bar beside the rest', PALETTE.accent, PALETTE.line],
  ])('shows %s', (_, mark, ground) => {
    expect(contrastRatio(mark, ground)).toBeGreaterThanOrEqual(GRAPHICS);
  });
});

describe('every text of every picture', () => {
  it.each(Object.entries(SAMPLES))('is readable on what lies under it: "%s"', (_, drawing) => {
    const faint = textsOnGrounds(drawing).filter(
      ({ text, ground }) => contrastRatio(text.fill, ground) < TEXT,
    );
    expect(faint.map(({ text, ground }) => `${text.content}: ${text.fill} on ${ground}`)).toEqual(
      [],
    );
  });

  it('stands on more than one ground, so that the check sees them', () => {
    const drawing = SAMPLES['a class map of thirty-six'];
    const grounds = drawing ? textsOnGrounds(drawing).map(({ ground }) => ground) : [];
    expect(new Set(grounds)).toEqual(
      new Set([PALETTE.paper, PALETTE.card, PALETTE.tint, PALETTE.accent]),
    );
  });
});
