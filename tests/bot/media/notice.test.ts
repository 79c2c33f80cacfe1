import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { FONT_FILES } from '../../../bot/media/font.ts';

const notice = readFileSync(new URL('../../../NOTICE', import.meta.url), 'utf8');
const words = (text: string) => text.replace(/\s+/g, ' ').trim();

/** The font files keep their licence in UTF-16; the part from the copyright line to the disclaimer's last word. */
function licenceIn(file: string): string {
  const bytes = readFileSync(file);
  const utf16 = (offset: number) =>
    bytes.subarray(offset, offset + 2 * Math.floor((bytes.length - offset) / 2));
  for (const offset of [0, 1]) {
    const text = Buffer.from(utf16(offset)).swap16().toString('utf16le');
    const start = text.indexOf('Copyright (c) 2004-2022 SIL International (http');
    const last = 'OTHER DEALINGS IN THE FONT SOFTWARE.';
    if (start >= 0) return text.slice(start, text.indexOf(last, start) + last.length);
  }
  return '';
}

it('NOTICE carries the licence of each font file word for word', () => {
  for (const file of FONT_FILES) {
    const licence = words(licenceIn(file));
    expect(licence).toContain('SIL OPEN FONT LICENSE Version 1.1');
    expect(words(notice)).toContain(licence);
  }
});

it('NOTICE names the licence of the rasteriser', () => {
  expect(notice).toMatch(/@resvg\/resvg-js[\s\S]*Mozilla Public License 2\.0/);
});
