import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import { describe, expect, it, vi } from 'vitest';
import { type Page, slipPages, squarePages, toPdf } from '../../../bot/paper/index.ts';
import { pageOf } from '../../../bot/paper/page.ts';
import { openPdf } from './open-pdf.ts';
import { MADE_AT, slipsInput } from './samples.ts';

const FONT = /\.ttf$/;

const make = (pages: readonly Page[], madeAt = MADE_AT) =>
  toPdf(pages, { title: 'Cards', language: 'en', madeAt });

describe('toPdf', () => {
  it('begins as a PDF does', async () => {
    const bytes = await make([pageOf('a4', '')]);
    expect(Buffer.from(bytes.subarray(0, 5)).toString('latin1')).toBe('%PDF-');
  });

  it('gives the same bytes for the same input, and other bytes for another date', async () => {
    const pages = squarePages({ firsts: [1], paper: 'a4' });
    const once = await make(pages);
    expect(Buffer.compare(await make(pages), once)).toBe(0);
    expect(Buffer.compare(await make(pages, new Date('2026-09-15T09:00:00Z')), once)).not.toBe(0);
  });

  it('makes documents side by side that are the same as one after the other', async () => {
    const inputs = [1, 2].map((count) => slipPages(slipsInput(count)));
    const alone = [await make(inputs[0] ?? []), await make(inputs[1] ?? [])];
    const together = await Promise.all(inputs.map((pages) => make(pages)));
    expect(
      together.map((bytes) => Buffer.compare(bytes, alone[together.indexOf(bytes)] ?? bytes)),
    ).toEqual([0, 0]);
  });

  it('keeps each page’s own size', async () => {
    const pages = await openPdf(await make([pageOf('a4', ''), pageOf('letter', '')]));
    expect(pages.map(({ width, height }) => [width, height])).toEqual([
      [595.28, 841.89],
      [612, 792],
    ]);
  });

  it('reads each font file once a document, however many texts there are', async () => {
    const pages = slipPages(slipsInput(6));
    const reads = vi.spyOn(fs, 'readFileSync');
    // The library holds the function by its own name, which follows only when told to.
    syncBuiltinESMExports();
    await make(pages);
    const read = reads.mock.calls.map(([path]) => String(path)).filter((path) => FONT.test(path));
    reads.mockRestore();
    syncBuiltinESMExports();
    expect(read).toHaveLength(2);
    expect(new Set(read).size).toBe(2);
  });

  it('refuses a document without a page', async () => {
    await expect(make([])).rejects.toThrow('at least one page');
  });

  it('embeds the font: what is read back is what was written, accents and minus sign too', async () => {
    const { text } = await import('../../../bot/media/svg.ts');
    const body = text({ x: 50, y: 50, size: 12 }, 'Zoë 9 − 4 × ñ ê “’');
    const [page] = await openPdf(await make([pageOf('a4', body)]));
    expect(page?.texts.map((each) => each.text).join('')).toBe('Zoë 9 − 4 × ñ ê “’');
  });
});

describe('a page', () => {
  it('has no colour left in it', () => {
    const pages = [...slipPages(slipsInput(1)), ...squarePages({ firsts: [1], paper: 'a4' })];
    const colours = new Set(pages.flatMap(({ svg }) => svg.match(/#[0-9a-f]{6}/g) ?? []));
    expect(colours.size).toBeGreaterThan(1);
    for (const colour of colours) expect(colour).toMatch(/^#([0-9a-f]{2})\1\1$/);
  });
});
