import { type RungSummary, rungById, type WeekSummary, type Wobble } from '../../drills/index.ts';
import { callsLine, stoppedLine } from './digest-calls.ts';
import { strandsLine } from './digest-strands.ts';
import { factInWords } from './facts.ts';
import { bold, count, dayRange, lines, listOf, name, type Text } from './words.ts';

/** The sentence under every digest: what a score is not. */
export const DIGEST_CAUTION =
  'Marks are the helpers’ word. A missing evening is missing, not a nought. A score is not a diagnosis.';

/** As many facts as a glance takes in; the others are behind a button. */
const FIRST_WOBBLES = 3;
/** As many steps as the first line has room for. */
const FIRST_STEPS = 2;

/** A class's week in words, nine lines at most; the answer comes first and everything else stands behind buttons. */
export function digest(title: string, summary: WeekSummary): Text {
  const { rungs, strands, wobbling, calls, pages } = summary;
  return lines(
    bold(`${name(title)}: ${headline(summary)}.`),
    evenings(summary),
    strandsLine(strands),
    wobbling.length > 0 ? `Wobbling: ${wobbles(wobbling)}.` : null,
    split(rungs),
    callsLine(calls),
    stoppedLine(calls),
    // Nought pages may as well mean that nobody was asked: missing is not a nought.
    pages > 0 ? `Workbook: ${count(pages, 'page', 'pages')} done.` : null,
    DIGEST_CAUTION,
  );
}

function headline(summary: WeekSummary): string {
  const { rungs, calls } = summary;
  const ready = rungs.filter(({ proposal }) => proposal.kind === 'move_up');
  return [
    whoPractised(summary),
    ...(ready.length > 0 ? [`ready to move up: ${titles(ready, FIRST_STEPS)}`] : []),
    ...(rungs.length > 0 && ready.length === 0 ? ['nothing to move up yet'] : []),
    ...(calls.length > 0 ? [`families to call: ${calls.length}`] : []),
  ].join('; ');
}

function whoPractised({ days, joined, left, practisedThree }: WeekSummary): string {
  if (days.length === 0) return 'no evenings to tell of';
  if (joined === 0) return left > 0 ? 'every helper has left' : 'no family has joined yet';
  const enough = days.length === 1 ? 'the one day' : days.length === 2 ? 'both days' : null;
  return `${practisedThree} of ${joined} practised on ${enough ?? 'three days or more'}`;
}

/** Which days, and how their evenings ended; what was not planned is not counted. */
function evenings({ days, children }: WeekSummary): string {
  const [first, last] = [days.at(0), days.at(-1)];
  if (!first || !last) return 'No school days in these seven days.';
  const all = children.flatMap((child) => child.days);
  const of = (status: (typeof all)[number]) => all.filter((each) => each === status).length;
  const said = [
    `${count(of('practised'), 'evening', 'evenings')} practised`,
    ...(of('not_today') > 0 ? [`${of('not_today')} put off`] : []),
    ...(of('silent') > 0 ? [`${of('silent')} without an answer`] : []),
    ...(of('unsent') > 0 ? [`${of('unsent')} not delivered`] : []),
  ];
  return `${dayRange(first, last)}: ${said.join(', ')}.`;
}

function split(rungs: readonly RungSummary[]): string | null {
  const found = rungs.filter(({ proposal }) => proposal.kind === 'split');
  return found.length === 0 ? null : `Worth splitting: ${titles(found, found.length)}.`;
}

/** Titles hold commas, so semicolons stand between them. */
function titles(rungs: readonly RungSummary[], most: number): string {
  const shown = rungs.slice(0, most).map(({ rung }) => rungById(rung)?.title ?? rung);
  const more = rungs.length - shown.length;
  return `${shown.join('; ')}${more > 0 ? ` and ${more} more` : ''}`;
}

function wobbles(wobbling: readonly Wobble[]): string {
  const shown = wobbling.slice(0, FIRST_WOBBLES).map(({ facts }) => listOf(facts.map(factInWords)));
  const more = wobbling.length - shown.length;
  return `${shown.join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
}

/** What the class is least sure of, and how many children it is about. */
export function wobbleList(wobbling: readonly Wobble[]): Text {
  return lines(
    bold('Facts to look at'),
    ...wobbling.map(wobbleLine),
    wobbling.length > 0
      ? 'Missed by two children or more, or by one on two days.'
      : 'None that was missed by two children, or by one on two days.',
  );
}

function wobbleLine({ facts, missed, asked, children }: Wobble): string {
  const who = children === 1 ? 'one child' : `${children} children`;
  return `${listOf(facts.map(factInWords))}: missed ${missed} of ${asked}, by ${who}`;
}
