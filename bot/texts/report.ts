import {
  answerOf,
  type ChildReport,
  type FactId,
  type RungId,
  rungById,
  type SchoolDay,
  type StrandReport,
  strandTitle,
} from '../../drills/index.ts';
import { factInWords } from './facts.ts';
import { longDate } from './paper.ts';
import { bold, count, lines, name, type Text } from './words.ts';

/** As many facts as are said together in a minute. */
const SAY_TOGETHER = 3;

/** One strand of a report in words: a sentence for each thing that can be said. */
export interface ReportStrandWords {
  readonly title: string;
  readonly sentences: readonly string[];
}

/** A report in words a parent can read. `notSaid` are the sentences on what it does not say. */
export interface ReportWords {
  readonly lead: string;
  readonly under: string;
  readonly strands: readonly ReportStrandWords[];
  readonly steps: readonly string[];
  readonly notSaid: readonly string[];
}

/** The headings of a report, and the words that stand in it for every child. */
export const REPORT_WORDS = {
  strands: 'What was practised',
  weeks: 'share right, week by week',
  dots: 'a dot for each evening practised',
  steps: 'Small next steps',
  notSaid: 'What this page does not say',
  page: (page: number, of: number) => `page ${page} of ${of}`,
  child: (number: number) => `child ${number}`,
} as const;

/** Stands for a child whose nickname the font cannot draw. */
export const THE_CHILD = 'This child';

/** The report's words. `workbook` is a ready sentence, null when there is none. */
export function reportWords(
  child: { readonly nickname: string },
  report: ChildReport,
  workbook: string | null,
): ReportWords {
  const who = name(child.nickname);
  return {
    lead: leadOf(who, report),
    under: [pagesOf(report), workbook].filter((each) => each !== null).join(' '),
    strands: report.strands.map((strand) => strandWords(who, strand)),
    steps: stepsOf(report),
    notSaid: [
      'It is no test and no diagnosis. It does not say how clever a child is.',
      `${who} is compared with nobody: every line is about ${who}’s own evenings.`,
      'What was right is what the family marked. An evening without marks is not known; it is not a nought.',
    ],
  };
}

function leadOf(who: string, { practised, schoolDays, first, last }: ChildReport): string {
  if (practised === 0 || !first || !last) {
    return `${who} has no marked evening in these weeks, so there is nothing to tell yet.`;
  }
  return `${who} practised mental maths at home on ${practised} of ${count(schoolDays, 'school day', 'school days')}, from ${longDate(first, 'en')} to ${longDate(last, 'en')}.`;
}

function pagesOf({ pages }: ChildReport): string | null {
  return pages === null || pages === 0
    ? null
    : `${count(pages, 'workbook page was', 'workbook pages were')} done.`;
}

function strandWords(who: string, { strand, steps, meeting }: StrandReport): ReportStrandWords {
  const at = (level: (typeof steps)[number]['level']) =>
    steps.flatMap((step) => (step.level === level ? [titleOf(step.rung)] : []));
  const [sure, between, notYet, few] = [
    at('secure'),
    at('in_between'),
    at('not_yet'),
    at('too_few'),
  ];
  return {
    title: capital(strandTitle(strand)),
    sentences: [
      ...(sure.length > 0 ? [`Knows this well: ${sure.join('; ')}.`] : []),
      ...(between.length > 0 ? [`On the way: ${between.join('; ')}.`] : []),
      ...(notYet.length > 0 ? [`Needs more time: ${notYet.join('; ')}.`] : []),
      ...(few.length > 0 ? [`Just begun, too early to say: ${few.join('; ')}.`] : []),
      ...(meeting.length > 0
        ? [`${who} is still meeting ${meeting.map(metFact).join('; ')}.`]
        : []),
    ],
  };
}

/** Under its strand's name a clock needs no other word than its time. */
function metFact(fact: FactId): string {
  return fact.startsWith('clock:') ? answerOf(fact) : factInWords(fact);
}

function stepsOf({ practise, goOn, strands }: ChildReport): string[] {
  const meeting = new Set(strands.flatMap((strand) => strand.meeting));
  const shaky = practise.filter((fact) => meeting.has(fact)).slice(0, SAY_TOGETHER);
  return [
    ...(shaky.length > 0
      ? [`Say these aloud together, once a day: ${shaky.map(factInWords).join('; ')}.`]
      : []),
    ...goOn.map((rung) => `Ready to meet what comes next: ${titleOf(rung)}.`),
    ...(shaky.length + goOn.length === 0 && strands.length > 0
      ? ['Go on as now: a few minutes, with a rest when a day was long.']
      : []),
  ];
}

function titleOf(rung: RungId): string {
  return rungById(rung)?.title ?? rung;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The spans a report can cover, in the order of their buttons; null weeks go back to the first evening. */
export const REPORT_SPANS: readonly { readonly weeks: number | null; readonly label: string }[] = [
  { weeks: 6, label: 'Last 6 weeks' },
  { weeks: 12, label: 'Last 12 weeks' },
  { weeks: null, label: 'Since the start' },
];

/** Choosing what a report covers; `whose` is a child's name, or null for every child of the class. */
export function chooseReport(title: string, whose: string | null): Text {
  return lines(
    bold(`${name(title)}: ${whose === null ? 'reports' : `report on ${name(whose)}`}`),
    whose === null
      ? 'One PDF with a page or two for every child, in words a parent can read.'
      : 'A PDF of a page or two, in words a parent can read.',
    'It is about the child’s own evenings: no other child is in it, and no ranking.',
    'Choose how far back it goes, then make it.',
  );
}

/** With a report. `children` is how many it is about. */
export function reportSent(children: number): Text {
  return lines(
    children === 1
      ? 'The report. Please read it before you hand it on.'
      : `Reports on ${children} children, each on pages of its own. Please read them before you hand them on, and give each family only its own.`,
  );
}

/** For a report when the class has no children. */
export const NO_REPORT = 'There are no children in this class yet, so there is nothing to report.';

/** At the foot of a report: whose word it is and when it was made. */
export function reportFoot(today: SchoolDay): string {
  return `Made on ${longDate(today, 'en')} from what the family marked at home.`;
}
