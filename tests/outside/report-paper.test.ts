import { expect, it } from 'vitest';
import { contrastRatio } from '../bot/media/contrast-ratio.ts';
import { wordsOf } from '../bot/paper/open-pdf.ts';
import { twoReports, weekPaper } from '../bot/paper/week-samples.ts';
import { printed } from '../bot/paper/within.ts';

const pages = [...twoReports(), ...weekPaper(24)];

it('every word of a report and of a week is found by a PDF reader that is not ours, as text and not as drawing', async () => {
  const read = (await printed(pages)).map((page) => wordsOf(page).replaceAll(/\s/g, ''));
  for (const [i, { svg }] of pages.entries()) {
    const written = [...svg.matchAll(/<text[^>]*>([^<]*)</g)].map((match) => match[1] ?? '');
    expect(written.length).toBeGreaterThan(5);
    for (const text of written) {
      const plain = text.replaceAll('&#39;', "'").replaceAll('&amp;', '&').replaceAll(/\s/g, '');
      expect(read[i]).toContain(plain);
    }
  }
});

it('words keep 4.5:1 and lines 3:1 on white paper, and words on their ground 4.5:1 (WCAG 2.2, 1.4.3 and 1.4.11)', () => {
  const svg = pages.map((page) => page.svg).join('');
  const found = (pattern: RegExp) => new Set([...svg.matchAll(pattern)].map((m) => m[1] ?? ''));
  const words = found(/<text[^>]* fill="(#[0-9a-f]{6})"/g);
  const lines = found(/stroke="(#[0-9a-f]{6})"/g);
  const grounds = found(/<rect[^>]* fill="(#[0-9a-f]{6})"/g);
  expect(words.size).toBeGreaterThan(1);
  for (const grey of words) {
    // White words stand on black cells only.
    const ground = grey === '#ffffff' ? '#000000' : '#ffffff';
    expect(contrastRatio(grey, ground)).toBeGreaterThanOrEqual(4.5);
  }
  for (const grey of lines) {
    if (grey === '#ffffff') continue;
    expect(contrastRatio(grey, '#ffffff')).toBeGreaterThanOrEqual(3);
  }
  // The four looks of a cell are black, grey, white with a frame, and none: any two grounds differ in greyscale.
  expect(grounds).toEqual(new Set(['#000000', '#dddddd', '#ffffff']));
  expect(contrastRatio('#000000', '#dddddd')).toBeGreaterThanOrEqual(4.5);
});
