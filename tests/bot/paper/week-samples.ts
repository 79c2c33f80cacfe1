import { reportPapers } from '../../../bot/digest/child-reports.ts';
import { digestPages } from '../../../bot/digest/digest-pages.ts';
import type { PaperSize } from '../../../bot/paper/index.ts';
import { storedDay } from '../../../db/index.ts';
import { proposePlan, type WeekPlan, type WeekSummary } from '../../../drills/index.ts';
import { aReport, noReport } from '../support/child-report.ts';
import { practised, splitWeek, summaryOf, WEEK, week } from '../support/kingfisher.ts';
import { HARD_NAMES } from './samples.ts';

const NAMES = ['Wren', 'Otter', 'Robin', 'Finch', 'Juniper', 'Pip', 'Saffron', 'Ziggy'];
const PLAN: WeekPlan = { parts: [{ rung: 'halves.to20', cards: 8, seconds: 3 }] };

/** A class of so many, the hard names first, with every state of a day, families to call and all eight strands. */
export function fullWeek(children: number): WeekSummary {
  const split = splitWeek('Wren');
  const statuses = ['practised', 'not_today', 'silent', 'unsent'] as const;
  const full = summaryOf(
    Array.from({ length: children }, (_, at) => {
      const evenings = WEEK.map((day, on) => {
        const status = at % 5 === 4 ? (statuses[on % statuses.length] ?? 'silent') : 'practised';
        const right = 2 + (at % 9);
        return practised(day, {
          status,
          parts: [
            { strand: 'bonds', rung: 'bonds.to10', right, asked: 10 },
            { strand: 'halves', rung: 'halves.to20', right: 10, asked: 10 },
            ...(at < 3
              ? [{ strand: 'clock', rung: 'clock.half', right: 3, asked: 4 } as const]
              : []),
          ],
        });
      });
      const nickname = HARD_NAMES[at] ?? NAMES[at % NAMES.length] ?? 'Wren';
      return week(at + 1, nickname, { evenings, silentRun: at % 6 === 5 ? 3 : 0 });
    }),
  );
  return { ...full, rungs: split.rungs };
}

/** The page of a week to print. */
export function weekPaper(children: number, paper: PaperSize = 'a4') {
  const summary = fullWeek(children);
  const { steps } = proposePlan(PLAN, summary);
  return digestPages({ title: 'Kingfisher class, Harbour Lane School', summary, steps, paper });
}

/** Reports on two children, the second without an evening. */
export function twoReports(paper: PaperSize = 'a4', nicknames = ['Wren', 'Otter']) {
  const [one = 'Wren', other = 'Otter'] = nicknames;
  return reportPapers(
    [
      {
        child: { number: 4, nickname: one },
        report: aReport,
        workbook: 'Workbook: Pebble Path, at page 23 of 48.',
      },
      { child: { number: 5, nickname: other }, report: noReport, workbook: null },
    ],
    { title: 'Kingfisher class', today: storedDay('2026-09-18'), paper },
  );
}
