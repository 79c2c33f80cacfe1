import { once } from 'node:events';
import { setImmediate } from 'node:timers/promises';
import PDFDocument from 'pdfkit';
import svgToPdf from 'svg-to-pdfkit';
import type { Language } from '../../drills/index.ts';
import { FONT_FILES } from '../media/font.ts';
import type { Page } from './page.ts';

/** What a document says about itself. `madeAt` is written into it, so that the same input gives the same bytes. */
export interface PdfOptions {
  readonly title: string;
  readonly language: Language;
  readonly madeAt: Date;
}

/**
 * Pages as a PDF with vector shapes and the font embedded. Between two pages others may run.
 *
 * @throws {RangeError} when there is no page.
 * @example
 * await toPdf([pageOf('a4', '')], { title: 'Cards', language: 'en', madeAt }); // starts with the bytes of '%PDF-'
 */
export async function toPdf(pages: readonly Page[], options: PdfOptions): Promise<Uint8Array> {
  if (pages.length === 0) throw new RangeError('A document needs at least one page.');
  const { title, language, madeAt } = options;
  const [regular = '', bold = ''] = FONT_FILES;
  const doc = new PDFDocument({
    autoFirstPage: false,
    margin: 0,
    lang: language,
    displayTitle: true,
    font: regular,
    info: { Title: title, Producer: 'Suppersums', CreationDate: madeAt, ModDate: madeAt },
  });
  const chunks: Uint8Array[] = [];
  doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
  const ended = once(doc, 'end');
  for (const { svg, width, height } of pages) {
    doc.addPage({ size: [width, height], margin: 0 });
    svgToPdf(doc, svg, 0, 0, {
      width,
      height,
      assumePt: true,
      // By its path, as above: under a name of its own the library would read the file anew for every text.
      fontCallback: (_family, isBold) => (isBold ? bold : regular),
    });
    await setImmediate();
  }
  doc.end();
  await ended;
  return Buffer.concat(chunks);
}
