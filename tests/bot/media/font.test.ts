import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import {
  drawable,
  FONT_FILES,
  hasGlyphs,
  measure,
  type Weight,
  withoutMissingGlyphs,
} from '../../../bot/media/font.ts';
import { readFontTable } from '../../../bot/media/font-table.ts';
import { pictureWords } from '../../../bot/media/words.ts';
import { SAMPLES } from './samples.ts';
import { textBoxes } from './text-boxes.ts';

function inkOf(content: string, size: number, weight: Weight) {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="3000" height="300"><text x="100" y="200" font-family="Andika" font-size="${size}" font-weight="${weight}">${content}</text></svg>`;
  const font = { loadSystemFonts: false, fontFiles: [...FONT_FILES], defaultFontFamily: 'Andika' };
  return new Resvg(svg, { font }).innerBBox();
}

/** The renderer's own advance width: two bars around the text, less two bars alone, leaves no side bearing. */
function drawnWidth(content: string, weight: Weight): number {
  const around = inkOf(`H${content}H`, 100, weight)?.width ?? 0;
  return around - (inkOf('HH', 100, weight)?.width ?? 0);
}

describe('measure', () => {
  it.each([
    '3 + 4',
    '17 + ? = 20',
    '9 − 4',
    'half of 14',
    'Kingfisher class',
    'Start at 35.',
    'Count on in fives.',
    'Søren, Zoë',
    'To Ty AV',
  ])('agrees with the renderer within 2 %% for "%s"', (content) => {
    for (const weight of [400, 700] as const) {
      const drawn = drawnWidth(content, weight);
      expect(drawn).toBeGreaterThan(0);
      expect(Math.abs(measure(content, 100, weight) - drawn) / drawn).toBeLessThan(0.02);
    }
  });

  it('finds all digits equally wide', () => {
    expect(measure('0', 100, 400)).toBe(measure('1', 100, 400));
  });

  it('grows with the size and is nothing for no text', () => {
    expect(measure('Wren', 40, 700)).toBeCloseTo(2 * measure('Wren', 20, 700));
    expect(measure('', 40, 700)).toBe(0);
  });
});

describe('hasGlyphs', () => {
  it('is true for what the font draws and false for the rest', () => {
    expect(hasGlyphs('Zoë − 7')).toBe(true);
    expect(hasGlyphs('🦊')).toBe(false);
    expect(hasGlyphs('שרה')).toBe(false);
    expect(hasGlyphs('\u202eWren')).toBe(false);
  });

  it('is true for every word the pictures add', () => {
    for (const word of Object.values(pictureWords())) {
      expect(hasGlyphs(typeof word === 'string' ? word : word(10, 20)), String(word)).toBe(true);
    }
  });

  it('never lets a character through that leaves no ink', () => {
    const characters = new Set(
      Object.values(SAMPLES).flatMap((each) =>
        textBoxes(each).flatMap(({ content }) => [...content]),
      ),
    );
    characters.delete(' ');
    expect(characters.size).toBeGreaterThan(40);
    for (const character of characters) {
      for (const weight of [400, 700] as const)
        expect(inkOf(character, 100, weight), character).toBeDefined();
    }
  });
});

describe('drawable', () => {
  it('drops the graphemes the font lacks', () => {
    expect(drawable('Otto 🦊', '?')).toBe('Otto');
    expect(withoutMissingGlyphs('Wren 🦊 <3')).toBe('Wren <3');
    expect(drawable('👩‍🚀Pip👍🏽', '?')).toBe('Pip');
  });

  it('falls back when no letter or digit is left', () => {
    expect(drawable('שרה-לאה', 'child 4')).toBe('child 4');
    expect(drawable('🦊', '')).toBe('');
    expect(drawable(' ', 'x')).toBe('x');
  });

  it('drops controls, direction overrides and lone surrogates', () => {
    expect(drawable('W\u0000re\u202en\ud800', '?')).toBe('Wren');
  });

  it('keeps an accent written as a combining mark', () => {
    expect(drawable('Zoe\u0308', '?')).toBe('Zoë');
  });
});

describe('readFontTable', () => {
  it('refuses bytes that are no font', () => {
    expect(() => readFontTable(new Uint8Array(64))).toThrow(RangeError);
  });
});
