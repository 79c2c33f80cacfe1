import {
  type ChildReport,
  type EveningStatus,
  type FactId,
  type RungId,
  type SchoolDay,
  weekdayOf,
} from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { numbered } from './children.ts';
import { clauses } from './clauses.ts';
import { factInWords } from './facts.ts';
import { rungTitle, strandName } from './part-title.ts';
import { bold, lines, listOf, name, shortDate, type Text, weekdayName } from './words.ts';

/** Facts said in one line. */
const FACTS_A_LINE = 2;

/** What one child's page tells its teacher. `workbook` is a ready
 * sentence and `adjusted` ready words without a stop, null when there is nothing to say. */
export interface ChildPageInput {
  readonly number: number;
  readonly nickname: string;
  readonly report: ChildReport;
  readonly week: readonly { readonly day: SchoolDay; readonly status: EveningStatus }[];
  readonly workbook: string | null;
  readonly adjusted: string | null;
  readonly helpers: number;
  readonly reachable: number;
  readonly left: boolean;
  readonly heard: SchoolDay | null;
}

/** One child's page, nine lines at most: its own past only. */
export function childPage(input: ChildPageInput): Text {
  const { report } = input;
  const sure = stepsAt(report, 'secure');
  const meeting = report.strands.flatMap((strand) => strand.meeting).slice(0, 3);
  return lines(
    bold(numbered(input)),
    practisedLine(report),
    weekLine(input),
    sure.length > 0 ? say('child-page-sure', { steps: clauses(sure.map(rungTitle)) }) : null,
    meeting.length > 0
      ? say('child-page-meeting', { facts: clauses(meeting.map((fact) => factInWords(fact))) })
      : null,
    rightLine(report),
    ownLine(input),
    familyLine(input),
    report.strands.length > 0 ? say('child-page-caution') : null,
  );
}

function practisedLine({ practised, schoolDays, first }: ChildReport): string {
  if (first === null || schoolDays === 0) return say('child-page-none');
  return say('child-page-practised', { practised, days: schoolDays, first: shortDate(first) });
}

/** Where the child is in its workbook, and how its evenings differ; null where there is neither. */
function ownLine({ workbook, adjusted }: ChildPageInput): string | null {
  const said = [...(workbook ? [workbook] : []), ...(adjusted ? [`${adjusted}.`] : [])];
  return said.length > 0 ? said.join(' ') : null;
}

/** Each strand's tally of the weeks the page covers; null without marks. */
function rightLine({ strands }: ChildReport): string | null {
  if (strands.length === 0) return null;
  const told = strands.map(({ strand, right, asked }) =>
    say('child-page-tally', { strand: strandName(strand), right, asked }),
  );
  return say('child-page-right', { told: clauses(told) });
}

/** In the order they are told; a day without an evening is not. */
const TOLD = ['practised', 'not_today', 'silent', 'unsent'] as const satisfies EveningStatus[];

function weekLine({ week }: ChildPageInput): string | null {
  const said = TOLD.flatMap((status) => {
    const days = week.filter((each) => each.status === status);
    const names = days.map(({ day }) => weekdayName(weekdayOf(day), 'short'));
    return names.length > 0 ? [say(`child-page-week-${status}`, { days: listOf(names) })] : [];
  });
  return said.length > 0 ? say('child-page-week', { said: clauses(said) }) : null;
}

function familyLine({ helpers, reachable, left, heard }: ChildPageInput): string {
  if (helpers === 0) return say(left ? 'child-page-family-left' : 'child-page-family-none');
  const state = reachable === 0 ? 'family-unreached' : 'family';
  return heard === null
    ? say(`child-page-${state}-unheard`, { helpers })
    : say(`child-page-${state}-heard`, { helpers, day: shortDate(heard) });
}

function stepsAt({ strands }: ChildReport, level: 'secure'): RungId[] {
  return strands.flatMap(({ steps }) =>
    steps.flatMap((step) => (step.level === level ? [step.rung] : [])),
  );
}

/** Facts to say aloud together, with their answers. */
export function childFacts(
  child: Pick<ChildPageInput, 'number' | 'nickname'>,
  facts: readonly FactId[],
): Text {
  const words = facts.map((fact) => factInWords(fact));
  const said = Array.from({ length: Math.ceil(words.length / FACTS_A_LINE) }, (_, line) =>
    words.slice(line * FACTS_A_LINE, (line + 1) * FACTS_A_LINE).join(' · '),
  );
  return lines(
    bold(say('child-page-say', { child: numbered(child) })),
    ...said,
    say(facts.length > 0 ? 'child-page-say-how' : 'child-page-say-none'),
  );
}

/** Where a child is in its workbook; null says that all its books are done. */
export function workbookWords(
  inUse: {
    readonly book: { readonly title: string; readonly lastPage: number };
    readonly page: number;
  } | null,
): string {
  if (inUse === null) return say('child-page-books-done');
  const { book, page } = inUse;
  return say('child-page-book', { book: name(book.title), page, last: book.lastPage });
}
