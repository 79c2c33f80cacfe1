import {
  answerOf,
  type Call,
  ENOUGH_ASKED,
  type EveningStatus,
  questionOf,
  type SchoolDay,
  type Strand,
  type StrandSummary,
  strandTitle,
  type WeekSummary,
  type Wobble,
} from '../../drills/index.ts';
import { solved } from './evening.ts';
import { bold, count, dayRange, lines, name, shortDate, type Text } from './words.ts';

/** The sentence under every digest: what a score is not. */
export const DIGEST_CAUTION =
  'Marks are the helpers’ word. A missing evening is missing, not a nought. A score is not a diagnosis.';

/** A class's week in words; the answer comes first. */
export function digest(title: string, summary: WeekSummary): Text {
  const ready = summary.strands.filter((strand) => strand.proposal === 'move_on');
  return lines(
    bold(`${name(title)}: ${headline(summary)}.`),
    range(summary),
    ready.length > 0
      ? `Ready to move on: ${ready.map((strand) => strandTitle(strand.strand)).join(', ')}.`
      : 'Nothing is ready to move on yet.',
    ...section(
      'Right of asked',
      summary.strands.map((strand) => strandLine(strand, summary.joined)),
    ),
    ...section('Wobbling', summary.wobbling.map(wobbleLine)),
    ...section('To call', [
      ...summary.calls.map(callLine),
      ...(summary.moreCalls > 0 ? [`and ${summary.moreCalls} more`] : []),
    ]),
    '',
    // Nought pages may as well mean that nobody was asked: missing is not a nought.
    summary.pages > 0 ? `Workbook: ${count(summary.pages, 'page', 'pages')} done.` : null,
    DIGEST_CAUTION,
  );
}

function headline({ days, joined, practisedThree }: WeekSummary): string {
  if (days.length === 0) return 'no evenings to tell of';
  if (joined === 0) return 'no family has joined yet';
  const enough = days.length === 1 ? 'the one day' : days.length === 2 ? 'both days' : null;
  return `${practisedThree} of ${joined} practised on ${enough ?? 'three days or more'}`;
}

function section(title: string, rows: readonly string[]): (Text | string)[] {
  return rows.length === 0 ? [] : ['', bold(title), ...rows];
}

function range({ days }: WeekSummary): string {
  const [first, last] = [days.at(0), days.at(-1)];
  if (!first || !last) return 'No school days in these seven days.';
  return dayRange(first, last);
}

function strandLine(strand: StrandSummary, joined: number): string {
  const advice = { move_on: 'move on', stay: 'stay', too_little: 'wait' }[strand.proposal];
  const score = `${strandTitle(strand.strand)}: ${strand.right} of ${strand.asked}`;
  return `${score}, ${advice} (${reason(strand, joined)})`;
}

/** Why a strand moves on, stays or waits. */
function reason({ children, secure, tooFew, proposal }: StrandSummary, joined: number): string {
  if (proposal === 'too_little') {
    return `${children} of ${count(joined, 'child', 'children')} practised this, too few to tell`;
  }
  const result = `${secure} of ${count(children, 'child', 'children')} got 9 in 10 or better`;
  return tooFew === 0 ? result : `${result}; ${tooFew} had fewer than ${ENOUGH_ASKED} to answer`;
}

function wobbleLine(wobble: Wobble): string {
  const fact = wobble.fact.startsWith('clock:')
    ? `the clock at ${answerOf(wobble.fact)}`
    : solved(questionOf(wobble.fact), answerOf(wobble.fact));
  return `${fact}: missed ${wobble.missed} of ${wobble.asked}`;
}

function callLine(call: Call): string {
  const reason = {
    unreachable: 'messages no longer arrive',
    silent: `${count(call.evenings, 'evening', 'evenings')} in a row without an answer`,
    left: 'its helper has left',
    not_joined: 'no helper has joined yet',
  }[call.reason];
  return `${call.number}. ${name(call.nickname)}: ${reason}`;
}

/** The table's headings, in the order of its columns. */
export function tableHeader(days: readonly SchoolDay[], strands: readonly Strand[]): string[] {
  const titles = strands.map(strandTitle);
  return [
    'number',
    'nickname',
    ...days.map(shortDate),
    'days practised',
    ...titles.flatMap((title) => [`${title} right`, `${title} asked`]),
    'pages',
  ];
}

/** What a day's cell in the table says. */
export const DAY_WORDS: Readonly<Record<EveningStatus | 'none', string>> = {
  practised: 'practised',
  not_today: 'not today',
  silent: 'no answer',
  unsent: 'not delivered',
  none: '',
};
