import {
  type Named,
  type Proposal,
  type RungId,
  type RungSummary,
  rungById,
  type StepUp,
  type Strand,
  strandTitle,
} from '../../drills/index.ts';
import { SECURE_MEANS } from './digest-strands.ts';
import { bold, count, lines, listOf, name, type Text } from './words.ts';

const MOST_NAMES = 6;
/** Lines of the whole screen. */
const MOST_LINES = 9;

/** What the proposals screen tells. `steps` are those that would change the plan in use, null when there is no plan. */
export interface ProposalsInput {
  readonly rungs: readonly RungSummary[];
  readonly steps: readonly StepUp[] | null;
  /** What has just happened, to stand on top. */
  readonly said: string | null;
  /** Whether the week is over, so that there is nothing to decide on any more. */
  readonly isOver?: boolean;
}

/** The digest's proposals: what to move up and what that changes, what to split, what to stay on, and what cannot be told. */
export function proposals({ rungs, steps, said, isOver = false }: ProposalsInput): Text {
  if (isOver) return lines(bold(EARLIER_WEEK), 'Class now has those of today.');
  const of = (kind: Proposal['kind']) => rungs.filter(({ proposal }) => proposal.kind === kind);
  const up = of('move_up').map((rung) => upLine(rung, steps));
  const all = [...up, ...of('split').map(splitLine)];
  const [stay, little] = [of('stay'), of('too_little')];
  const above = [said === null ? null : bold(said), bold('Proposals: you decide')];
  const below = [
    rungs.length === 0 ? 'Nobody has practised in these days: nothing to propose.' : null,
    stay.length > 0 ? `Stay: ${stay.map(stayWords).join('; ')}.` : null,
    little.length > 0
      ? `Too few children practised to say: ${little.map(({ rung }) => titleOf(rung)).join('; ')}.`
      : null,
    rungs.length > little.length ? SECURE_MEANS : null,
  ];
  const room = MOST_LINES - [...above, ...below].filter((line) => line !== null).length;
  return lines(...above, ...firstOf(all, room), ...below);
}

/** As many lines as there is room for; the last of them counts those left out. */
function firstOf(all: readonly string[], room: number): readonly string[] {
  if (all.length <= room) return all;
  return [...all.slice(0, room - 1), `and ${all.length - room + 1} more`];
}

function upLine(rung: RungSummary, steps: readonly StepUp[] | null): string {
  const step = steps?.find(({ from }) => from === rung.rung);
  return `${titleOf(rung.rung)}: ${change(rung, step, steps === null)} (${securely(rung)}).`;
}

function change(rung: RungSummary, step: StepUp | undefined, isWithoutPlan: boolean): string {
  if (step) return `move up to ${titleOf(step.to)}`;
  if (rung.next === null) return 'the top of its ladder, move up to another strand';
  return isWithoutPlan
    ? `next would be ${titleOf(rung.next)}`
    : 'ready to move up, and not in the plan any more';
}

function splitLine(rung: RungSummary): string {
  const { proposal } = rung;
  const groups = proposal.kind === 'split' ? groupWords(rung, proposal) : '';
  return `${titleOf(rung.rung)}: worth splitting (${securely(rung)}). ${groups}.`;
}

function groupWords(
  { next }: RungSummary,
  { smaller, group }: Extract<Proposal, { kind: 'split' }>,
): string {
  const who = named(group);
  if (smaller === 'not_yet') return `${who} need more time`;
  return next === null ? `${who} could leave it` : `${who} could go on to ${titleOf(next)}`;
}

function stayWords(rung: RungSummary): string {
  return `${titleOf(rung.rung)} (${securely(rung)})`;
}

/** `10 of 12 secure, 1 not yet, 1 with too few answers`; nobody is counted twice, and the others are in between. */
function securely({ children, secure, notYet, tooFew }: RungSummary): string {
  return [
    `${secure} of ${count(children, 'child', 'children')} secure`,
    ...(notYet > 0 ? [`${notYet} not yet`] : []),
    ...(tooFew > 0 ? [`${tooFew} with too few answers`] : []),
  ].join(', ');
}

/** A long list of names would not be read, nor fit into the message: the numbers of the class list are enough. */
function named(group: readonly Named[]): string {
  if (group.length > MOST_NAMES) return `numbers ${listOf(group.map(({ number }) => `${number}`))}`;
  return listOf(group.map(({ number, nickname }) => `${number}. ${name(nickname)}`));
}

function titleOf(rung: RungId): string {
  return rungById(rung)?.title ?? rung;
}

/** The button that accepts one strand's step. */
export function acceptButton(strand: Strand): string {
  return `Accept: ${strandTitle(strand)}`;
}

/** The button that accepts every step. */
export function acceptAllButton(steps: number): string {
  return `Accept all ${steps}`;
}

/** After a step was accepted. */
export function accepted(steps: readonly StepUp[]): string {
  return `In use from the next evening: ${steps.map(({ to }) => titleOf(to)).join('; ')}.`;
}

/** A button whose step is not the one that would be taken now. */
export const MOVED_ON =
  'The plan or the marks have changed since. Nothing was done: please look again.';

/** A second tap on a step that was accepted. */
export const IN_USE_ALREADY = 'That is in the plan already. Nothing more was changed.';

/** Proposals of a week that is over. */
export const EARLIER_WEEK = 'That digest is of an earlier week: its proposals are over.';
