import {
  type ChildReport,
  type EveningStatus,
  type FactId,
  type RungId,
  rungById,
  type SchoolDay,
  strandTitle,
} from '../../drills/index.ts';
import { factInWords } from './facts.ts';
import { bold, count, lines, listOf, name, shortDate, type Text } from './words.ts';

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
    bold(whose(input)),
    practisedLine(report),
    weekLine(input),
    sure.length > 0 ? `Sure of: ${sure.map(titleOf).join('; ')}.` : null,
    meeting.length > 0 ? `Still meeting: ${meeting.map(factInWords).join('; ')}.` : null,
    rightLine(report),
    ownLine(input),
    familyLine(input),
    report.strands.length > 0
      ? 'The helper’s marks, beside this child’s own past only. No test and no diagnosis.'
      : null,
  );
}

function whose({ number, nickname }: Pick<ChildPageInput, 'number' | 'nickname'>): string {
  return `${number}. ${name(nickname)}`;
}

function practisedLine({ practised, schoolDays, first }: ChildReport): string {
  if (first === null || schoolDays === 0) return 'No evening to tell of yet.';
  return `Practised on ${practised} of ${count(schoolDays, 'school day', 'school days')} since ${shortDate(first)}.`;
}

/** Where the child is in its workbook, and how its evenings differ; null where there is neither. */
function ownLine({ workbook, adjusted }: ChildPageInput): string | null {
  const said = [...(workbook ? [workbook] : []), ...(adjusted ? [`${adjusted}.`] : [])];
  return said.length > 0 ? said.join(' ') : null;
}

/** Each strand's tally of the weeks the page covers; null without marks. */
function rightLine({ strands }: ChildReport): string | null {
  if (strands.length === 0) return null;
  const told = strands.map(
    ({ strand, right, asked }) => `${strandTitle(strand)} ${right} of ${asked}`,
  );
  return `Right of asked in that time: ${told.join('; ')}.`;
}

const STATUS_WORDS: readonly (readonly [EveningStatus, string])[] = [
  ['practised', 'practised'],
  ['not_today', 'not today'],
  ['silent', 'no answer'],
  ['unsent', 'not delivered'],
];

function weekLine({ week }: ChildPageInput): string | null {
  const said = STATUS_WORDS.flatMap(([status, words]) => {
    const days = week.filter((each) => each.status === status);
    const names = days.map(({ day }) => shortDate(day).slice(0, 3));
    return names.length > 0 ? [`${words} ${listOf(names)}`] : [];
  });
  return said.length > 0 ? `Last seven days: ${said.join('; ')}.` : null;
}

function familyLine({ helpers, reachable, left, heard }: ChildPageInput): string {
  if (helpers === 0)
    return left ? 'Family: the helper has left.' : 'Family: nobody has joined yet.';
  const state = reachable === 0 ? ', messages no longer arrive' : '';
  const last = heard === null ? 'not heard from yet' : `last heard from on ${shortDate(heard)}`;
  return `Family: ${count(helpers, 'helper', 'helpers')}${state}, ${last}.`;
}

function stepsAt({ strands }: ChildReport, level: 'secure'): RungId[] {
  return strands.flatMap(({ steps }) =>
    steps.flatMap((step) => (step.level === level ? [step.rung] : [])),
  );
}

function titleOf(rung: RungId): string {
  return rungById(rung)?.title ?? rung;
}

/** Facts to say aloud together, with their answers. */
export function childFacts(
  child: Pick<ChildPageInput, 'number' | 'nickname'>,
  facts: readonly FactId[],
): Text {
  const words = facts.map(factInWords);
  const said = Array.from({ length: Math.ceil(words.length / FACTS_A_LINE) }, (_, line) =>
    words.slice(line * FACTS_A_LINE, (line + 1) * FACTS_A_LINE).join(' · '),
  );
  return lines(
    bold(`${whose(child)}: to say aloud together`),
    ...said,
    facts.length > 0
      ? 'The least sure first. One minute is plenty: say it, say it again, go on.'
      : 'Nothing has been marked yet.',
  );
}

/** Where a child is in its workbook; null says that all its books are done. */
export function workbookWords(
  inUse: {
    readonly book: { readonly title: string; readonly lastPage: number };
    readonly page: number;
  } | null,
): string {
  if (inUse === null) return 'Workbook: all done.';
  return `Workbook: ${name(inUse.book.title)}, at page ${inUse.page} of ${inUse.book.lastPage}.`;
}
