import type { RungSummary, WeekSummary, Wobble } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { capital } from './capital.ts';
import { clauses } from './clauses.ts';
import { callsLine, stoppedLine } from './digest-calls.ts';
import { strandsLine } from './digest-strands.ts';
import { factInWords } from './facts.ts';
import { slowerLine } from './fewer.ts';
import { rungTitle } from './part-title.ts';
import { bold, dayRange, lines, listOf, name, type Text } from './words.ts';

/** The sentence under every digest: what a score is not. */
export function digestCaution(): string {
  return say('digest-caution');
}

/** As many facts as a glance takes in; the others are behind a button. */
const FIRST_WOBBLES = 3;
/** As many steps as the first line has room for. */
const FIRST_STEPS = 2;

/** A class's week in words, nine lines at most; the answer comes first and everything else stands behind buttons. */
export function digest(title: string, summary: WeekSummary): Text {
  const { rungs, strands, wobbling, pages } = summary;
  return lines(
    bold(say('digest-first-line', { title: name(title), headline: headline(summary) })),
    evenings(summary),
    strandsLine(strands),
    wobbling.length > 0 ? say('digest-wobbling', { facts: wobbles(wobbling) }) : null,
    split(rungs),
    ...familyLines(summary),
    // Nought pages may as well mean that nobody was asked: missing is not a nought.
    pages > 0 ? say('digest-workbook', { count: pages }) : null,
    digestCaution(),
  );
}

/** Two lines about families at most; all of it stands behind a button. */
function familyLines({ calls, slower }: WeekSummary): string[] {
  return [callsLine(calls), stoppedLine(calls), slowerLine(slower)]
    .filter((line) => line !== null)
    .slice(0, 2);
}

/** What matters most: who practised, what is ready to move up, how many families to call. */
export function headline(summary: WeekSummary): string {
  const { rungs, calls } = summary;
  const ready = rungs.filter(({ proposal }) => proposal.kind === 'move_up');
  return clauses([
    whoPractised(summary),
    ...(ready.length > 0 ? [say('digest-ready', { steps: titles(ready, FIRST_STEPS) })] : []),
    ...(rungs.length > 0 && ready.length === 0 ? [say('digest-none-ready')] : []),
    ...(calls.length > 0 ? [say('digest-to-call', { count: calls.length })] : []),
  ]);
}

function whoPractised({ days, joined, left, practisedThree }: WeekSummary): string {
  if (days.length === 0) return say('digest-no-evenings');
  if (joined === 0) return left > 0 ? say('digest-all-left') : say('digest-none-joined');
  const enough = days.length === 1 ? 'one' : days.length === 2 ? 'both' : 'three';
  return say(`digest-practised-${enough}`, { practised: practisedThree, joined });
}

function evenings(summary: WeekSummary): string {
  const [first, last] = [summary.days.at(0), summary.days.at(-1)];
  if (!first || !last) return say('digest-no-days');
  return say('digest-evenings', {
    days: capital(dayRange(first, last)),
    ended: howEnded(summary),
  });
}

/** How the evenings of some days ended; what was not planned is not counted. */
export function howEnded({ children }: WeekSummary): string {
  const all = children.flatMap((child) => child.days);
  const of = (status: (typeof all)[number]) => all.filter((each) => each === status).length;
  const [put, silent, unsent] = [of('not_today'), of('silent'), of('unsent')];
  return [
    say('digest-practised', { count: of('practised') }),
    ...(put > 0 ? [say('digest-put-off', { count: put })] : []),
    ...(silent > 0 ? [say('digest-unanswered', { count: silent })] : []),
    ...(unsent > 0 ? [say('digest-undelivered', { count: unsent })] : []),
  ].join(', ');
}

function split(rungs: readonly RungSummary[]): string | null {
  const found = rungs.filter(({ proposal }) => proposal.kind === 'split');
  return found.length === 0
    ? null
    : say('digest-splitting', { steps: titles(found, found.length) });
}

/** Titles hold commas, so semicolons stand between them. */
function titles(rungs: readonly RungSummary[], most: number): string {
  const shown = clauses(rungs.slice(0, most).map(({ rung }) => rungTitle(rung)));
  const more = rungs.length - most;
  return more > 0 ? say('digest-steps-and-more', { shown, more }) : shown;
}

function wobbles(wobbling: readonly Wobble[]): string {
  const shown = wobbling
    .slice(0, FIRST_WOBBLES)
    .map(({ facts }) => listOf(facts.map((fact) => factInWords(fact))));
  return clauses(shown, wobbling.length - shown.length);
}

/** What the class is least sure of, and how many children it is about. */
export function wobbleList(wobbling: readonly Wobble[]): Text {
  return lines(
    bold(say('digest-facts-title')),
    ...wobbling.map(wobbleLine),
    wobbling.length > 0 ? say('digest-facts-rule') : say('digest-facts-none'),
  );
}

function wobbleLine({ facts, missed, asked, children }: Wobble): string {
  return say('digest-fact', {
    facts: listOf(facts.map((fact) => factInWords(fact))),
    missed,
    asked,
    children,
  });
}
