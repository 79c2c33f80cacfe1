import { drawable } from '../media/font.ts';
import { PALETTE } from '../media/palette.ts';
import type { StrandScore } from '../media/strand-score.ts';
import { box, num, rule, text } from '../media/svg.ts';
import { flow, type Group, type Strip } from './flow.ts';
import type { Page } from './page.ts';
import { bodyOf, framed } from './page-frame.ts';
import { EDGE, innerWidth, type PaperSize } from './paper-size.ts';
import { beside, paragraph, stack } from './paragraph.ts';
import { smallBars } from './small-bars.ts';

/** One strand of a child's report: ready sentences, and its weeks, the latest last; `null` for one without marks. */
export interface ReportStrand {
  readonly title: string;
  readonly sentences: readonly string[];
  readonly weeks: readonly (StrandScore | null)[];
}

/** One child's report, ready to be set. `practised` counts evenings; `weekLabels` are the first and the last week's. */
export interface ChildReportPage {
  readonly number: number;
  readonly nickname: string;
  readonly lead: string;
  readonly under: string;
  readonly practised: number;
  readonly weekLabels: readonly [string, string];
  readonly strands: readonly ReportStrand[];
  readonly steps: readonly string[];
  readonly notSaid: readonly string[];
}

/** Reports to print. `right` stands at the head of each, `headings` are the words over its parts. */
export interface ReportsInput {
  readonly reports: readonly ChildReportPage[];
  readonly right: string;
  readonly footer: string;
  readonly headings: {
    readonly strands: string;
    readonly weeks: string;
    readonly dots: string;
    readonly steps: string;
    readonly notSaid: string;
    readonly page: (page: number, of: number) => string;
    readonly child: (number: number) => string;
  };
  readonly paper: PaperSize;
}

const BARS = { width: 150, height: 34 };
const GAP = 18;
const DOT = 3.4;
const DOT_PITCH = 11;
const INSET = 12;

/**
 * Reports, each beginning on a new page and holding one child's own evenings alone.
 *
 * @throws {RangeError} when there is no report.
 * @example
 * reportPages({ reports: [wren], right: '', footer: '', headings, paper: 'a4' }).length; // => 1
 */
export function reportPages(input: ReportsInput): Page[] {
  if (input.reports.length === 0) throw new RangeError('Reports need at least one child.');
  return input.reports.flatMap((report) => pagesOf(report, input));
}

function pagesOf(report: ChildReportPage, input: ReportsInput): Page[] {
  const { paper, headings, right, footer } = input;
  const width = innerWidth(paper);
  const groups: Group[] = [
    [stack([lead(report, width), evenings(report.practised, headings.dots, width)])],
    ...strandGroups(report, input),
    ...(report.steps.length > 0
      ? [[heading(headings.steps, '', paper), list(report.steps, width)]]
      : []),
    [notSaid(report.notSaid, headings.notSaid, width)],
  ];
  const title = `${report.number} · ${drawable(report.nickname, headings.child(report.number))}`;
  const bodies = flow(groups, { ...bodyOf(paper), gap: 14 });
  return framed(bodies, { paper, title, right, footer, pageOf: headings.page });
}

function lead({ lead: words, under }: ChildReportPage, width: number): Strip {
  return stack([
    space(4),
    paragraph(words, { x: EDGE, width, size: 15, weight: 700, after: 4 }),
    paragraph(under, { x: EDGE, width, size: 11, after: 2 }),
  ]);
}

/** A dot for each evening practised. No place is left empty for one that was not, so nothing can look broken. */
function evenings(count: number, label: string, width: number): Strip {
  const inRow = Math.floor(width / DOT_PITCH);
  const rows = Math.ceil(count / inRow);
  const dots = (y: number) =>
    Array.from({ length: count }, (_, i) => {
      const cx = EDGE + DOT + (i % inRow) * DOT_PITCH;
      const cy = y + 10 + Math.floor(i / inRow) * DOT_PITCH;
      return `<circle cx="${num(cx)}" cy="${num(cy)}" r="${DOT}" fill="${PALETTE.accent}"/>`;
    }).join('');
  const under = (y: number) =>
    text({ x: EDGE, y: y + rows * DOT_PITCH + 16, size: 8, fill: PALETTE.softInk }, label);
  return {
    height: rows === 0 ? 0 : rows * DOT_PITCH + 20,
    draw: (y) => (rows === 0 ? '' : dots(y) + under(y)),
  };
}

function strandGroups(report: ChildReportPage, { headings, paper }: ReportsInput): Group[] {
  if (report.strands.length === 0) return [];
  const weeks = weekLabels(report.weekLabels, paper);
  return report.strands.map((strand, i): Group => {
    const drawn = strandStrip(strand, paper);
    const last = i === report.strands.length - 1 ? [weeks] : [];
    return i === 0
      ? [heading(headings.strands, headings.weeks, paper), drawn, ...last]
      : [drawn, ...last];
  });
}

function strandStrip(strand: ReportStrand, paper: PaperSize): Strip {
  const column = innerWidth(paper) - BARS.width - GAP;
  const words = stack([
    paragraph(strand.title, { x: EDGE, width: column, size: 12, weight: 700 }),
    ...strand.sentences.map((sentence) =>
      paragraph(sentence, { x: EDGE, width: column, size: 10.5, hang: 10 }),
    ),
  ]);
  const bars: Strip = {
    height: BARS.height + 8,
    draw: (y) => smallBars(strand.weeks, { x: EDGE + column + GAP, y: y + 6, ...BARS }),
  };
  return beside(words, bars);
}

function weekLabels([first, last]: readonly [string, string], paper: PaperSize): Strip {
  const end = EDGE + innerWidth(paper);
  const style = { size: 8, fill: PALETTE.softInk, anchor: 'end' } as const;
  const label = first === last ? last : `${first} – ${last}`;
  return { height: 12, draw: (y) => text({ ...style, x: end, y: y + 9 }, label) };
}

function heading(title: string, right: string, paper: PaperSize): Strip {
  const end = EDGE + innerWidth(paper);
  return {
    height: 26,
    draw: (y) =>
      text({ x: EDGE, y: y + 13, size: 12, weight: 700, fill: PALETTE.softInk }, title) +
      text({ x: end, y: y + 13, size: 8, fill: PALETTE.softInk, anchor: 'end' }, right) +
      rule([EDGE, y + 19], [end, y + 19], PALETTE.line, 0.75),
  };
}

function list(sentences: readonly string[], width: number): Strip {
  return stack(
    sentences.map((sentence) => {
      const words = paragraph(sentence, { x: EDGE + 14, width: width - 14, size: 11, after: 3 });
      const dot = (y: number) =>
        `<circle cx="${num(EDGE + 5)}" cy="${num(y + 8)}" r="2" fill="${PALETTE.accent}"/>`;
      return { height: words.height, draw: (y: number) => dot(y) + words.draw(y) };
    }),
  );
}

/** In a frame of its own: it must be read with everything above it. */
function notSaid(sentences: readonly string[], title: string, width: number): Strip {
  const inner = { x: EDGE + INSET, width: width - 2 * INSET };
  const words = stack([
    paragraph(title, { ...inner, size: 10.5, weight: 700, after: 2 }),
    ...sentences.map((sentence) => paragraph(sentence, { ...inner, size: 9.5, after: 1 })),
  ]);
  const height = words.height + 2 * INSET;
  const border = { fill: PALETTE.card, border: PALETTE.softInk, borderWidth: 0.75 };
  return {
    height,
    draw: (y) => box({ x: EDGE, y, width, height, r: 6 }, border) + words.draw(y + INSET),
  };
}

function space(height: number): Strip {
  return { height, draw: () => '' };
}
