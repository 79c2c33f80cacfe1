import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type FontTable, readFontTable } from './font-table.ts';

/** The two weights the pictures use. */
export type Weight = 400 | 700;

const require = createRequire(import.meta.url);
const FILES: Readonly<Record<Weight, string>> = {
  400: require.resolve('@expo-google-fonts/andika/Andika_400Regular.ttf'),
  700: require.resolve('@expo-google-fonts/andika/Andika_700Bold.ttf'),
};

/** Paths of the Andika files, regular and bold: the only fonts a picture is drawn with. */
export const FONT_FILES: readonly string[] = [FILES[400], FILES[700]];

const tables = new Map<Weight, FontTable>();
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

function tableOf(weight: Weight): FontTable {
  const known = tables.get(weight);
  if (known) return known;
  const table = readFontTable(readFileSync(FILES[weight]));
  tables.set(weight, table);
  return table;
}

/**
 * Width in CSS px of one line of text at `size` CSS px, kerning left out.
 *
 * @example
 * measure('0', 100, 400) === measure('1', 100, 400); // => true: the font's digits are all equally wide
 */
export function measure(text: string, size: number, weight: Weight): number {
  const table = tableOf(weight);
  let em = 0;
  for (const character of text) em += table.advance(character.codePointAt(0) ?? 0);
  return em * size;
}

/**
 * Whether both weights can draw every character. Control and invisible formatting characters count as missing.
 *
 * @example
 * hasGlyphs('Zoë − 7'); // => true
 * hasGlyphs('🦊'); // => false
 */
export function hasGlyphs(text: string): boolean {
  // "Other" is Unicode's category for controls, direction overrides and lone surrogates: never ink, sometimes mischief.
  if (/\p{Other}/u.test(text)) return false;
  return [...text].every((character) => {
    const codePoint = character.codePointAt(0) ?? 0;
    return tableOf(400).has(codePoint) && tableOf(700).has(codePoint);
  });
}

/**
 * Drops every grapheme the font cannot draw whole, so that no blank box or half an accent is left.
 *
 * @example
 * withoutMissingGlyphs('Wren 🦊 <3'); // => 'Wren <3'
 */
export function withoutMissingGlyphs(text: string): string {
  const kept = [...graphemes.segment(text.normalize('NFC').replace(/\s+/gu, ' '))]
    .map(({ segment }) => segment)
    .filter(hasGlyphs);
  return kept.join('').replace(/ +/g, ' ').trim();
}

/**
 * The part of a name or title that can be drawn, or `fallback` when no letter or digit is left of it
 * (the hyphen of a double name in another script is not a name).
 *
 * @example
 * drawable('Otto 🦊', '?'); // => 'Otto'
 * drawable('שרה-לאה', 'child 4'); // => 'child 4'
 */
export function drawable(text: string, fallback: string): string {
  const kept = withoutMissingGlyphs(text);
  return /[\p{Letter}\p{Number}]/u.test(kept) ? kept : fallback;
}
