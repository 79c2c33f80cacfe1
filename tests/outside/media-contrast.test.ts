import { describe, expect, it } from 'vitest';
import { PALETTE } from '../../bot/media/palette.ts';
import { contrastRatio } from '../bot/media/contrast-ratio.ts';

/**
 * Source: WCAG 2.2, success criteria 1.4.3 (text 4.5:1) and 1.4.11 (graphics 3:1),
 * https://www.w3.org/TR/WCAG22/#contrast-minimum and #non-text-contrast. The vectors are worked from the definition
 * of contrast ratio there; #767676 and #949494 are the well-known last greys to pass on white.
 */
describe('the contrast ratio the tests compute', () => {
  it.each([
    ['#000000', '#ffffff', 21],
    ['#767676', '#ffffff', 4.5422],
    ['#777777', '#ffffff', 4.4781],
    ['#949494', '#ffffff', 3.0335],
    ['#959595', '#ffffff', 2.9953],
    ['#ff0000', '#ffffff', 3.9985],
    ['#0000ff', '#ffffff', 8.5925],
  ])('is as published for %s on %s', (a, b, ratio) => {
    expect(contrastRatio(a, b)).toBeCloseTo(ratio, 4);
    expect(contrastRatio(b, a)).toBeCloseTo(ratio, 4);
  });
});

describe('the palette', () => {
  const grounds = ['paper', 'card', 'tint'] as const;
  const inks = ['ink', 'softInk', 'accent'] as const;

  it.each(grounds.flatMap((ground) => inks.map((ink) => [ink, ground] as const)))(
    'lets %s carry text on %s',
    (ink, ground) => {
      expect(contrastRatio(PALETTE[ink], PALETTE[ground])).toBeGreaterThanOrEqual(4.5);
    },
  );

  it('lets paper and card carry marks and words on ink and accent', () => {
    expect(contrastRatio(PALETTE.paper, PALETTE.ink)).toBeGreaterThanOrEqual(4.5);
    expect(contrastRatio(PALETTE.card, PALETTE.accent)).toBeGreaterThanOrEqual(4.5);
  });

  it('keeps the filled part of a bar apart from the rest', () => {
    expect(contrastRatio(PALETTE.accent, PALETTE.line)).toBeGreaterThanOrEqual(3);
  });
});
