import { createCanvas } from '@napi-rs/canvas';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** One piece of text on a page, in points from the top left corner; `y` is its baseline. */
export interface PrintedText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly size: number;
}

/** One page as it is read and seen. */
export interface PrintedPage {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly PrintedText[];
  /** Draws the page at so many pixels a point: RGBA bytes, and the same as a PNG file. */
  paint(scale: number): Promise<Painted>;
}

/** A page in pixels. */
export interface Painted {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8ClampedArray;
  png(): Buffer;
}

/** Opens a PDF with a reader that is not ours. */
export async function openPdf(bytes: Uint8Array): Promise<PrintedPage[]> {
  // The reader takes the bytes for itself.
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const numbers = Array.from({ length: pdf.numPages }, (_, i) => i + 1);
  return Promise.all(
    numbers.map(async (number) => {
      const page = await pdf.getPage(number);
      const { width, height } = page.getViewport({ scale: 1 });
      const { items } = await page.getTextContent();
      const texts = items.flatMap((item) => {
        if (!('str' in item) || item.str.trim() === '') return [];
        const [, , , size = 0, x = 0, y = 0] = item.transform.map(Number);
        return [{ text: item.str, x, y: height - y, width: item.width, size: Math.abs(size) }];
      });
      const paint = async (scale: number): Promise<Painted> => {
        const viewport = page.getViewport({ scale });
        const canvas = createCanvas(Math.ceil(viewport.width), Math.ceil(viewport.height));
        const context = canvas.getContext('2d');
        // The reader's types know a browser's canvas only; this one has the same methods.
        await page.render({ canvas: canvas as never, canvasContext: context as never, viewport })
          .promise;
        const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
        return {
          width: canvas.width,
          height: canvas.height,
          rgba: data,
          png: () => canvas.toBuffer('image/png'),
        };
      };
      return { width, height, texts, paint };
    }),
  );
}

/** All words of a page, from top to bottom. */
export function wordsOf(page: PrintedPage): string {
  return [...page.texts]
    .sort((a, b) => a.y - b.y || a.x - b.x)
    .map(({ text }) => text)
    .join(' ');
}
