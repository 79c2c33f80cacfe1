/** Paper: pages for families without data and for the classroom, and the PDF files made of them. */
export { type AnswersInput, answerPages } from './answer-pages.ts';
export { type CardsInput, cardPages, type PaperCard } from './cards-to-cut.ts';
export { classDrill } from './class-drill.ts';
export { drillCards, drillTasks } from './drill-cards.ts';
export type { Page } from './page.ts';
export { PAPERS, type PaperSize } from './paper-size.ts';
export {
  type PaperDay,
  type PracticeInput,
  type PracticeSheet,
  practicePages,
} from './practice-pages.ts';
export { printWeek } from './print-week.ts';
export { type ChildReportPage, type ReportsInput, reportPages } from './report-pages.ts';
export { type JoinSlip, type SlipsInput, slipPages } from './slip-pages.ts';
export { type SquaresInput, squarePages } from './square-pages.ts';
export type { PaperTask } from './task-strip.ts';
export { type PdfOptions, toPdf } from './to-pdf.ts';
export { type Passage, type WeekPageInput, weekPage } from './week-page.ts';
