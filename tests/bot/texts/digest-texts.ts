import * as childPages from '../../../bot/texts/child-page.ts';
import * as childPictures from '../../../bot/texts/child-picture.ts';
import * as classNows from '../../../bot/texts/class-now.ts';
import * as digests from '../../../bot/texts/digest.ts';
import * as calls from '../../../bot/texts/digest-calls.ts';
import * as digestFiles from '../../../bot/texts/digest-files.ts';
import * as digestPages from '../../../bot/texts/digest-page.ts';
import * as strandTexts from '../../../bot/texts/digest-strands.ts';
import * as digestTables from '../../../bot/texts/digest-table.ts';
import * as facts from '../../../bot/texts/facts.ts';
import * as proposals from '../../../bot/texts/proposals.ts';
import * as reports from '../../../bot/texts/report.ts';
import type { Text } from '../../../bot/texts/words.ts';
import { storedDay } from '../../../db/index.ts';
import { proposePlan, STRANDS, type WeekPlan } from '../../../drills/index.ts';
import { aReport, noReport } from '../support/child-report.ts';
import { splitWeek, summaryOf, WEEK, week } from '../support/kingfisher.ts';

type Said = Text | string | null;

/** The modules whose texts are here. */
export const DIGEST_MODULES: readonly Readonly<Record<string, unknown>>[] = [
  calls,
  childPages,
  childPictures,
  classNows,
  digestFiles,
  digestPages,
  digests,
  digestTables,
  facts,
  proposals,
  reports,
  strandTexts,
];

/** A nickname with an emoji of three code points, then letters from right to left. */
const NICKNAME = '👩‍🚀 שרה';
const TITLE = 'Kingfisher class 🐦';
const FRIDAY = storedDay('2026-09-18');

const split = splitWeek(NICKNAME);
const plan: WeekPlan = {
  parts: [
    { rung: 'halves.to20', cards: 8, seconds: 3 },
    { rung: 'bonds.to10', cards: 8, seconds: 3 },
  ],
};
const { steps } = proposePlan(plan, split);
const families = summaryOf([
  week(1, NICKNAME, { reachable: false }),
  week(2, 'Otto', { silentRun: 1 }),
  ...[3, 4, 5, 6, 7, 8].map((number) => week(number, 'Otter', { silentRun: number })),
  week(9, 'Robin', { joined: false }),
  week(10, 'Finch', { joined: false, left: true }),
]);
const never = summaryOf([week(1, 'Otto', { joined: false, evenings: [] })]);
const empty = summaryOf([], []);
const quiet = summaryOf([week(1, 'Otto', { evenings: [] })], WEEK.slice(0, 2));
const some = summaryOf([week(1, NICKNAME), week(2, 'Otto')]);
const left = summaryOf([week(1, 'Otto', { joined: false, left: true })]);
const all = [split, families, never, empty, quiet, some, left];

const child = { number: 1, nickname: NICKNAME };
const page: childPages.ChildPageInput = {
  ...child,
  report: aReport,
  week: [
    { day: FRIDAY, status: 'practised' },
    { day: storedDay('2026-09-17'), status: 'unsent' },
  ],
  workbook: 'Workbook: Pebble Path, at page 3 of 48.',
  adjusted: 'For this child only: fewer cards',
  helpers: 1,
  reachable: 0,
  left: false,
  heard: FRIDAY,
};
const now: classNows.ClassNow = {
  title: TITLE,
  day: FRIDAY,
  practised: ['Otto', NICKNAME],
  notToday: 1,
  waiting: 2,
  unsent: 1,
  evening: { kind: 'past', time: '17:30' },
  plan,
  children: 10,
  week: families,
};
const beforeEvening = { ...now, practised: [], notToday: 0, waiting: 0, unsent: 0 };

/** What every function says that makes words about a week, a child's page and its report. */
export const digestTexts = (): Readonly<Record<string, readonly Said[]>> => ({
  ...weekTexts(),
  ...childTexts(),
});

const weekTexts = (): Readonly<Record<string, readonly Said[]>> => ({
  tableHeader: digestTables.tableHeader(WEEK, STRANDS),
  growthWords: (['rising', 'steady', 'falling', 'too_little'] as const).map((trend) =>
    digestTables.growthWords({ trend, evenings: 1, aWeek: null }),
  ),
  digest: all.map((summary) => digests.digest(TITLE, summary)),
  wobbleList: all.map(({ wobbling }) => digests.wobbleList(wobbling)),
  callsLine: all.map((summary) => calls.callsLine(summary.calls)),
  stoppedLine: all.map((summary) => calls.stoppedLine(summary.calls)),
  callList: all.flatMap((summary) =>
    [1, 3].map((pages) => calls.callList({ shown: summary.calls, page: 0, pages })),
  ),
  changeWords: [
    strandTexts.changeWords({ kind: 'new' }),
    strandTexts.changeWords({ kind: 'new_step' }),
    ...(['up', 'same', 'down'] as const).map((kind) => {
      const tally = { right: 7, asked: 10 };
      return strandTexts.changeWords({ kind, now: tally, before: tally });
    }),
  ],
  strandsLine: all.map(({ strands }) => strandTexts.strandsLine(strands)),
  strandList: all.map(({ strands }) => strandTexts.strandList(strands)),
  proposals: all.flatMap(({ rungs }) => [
    proposals.proposals({ rungs, steps: null, said: null }),
    proposals.proposals({ rungs, steps, said: proposals.accepted(steps) }),
    proposals.proposals({ rungs, steps, said: null, isOver: true }),
  ]),
  acceptButton: STRANDS.map(proposals.acceptButton),
  acceptAllButton: [2, 6].map(proposals.acceptAllButton),
  accepted: [proposals.accepted(steps)],
  movedOn: [proposals.movedOn()],
  inUseAlready: [proposals.inUseAlready()],
  earlierWeek: [proposals.earlierWeek()],
  digestPageWords: all.flatMap((summary) => {
    const words = digestPages.digestPageWords(summary, steps);
    const passages = [words.strands, words.wobbling, words.proposals, words.families];
    return [
      words.answer,
      words.under,
      ...passages.flatMap(({ title, lines }) => [title, ...lines]),
    ];
  }),
  digestPrinted: [digestPages.digestPrinted()],
  gridNote: [digestPages.gridNote()],
  digestCaution: [digests.digestCaution()],
  headline: all.map(digests.headline),
  howEnded: all.map(digests.howEnded),
  secureMeans: [strandTexts.secureMeans()],
  noDigestFile: [digestFiles.noDigestFile()],
  noPicture: [digestFiles.noPicture()],
  factInWords: (['add:3+4', 'clock:0330', 'next:95+5'] as const).map((fact) =>
    facts.factInWords(fact),
  ),
  classNow: [
    now,
    { ...now, practised: Array.from({ length: 30 }, () => NICKNAME), waiting: 0, unsent: 0 },
    { ...beforeEvening, plan: null, week: never },
    { ...beforeEvening, evening: { kind: 'ahead', time: '17:30' } as const },
    { ...beforeEvening, evening: { kind: 'none', next: FRIDAY } as const },
    { ...beforeEvening, evening: { kind: 'none', next: null } as const },
  ].map(classNows.classNow),
  chooseChild: [1, 3].map((pages) => classNows.chooseChild(TITLE, { page: 0, pages })),
  digestButton: [classNows.digestButton(FRIDAY)],
});

const childTexts = (): Readonly<Record<string, readonly Said[]>> => ({
  childButton: [true, false].map((has) => classNows.childButton(child, has)),
  childPage: [
    page,
    { ...page, report: noReport, week: [], workbook: null, adjusted: null, heard: null },
    { ...page, helpers: 0, left: true },
    { ...page, helpers: 0, left: false },
  ].map(childPages.childPage),
  childFacts: [[], aReport.practise].map((list) => childPages.childFacts(child, list)),
  workbookWords: [
    childPages.workbookWords(null),
    childPages.workbookWords({ book: { title: NICKNAME, lastPage: 48 }, page: 3 }),
  ],
  evenings: [1, 23].map(childPictures.evenings),
  ownPast: [childPictures.ownPast()],
  noChildPicture: [childPictures.noChildPicture()],
  childPictureSent: [childPictures.childPictureSent(child)],
  reportWords: [aReport, noReport].flatMap((report) =>
    [null, 'Workbook: all done.'].flatMap((workbook) => {
      const words = reports.reportWords(child, report, workbook);
      const strands = words.strands.flatMap(({ title, sentences }) => [title, ...sentences]);
      const under = words.under === '' ? [] : [words.under];
      return [words.lead, ...under, ...strands, ...words.steps, ...words.notSaid];
    }),
  ),
  chooseReport: [NICKNAME, null].map((whose) => reports.chooseReport(TITLE, whose)),
  reportSent: [1, 24].map(reports.reportSent),
  reportFoot: [reports.reportFoot(FRIDAY)],
  theChild: [reports.theChild()],
  noReport: [reports.noReport()],
});
