import { describe, expect, it } from 'vitest';
import { writeCode } from '../../bot/input/written-code.ts';
import { cardPages, type Page, slipPages, squarePages } from '../../bot/paper/index.ts';
import { PAPERS } from '../../bot/paper/paper-size.ts';
import { contrastRatio } from '../bot/media/contrast-ratio.ts';
import type { PrintedPage } from '../bot/paper/open-pdf.ts';
import { cardsOf, codeOf, linkOf, slipsInput } from '../bot/paper/samples.ts';
import { scanSlip } from '../bot/paper/scan.ts';
import { printed } from '../bot/paper/within.ts';

const MM = 72 / 25.4;

describe('paper sizes', () => {
  it('A4 is 210 mm by 297 mm (ISO 216, from memory)', () => {
    expect(PAPERS.a4.width / MM).toBeCloseTo(210, 1);
    expect(PAPERS.a4.height / MM).toBeCloseTo(297, 1);
  });

  it('A4 is A0, a square metre in the ratio 1 to the root of 2, halved four times (ISO 216, from memory)', () => {
    const { width, height } = PAPERS.a4;
    // The standard rounds down to whole millimetres.
    expect(Math.floor((1000 * 2 ** 0.25) / 4)).toBe(Math.round(height / MM));
    expect(height / width).toBeCloseTo(Math.SQRT2, 2);
  });

  it('Letter is 8.5 in by 11 in (ANSI/ASME Y14.1, from memory); a point is 1/72 in (ISO 32000, from memory)', () => {
    expect(PAPERS.letter).toEqual({ width: 8.5 * 72, height: 11 * 72 });
  });

  it.each([
    ['a4', 595.28, 841.89],
    ['letter', 612, 792],
  ] as const)('another reader finds %s at %f by %f points', async (paper, width, height) => {
    for (const page of await printed(squarePages({ firsts: [1], paper }))) {
      expect([page.width, page.height]).toEqual([width, height]);
    }
  });
});

describe('a QR code', () => {
  it('is read by a decoder that is not ours, and is the join link', async () => {
    const [page] = await printed(slipPages(slipsInput(1)));
    expect(page && (await scanSlip(page, 0))).toBe(linkOf(codeOf(1)));
  });

  it('has four white modules around it (ISO/IEC 18004, from memory)', async () => {
    const [page] = await printed(slipPages(slipsInput(1)));
    if (!page) throw new Error('no page');
    const { x, y, module, size } = qrOf(slipPages(slipsInput(1))[0]);
    const isInside = (text: PrintedPage['texts'][number]) =>
      text.x + text.width > x - 4 * module &&
      text.x < x + size + 4 * module &&
      text.y > y - 4 * module &&
      text.y - text.size * 0.7 < y + size + 4 * module;
    expect(page.texts.filter(isInside).map(({ text }) => text)).toEqual([]);
  });

  it('has modules of at least 0.75 mm: a phone reads them at arm’s length (common practice, no source)', () => {
    expect(qrOf(slipPages(slipsInput(1))[0]).module / MM).toBeGreaterThan(0.75);
  });
});

describe('a written code', () => {
  it('is Base 32 as Crockford lists it: the figures, then the letters without I, L, O and U', () => {
    // https://www.crockford.com/base32.html, from memory. Node counts in 0-9a-v; the two alphabets share their order.
    const usual = '0123456789abcdefghijklmnopqrstuv';
    const crockford = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
    for (const number of [1, 2, 3, 40]) {
      const value = BigInt(`0x${Buffer.from(codeOf(number), 'base64url').toString('hex')}`);
      const whole = value * 4096n + (value % 4093n);
      const expected = [...whole.toString(32).padStart(28, '0')]
        .map((digit) => crockford[usual.indexOf(digit)])
        .join('');
      expect(writeCode(codeOf(number)).replaceAll(' ', '')).toBe(expected);
    }
  });
});

describe('print in black and white', () => {
  it('keeps text at 4.5:1 and lines at 3:1 on white paper (WCAG 2.2, 1.4.3 and 1.4.11)', () => {
    const pages = [
      ...cardPages({ cards: cardsOf('bonds.to20', 8), paper: 'a4' }),
      ...slipPages(slipsInput(1)),
      ...squarePages({ firsts: [1], paper: 'a4' }),
    ];
    const svg = pages.map((page) => page.svg).join('');
    const found = (pattern: RegExp) =>
      new Set([...svg.matchAll(pattern)].map((match) => match[1] ?? ''));
    const texts = found(/<text[^>]* fill="(#[0-9a-f]{6})"/g);
    const lines = found(/stroke="(#[0-9a-f]{6})"/g);
    expect(texts.size).toBeGreaterThan(1);
    expect(lines.size).toBeGreaterThan(1);
    for (const grey of texts) expect(contrastRatio(grey, '#ffffff')).toBeGreaterThanOrEqual(4.5);
    for (const grey of lines) expect(contrastRatio(grey, '#ffffff')).toBeGreaterThanOrEqual(3);
  });
});

/** Where the modules of a page's first QR code begin, how wide one is and all of them are, in points. */
function qrOf(page: Page | undefined) {
  const path = [...(page?.svg ?? '').matchAll(/<path d="([^"]+)" fill="#000000"/g)]
    .map((match) => match[1] ?? '')
    .find((each) => each.split('M').length > 100);
  const runs = [...(path ?? '').matchAll(/M([\d.]+) ([\d.]+)h([\d.]+)v([\d.]+)/g)].map((match) =>
    match.slice(1).map(Number),
  );
  const xs = runs.map(([left = 0]) => left);
  const ends = runs.map(([left = 0, , width = 0]) => left + width);
  const x = Math.min(...xs);
  const y = Math.min(...runs.map(([, top = 0]) => top));
  return { x, y, module: runs[0]?.[3] ?? 0, size: Math.max(...ends) - x };
}
