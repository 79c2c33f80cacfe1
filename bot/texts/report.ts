import {
  answerOf,
  type ChildReport,
  type FactId,
  type SchoolDay,
  type StrandReport,
} from '../../drills/index.ts';
import { readerLanguage, say } from '../language/index.ts';
import { capital } from './capital.ts';
import { clauses } from './clauses.ts';
import { factInWords } from './facts.ts';
import { longDate } from './paper.ts';
import { rungTitle, strandName } from './part-title.ts';
import { bold, lines, name, type Text } from './words.ts';

/** As many facts as are said together in a minute. */
const SAY_TOGETHER = 3;
/** From what a child knows well to what has just begun. */
const LEVELS = ['secure', 'in_between', 'not_yet', 'too_few'] as const;

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
  get strands() {
    return say('report-strands');
  },
  get weeks() {
    return say('report-weeks');
  },
  get dots() {
    return say('report-dots');
  },
  get steps() {
    return say('report-steps');
  },
  get notSaid() {
    return say('report-not-said');
  },
  page: (page: number, of: number) => say('report-page', { page, of }),
  child: (number: number) => say('report-child', { number }),
};

/** Stands for a child whose nickname the font cannot draw. */
export function theChild(): string {
  return say('report-the-child');
}

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
      say('report-no-test'),
      say('report-compared', { name: who }),
      say('report-whose-word'),
    ],
  };
}

function leadOf(who: string, { practised, schoolDays, first, last }: ChildReport): string {
  if (practised === 0 || !first || !last) {
    return say('report-lead-none', { name: who });
  }
  return say('report-lead', {
    name: who,
    practised,
    days: schoolDays,
    first: longDate(first, readerLanguage()),
    last: longDate(last, readerLanguage()),
  });
}

function pagesOf({ pages }: ChildReport): string | null {
  return pages === null || pages === 0 ? null : say('report-pages-done', { count: pages });
}

function strandWords(who: string, { strand, steps, meeting }: StrandReport): ReportStrandWords {
  const at = (level: (typeof LEVELS)[number]) => {
    const titles = steps.filter((step) => step.level === level).map(({ rung }) => rungTitle(rung));
    return titles.length > 0 ? [say(`report-${level}`, { steps: clauses(titles) })] : [];
  };
  return {
    title: capital(strandName(strand)),
    sentences: [
      ...LEVELS.flatMap(at),
      ...(meeting.length > 0
        ? [say('report-meeting', { name: who, facts: clauses(meeting.map(metFact)) })]
        : []),
    ],
  };
}

/** Under its strand's name a clock needs no other word than its time. */
function metFact(fact: FactId): string {
  return fact.startsWith('clock:') ? answerOf(fact, readerLanguage()) : factInWords(fact);
}

function stepsOf({ practise, goOn, strands }: ChildReport): string[] {
  const meeting = new Set(strands.flatMap((strand) => strand.meeting));
  const shaky = practise.filter((fact) => meeting.has(fact)).slice(0, SAY_TOGETHER);
  return [
    ...(shaky.length > 0
      ? [say('report-say-together', { facts: clauses(shaky.map((fact) => factInWords(fact))) })]
      : []),
    ...goOn.map((rung) => say('report-go-on', { step: rungTitle(rung) })),
    ...(shaky.length + goOn.length === 0 && strands.length > 0 ? [say('report-as-now')] : []),
  ];
}

/** The spans a report can cover, in the order of their buttons; null weeks go back to the first evening. */
export const REPORT_SPANS: readonly { readonly weeks: number | null; readonly label: string }[] = [
  {
    weeks: 6,
    get label() {
      return say('report-six-weeks');
    },
  },
  {
    weeks: 12,
    get label() {
      return say('report-twelve-weeks');
    },
  },
  {
    weeks: null,
    get label() {
      return say('report-since-start');
    },
  },
];

/** Choosing what a report covers; `whose` is a child's name, or null for every child of the class. */
export function chooseReport(title: string, whose: string | null): Text {
  return lines(
    bold(
      whose === null
        ? say('report-choose-class', { title: name(title) })
        : say('report-choose-child', { title: name(title), name: name(whose) }),
    ),
    whose === null ? say('report-every-child') : say('report-one-child'),
    say('report-own-evenings'),
    say('report-choose-span'),
  );
}

/** With a report. `children` is how many it is about. */
export function reportSent(children: number): Text {
  return lines(children === 1 ? say('report-sent-one') : say('report-sent', { children }));
}

/** For a report when the class has no children. */
export function noReport(): string {
  return say('report-nobody');
}

/** At the foot of a report: whose word it is and when it was made. */
export function reportFoot(today: SchoolDay): string {
  return say('report-foot', { day: longDate(today, readerLanguage()) });
}
