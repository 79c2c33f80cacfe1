import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

// Source: WCAG 2.2, "relative luminance", "contrast ratio", criteria 1.4.3 and 1.4.11,
// https://www.w3.org/TR/WCAG22/ ; the formula and the limits are written from memory.
function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return channel <= 0.03928 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

const css = readFileSync('rehearsal/page/style.css', 'utf8');

function colour(name: string): string {
  const found = new RegExp(`--${name}: (#[0-9a-f]{6});`).exec(css)?.[1];
  if (found === undefined) throw new Error(`the style sheet has no colour --${name}`);
  return found;
}

describe("the page's colours", () => {
  it('the formula gives 21 for black on white', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21);
  });

  it.each([
    ['ink', 'paper'],
    ['ink', 'sheet'],
    ['ink', 'accent-wash'],
    ['soft-ink', 'paper'],
    ['soft-ink', 'sheet'],
    ['soft-ink', 'accent-wash'],
    ['accent', 'paper'],
    ['accent', 'sheet'],
    ['accent', 'accent-wash'],
  ])('text in %s on %s has at least 4.5 to 1', (text, ground) => {
    expect(contrast(colour(text), colour(ground))).toBeGreaterThanOrEqual(4.5);
  });

  it('white text on the accent has at least 4.5 to 1', () => {
    expect(contrast('#ffffff', colour('accent'))).toBeGreaterThanOrEqual(4.5);
  });

  it.each(['paper', 'sheet'])('the edges of controls have at least 3 to 1 on %s', (ground) => {
    expect(contrast(colour('edge'), colour(ground))).toBeGreaterThanOrEqual(3);
  });
});
