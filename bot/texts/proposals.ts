import type { Named, Proposal, RungSummary, StepUp, Strand } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { BUTTONS } from './buttons.ts';
import { clauses } from './clauses.ts';
import { secureMeans } from './digest-strands.ts';
import { rungTitle, strandName } from './part-title.ts';
import { bold, lines, listOf, name, type Text } from './words.ts';

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
  if (isOver)
    return lines(bold(earlierWeek()), say('proposals-today', { screen: BUTTONS.classNow }));
  const of = (kind: Proposal['kind']) => rungs.filter(({ proposal }) => proposal.kind === kind);
  const up = of('move_up').map((rung) => upLine(rung, steps));
  const all = [...up, ...of('split').flatMap(splitLine)];
  const [stay, little] = [of('stay'), of('too_little')];
  const above = [said === null ? null : bold(said), bold(say('proposals-title'))];
  const below = [
    rungs.length === 0 ? say('proposals-nobody') : null,
    stay.length > 0 ? say('proposals-stay', { steps: clauses(stay.map(stayWords)) }) : null,
    little.length > 0
      ? say('proposals-too-little', {
          steps: clauses(little.map(({ rung }) => rungTitle(rung))),
        })
      : null,
    rungs.length > little.length ? secureMeans() : null,
  ];
  const room = MOST_LINES - [...above, ...below].filter((line) => line !== null).length;
  return lines(...above, ...firstOf(all, room), ...below);
}

/** As many lines as there is room for; the last of them counts those left out. */
function firstOf(all: readonly string[], room: number): readonly string[] {
  if (all.length <= room) return all;
  return [...all.slice(0, room - 1), say('proposals-more', { count: all.length - room + 1 })];
}

function upLine(rung: RungSummary, steps: readonly StepUp[] | null): string {
  const to = steps?.find(({ from }) => from === rung.rung)?.to;
  const words = { step: rungTitle(rung.rung), why: securely(rung) };
  if (to) return say('proposals-up', { ...words, next: rungTitle(to) });
  if (rung.next === null) return say('proposals-top', words);
  return steps === null
    ? say('proposals-would-be', { ...words, next: rungTitle(rung.next) })
    : say('proposals-not-in-plan', words);
}

function splitLine(rung: RungSummary): string[] {
  const { proposal, next } = rung;
  if (proposal.kind !== 'split') return [];
  const who = named(proposal.group);
  const words = { step: rungTitle(rung.rung), why: securely(rung), who };
  if (proposal.smaller === 'not_yet') return [say('proposals-split-time', words)];
  if (next === null) return [say('proposals-split-leave', words)];
  return [say('proposals-split-go-on', { ...words, next: rungTitle(next) })];
}

function stayWords(rung: RungSummary): string {
  return `${rungTitle(rung.rung)} (${securely(rung)})`;
}

/** `10 of 12 secure, 1 not yet, 1 with too few answers`; nobody is counted twice, and the others are in between. */
function securely({ children, secure, notYet, tooFew }: RungSummary): string {
  return [
    say('proposals-secure', { children, secure }),
    ...(notYet > 0 ? [say('proposals-not-yet', { count: notYet })] : []),
    ...(tooFew > 0 ? [say('proposals-too-few', { count: tooFew })] : []),
  ].join(', ');
}

/** A long list of names would not be read, nor fit into the message: the numbers of the class list are enough. */
function named(group: readonly Named[]): string {
  if (group.length > MOST_NAMES) {
    return say('proposals-numbers', { numbers: listOf(group.map(({ number }) => `${number}`)) });
  }
  return listOf(group.map(({ number, nickname }) => `${number}. ${name(nickname)}`));
}

/** The button that accepts one strand's step. */
export function acceptButton(strand: Strand): string {
  return say('proposals-accept', { strand: strandName(strand) });
}

/** The button that accepts every step. */
export function acceptAllButton(steps: number): string {
  return say('proposals-accept-all', { count: steps });
}

/** After a step was accepted. */
export function accepted(steps: readonly StepUp[]): string {
  return say('proposals-accepted', { steps: clauses(steps.map(({ to }) => rungTitle(to))) });
}

/** A button whose step is not the one that would be taken now. */
export function movedOn(): string {
  return say('proposals-moved-on');
}

/** A second tap on a step that was accepted. */
export function inUseAlready(): string {
  return say('proposals-in-use-already');
}

/** Proposals of a week that is over. */
export function earlierWeek(): string {
  return say('proposals-earlier-week');
}
