import type { ChildReport, SchoolDay } from '../../drills/index.ts';
import { drawable } from '../media/index.ts';
import { type ChildReportPage, type Page, type PaperSize, reportPages } from '../paper/index.ts';
import { REPORT_WORDS, reportFoot, reportWords, theChild } from '../texts/report.ts';
import { dayAndMonth } from '../texts/words.ts';

/** One child with its report and a ready sentence on its workbook, null without one. */
export interface Reported {
  readonly child: { readonly number: number; readonly nickname: string };
  readonly report: ChildReport;
  readonly workbook: string | null;
}

/** Reports as pages to print, each child on pages of its own. `title` is the class's. */
export function reportPapers(
  reported: readonly Reported[],
  { title, today, paper }: { title: string; today: SchoolDay; paper: PaperSize },
): Page[] {
  return reportPages({
    reports: reported.map(pageOf),
    right: title,
    footer: reportFoot(today),
    headings: REPORT_WORDS,
    paper,
  });
}

function pageOf({ child, report, workbook }: Reported): ChildReportPage {
  // A name the font cannot draw would leave a hole in each sentence.
  const nickname = drawable(child.nickname, theChild());
  const words = reportWords({ nickname }, report, workbook);
  const [first, last] = [report.weeks.at(0), report.weeks.at(-1)];
  return {
    ...child,
    lead: words.lead,
    under: words.under,
    practised: report.practised,
    weekLabels: [first ? dayAndMonth(first) : '', last ? dayAndMonth(last) : ''],
    strands: words.strands.map((strand, i) => ({
      ...strand,
      weeks: report.strands[i]?.weeks ?? [],
    })),
    steps: words.steps,
    notSaid: words.notSaid,
  };
}
