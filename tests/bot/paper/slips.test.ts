import { describe, expect, it } from 'vitest';
import { readCode } from '../../../bot/input/written-code.ts';
import { slipPages, toPdf } from '../../../bot/paper/index.ts';
import { longDate, PAPER_WORDS } from '../../../bot/texts/paper.ts';
import { isLanguage, LANGUAGES, parseSchoolDay } from '../../../drills/index.ts';
import type { PrintedPage } from './open-pdf.ts';
import { wordsOf } from './open-pdf.ts';
import { codeOf, HARD_NAMES, linkOf, MADE_AT, slips, slipsInput } from './samples.ts';
import { scanSlip } from './scan.ts';
import { expectApart, expectWithinEdges, printed } from './within.ts';

const TAGS = Object.keys(LANGUAGES).filter(isLanguage);
const SIZES = ['a4', 'letter'] as const;

describe('a join slip', () => {
  it.each(SIZES)('on %s carries its own child’s link as a code a camera reads', async (paper) => {
    const [page] = await printed(slipPages(slipsInput(6, { paper })));
    if (!page) throw new Error('no page');
    const read = [];
    for (let place = 0; place < 6; place += 1) read.push(await scanSlip(page, place));
    expect(read).toEqual([1, 2, 3, 4, 5, 6].map((number) => linkOf(codeOf(number))));
  });

  it('still reads at 72 pixels an inch by two, as a poor copy has', async () => {
    const [page] = await printed(slipPages(slipsInput(1)));
    expect(page && (await scanSlip(page, 0, 2))).toBe(linkOf(codeOf(1)));
  });

  it('carries the same code to be typed, which reads back as the link’s', async () => {
    const [page] = await printed(slipPages(slipsInput(2)));
    const typed = page?.texts.map(({ text }) => readCode(text)).filter((each) => each !== null);
    expect(typed).toEqual([
      { kind: 'code', code: codeOf(1) },
      { kind: 'code', code: codeOf(2) },
    ]);
  });

  it('says whose it is, until when it works, and to give it to nobody else', async () => {
    const [page] = await printed(slipPages(slipsInput(1)));
    const words = wordsOf(page as PrintedPage);
    for (const part of [
      '1 · Wren',
      '12 November 2026',
      't.me/harbour_lane_bot',
      'only to this child’s',
    ]) {
      expect(words).toContain(part);
    }
    expect(words).not.toContain('Otter');
  });
});

describe('a document of join slips', () => {
  it.each([
    [1, 1],
    [6, 1],
    [7, 2],
    [40, 7],
  ])('for %i children has %i pages', (children, pages) => {
    expect(slipPages(slipsInput(children))).toHaveLength(pages);
  });

  it('names each child once', async () => {
    const pages = await printed(slipPages(slipsInput(40)));
    const heads = pages.flatMap(({ texts }) =>
      texts.flatMap(({ text }) => /^\d+ · /.exec(text) ?? []),
    );
    expect(heads.map((head) => Number.parseInt(head, 10))).toEqual(
      Array.from({ length: 40 }, (_, i) => i + 1),
    );
  });

  it('for 24 children is lighter than a megabyte', async () => {
    const pages = slipPages(slipsInput(24));
    const bytes = await toPdf(pages, { title: 'slips', language: 'en', madeAt: MADE_AT });
    expect(bytes.byteLength).toBeLessThan(1_000_000);
  });

  it('fits a long name, and calls a child by its number when the font has none of the letters', async () => {
    const input = slipsInput(3, { slips: slips(3, HARD_NAMES), classTitle: 'W'.repeat(60) });
    const [page] = await printed(slipPages(input));
    expectWithinEdges(page as PrintedPage);
    const words = wordsOf(page as PrintedPage);
    expect(words).toContain('2 · Ace');
    expect(words).toContain('3 · child 3');
  });

  it('is refused without a child', () => {
    expect(() => slipPages(slipsInput(0))).toThrow('at least one child');
  });
});

describe.each(TAGS)('a slip in %s', (tag) => {
  it.each(SIZES)('keeps its words apart and inside its own cut on %s', async (paper) => {
    const day = parseSchoolDay('2026-09-30');
    if (!day) throw new Error('no day');
    const input = slipsInput(6, {
      paper,
      words: PAPER_WORDS[tag],
      until: longDate(day, tag),
      place: 't.me/a_bot_with_the_longest_name_allow',
    });
    const [page] = await printed(slipPages(input));
    if (!page) throw new Error('no page');
    expectWithinEdges(page);
    expectApart(page);
    const columns = page.width / 2;
    const rows = (page.height - 2 * 42.5) / 3;
    const cautions = page.texts.filter(({ text }) =>
      PAPER_WORDS[tag].onlyThisFamily.endsWith(text),
    );
    expect(cautions.length).toBeGreaterThanOrEqual(6);
    for (const { x, y, width } of page.texts) {
      const end = x < columns ? columns : page.width - 42.5;
      expect(x + width).toBeLessThanOrEqual(end - 5);
      // No text is cut by the scissors below it.
      const below = 42.5 + rows * Math.ceil((y - 42.5) / rows);
      expect(below - y).toBeGreaterThan(6);
    }
  });
});
