import { fitText } from '../media/fit-text.ts';
import { measure } from '../media/font.ts';
import { PALETTE } from '../media/palette.ts';
import { rule, text } from '../media/svg.ts';
import { type Page, pageOf } from './page.ts';
import { EDGE, innerWidth, PAPERS, type PaperSize } from './paper-size.ts';

/** What stands around every page of a document. `right` is at the end of the title's line, `footer` at the foot. */
export interface PageFrame {
  readonly paper: PaperSize;
  readonly title: string;
  readonly right: string;
  readonly footer: string;
  /** Where a page stands among its document's, from 1. */
  readonly pageOf: (page: number, of: number) => string;
}

const TITLE = 17;
const SMALL = 9;
const RIGHT = 10.5;

/** Where the body of a framed page begins and ends, in points from the top. */
export function bodyOf(paper: PaperSize): { readonly top: number; readonly bottom: number } {
  return { top: EDGE + 36, bottom: PAPERS[paper].height - EDGE - 18 };
}

/** Puts title, footer and page number around each page's shapes. */
export function framed(bodies: readonly string[], frame: PageFrame): Page[] {
  const { paper } = frame;
  return bodies.map((body, i) => {
    const at = bodies.length > 1 ? frame.pageOf(i + 1, bodies.length) : '';
    return pageOf(paper, head(frame) + body + foot(frame, at));
  });
}

function head({ paper, title, right }: PageFrame): string {
  const end = EDGE + innerWidth(paper);
  const width = innerWidth(paper);
  const beside = fitText(right, { maxWidth: width * 0.5, size: RIGHT, minSize: 8, weight: 400 });
  const fitted = fitText(title, {
    maxWidth: width - measure(beside.text, beside.size, 400) - 14,
    size: TITLE,
    minSize: 11,
    weight: 700,
  });
  const y = EDGE + 15;
  return (
    text({ x: EDGE, y, size: fitted.size, weight: 700 }, fitted.text) +
    text({ x: end, y, size: beside.size, anchor: 'end' }, beside.text) +
    rule([EDGE, EDGE + 25], [end, EDGE + 25], PALETTE.ink, 1)
  );
}

function foot({ paper, footer }: PageFrame, at: string): string {
  const y = PAPERS[paper].height - EDGE - 3;
  const end = EDGE + innerWidth(paper);
  const style = { y, size: SMALL, fill: PALETTE.softInk } as const;
  const fitted = fitText(footer, {
    maxWidth: innerWidth(paper) - 80,
    size: SMALL,
    minSize: 7,
    weight: 400,
  });
  return (
    text({ ...style, x: EDGE, size: fitted.size }, fitted.text) +
    text({ ...style, x: end, anchor: 'end' }, at)
  );
}
