import { BUTTONS, choiceButton } from '../texts/buttons.ts';
import { paperName } from '../texts/print.ts';
import { chooseReport, REPORT_SPANS } from '../texts/report.ts';
import type { ChildOf } from './child-page-screens.ts';
import { PAPER_CHOICE } from './print-screens.ts';
import { type Button, button, rows, type Screen } from './screen.ts';

/** What was chosen: places in the lists of spans and of papers. */
export interface ReportChoice {
  readonly span: number;
  readonly paper: number;
}

/** What one child's report covers. */
export function childReportScreen(
  title: string,
  of: ChildOf,
  nickname: string,
  chosen: ReportChoice,
): Screen {
  return {
    text: chooseReport(title, nickname),
    buttons: [
      ...choices(chosen, (to) => ({ kind: 'childReport', ...of, ...to })),
      [button(BUTTONS.makeReport, { kind: 'makeReport', ...of, ...chosen })],
      [button(BUTTONS.back, { kind: 'childPage', ...of })],
    ],
  };
}

/** What the reports on every child of a class cover. */
export function classReportsScreen(
  { id: classId, title }: { readonly id: string; readonly title: string },
  chosen: ReportChoice,
): Screen {
  return {
    text: chooseReport(title, null),
    buttons: [
      ...choices(chosen, (to) => ({ kind: 'classReports', classId, ...to })),
      [button(BUTTONS.makeReport, { kind: 'makeReports', classId, ...chosen })],
      [button(BUTTONS.back, { kind: 'classNow', classId })],
    ],
  };
}

/** Spans two in a row, for three would be cut off, and a row of papers; what is chosen carries a tick. */
function choices(
  { span, paper }: ReportChoice,
  actionOf: (to: ReportChoice) => Parameters<typeof button>[1],
): Button[][] {
  const spans = REPORT_SPANS.map(({ label }, index) =>
    button(choiceButton(label, index === span), actionOf({ span: index, paper })),
  );
  return [
    ...rows(spans, 2),
    PAPER_CHOICE.map((each, index) =>
      button(choiceButton(paperName(each), index === paper), actionOf({ span, paper: index })),
    ),
  ];
}
