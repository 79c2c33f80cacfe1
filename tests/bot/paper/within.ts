import { expect } from 'vitest';
import { type Page, toPdf } from '../../../bot/paper/index.ts';
import { openPdf, type PrintedPage } from './open-pdf.ts';
import { MADE_AT } from './samples.ts';

/** 10 mm in points. */
const TEN_MM = (10 * 72) / 25.4;

/** Prints pages and reads them back. */
export async function printed(pages: readonly Page[]): Promise<PrintedPage[]> {
  return openPdf(await toPdf(pages, { title: 'test', language: 'en', madeAt: MADE_AT }));
}

/** Fails where a text of a page stands less than 10 mm from an edge of the paper. */
export function expectWithinEdges({ texts, width, height }: PrintedPage): void {
  for (const { text, x, y, width: long, size } of texts) {
    expect(x, text).toBeGreaterThanOrEqual(TEN_MM);
    expect(x + long, text).toBeLessThanOrEqual(width - TEN_MM);
    expect(y - size, text).toBeGreaterThanOrEqual(TEN_MM);
    expect(y + size * 0.3, text).toBeLessThanOrEqual(height - TEN_MM);
  }
}

/** Fails where two texts of a page lie over each other. */
export function expectApart({ texts }: PrintedPage): void {
  for (const [i, a] of texts.entries()) {
    for (const b of texts.slice(i + 1)) {
      const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
      const down = Math.min(a.y, b.y) - Math.max(a.y - a.size * 0.7, b.y - b.size * 0.7);
      expect(across > 0.5 && down > 0.5, `${a.text} over ${b.text}`).toBe(false);
    }
  }
}
