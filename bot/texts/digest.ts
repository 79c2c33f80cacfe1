import {
  answerOf,
  type Call,
  type FactId,
  questionOf,
  type WeekSummary,
  type Wobble,
} from '../../drills/index.ts';
import { growthLine, readyLines, rungLines } from './digest-advice.ts';
import { solved } from './evening.ts';
import { bold, count, dayRange, lines, listOf, name, type Text } from './words.ts';

/** The sentence under every digest: what a score is not. */
export const DIGEST_CAUTION =
  'Marks are the helpers’ word. A missing evening is missing, not a nought. A score is not a diagnosis.';

/** A class's week in words; the answer comes first. */
export function digest(title: string, summary: WeekSummary): Text {
  return lines(
    bold(`${name(title)}: ${headline(summary)}.`),
    range(summary),
    ...readyLines(summary.rungs),
    growthLine(summary.strands),
    ...section('Right of asked', rungLines(summary.rungs)),
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

function headline({ days, joined, left, practisedThree }: WeekSummary): string {
  if (days.length === 0) return 'no evenings to tell of';
  if (joined === 0) return left > 0 ? 'every helper has left' : 'no family has joined yet';
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

function wobbleLine({ facts, missed, asked, children }: Wobble): string {
  const who = children === 1 ? 'one child' : `${children} children`;
  return `${listOf(facts.map(inWords))}: missed ${missed} of ${asked}, by ${who}`;
}

/** A fact with its answer: `3 + 4 = 7`, `the clock at half past three`, `after 95 in fives, 100`. */
function inWords(fact: FactId): string {
  if (fact.startsWith('clock:')) return `the clock at ${answerOf(fact)}`;
  if (fact.startsWith('next:')) return `${questionOf(fact)}, ${answerOf(fact)}`;
  return solved(questionOf(fact), answerOf(fact));
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
