import {
  ENOUGH_ASKED,
  type Named,
  type RungSummary,
  rungById,
  type StrandSummary,
  strandTitle,
} from '../../drills/index.ts';
import { count, listOf, name } from './words.ts';

const MOST_NAMES = 6;

/**
 * The answer first: what is ready to move up, and to what; what is worth splitting. Nothing where nobody practised. Titles hold
 * commas, so semicolons stand between them.
 *
 * @example
 * readyLines([]); // []
 */
export function readyLines(rungs: readonly RungSummary[]): string[] {
  const up = rungs.filter(({ proposal }) => proposal.kind === 'move_up');
  const split = rungs.filter(({ proposal }) => proposal.kind === 'split');
  return [
    ...(up.length > 0 ? [`Ready to move up: ${up.map(upward).join('; ')}.`] : []),
    ...(split.length > 0 ? [`Worth splitting: ${split.map(titleOf).join('; ')}.`] : []),
    ...(rungs.length > 0 && up.length + split.length === 0
      ? ['Nothing is ready to move up yet.']
      : []),
  ];
}

function upward(rung: RungSummary): string {
  const next = nextTitle(rung);
  return next === null
    ? `${titleOf(rung)} (top of its ladder)`
    : `${titleOf(rung)} (next: ${next})`;
}

/** The week's tally of each rung with the advice on it, then what the words mean; what holds for several is said once. */
export function rungLines(rungs: readonly RungSummary[]): string[] {
  const isAdvised = ({ proposal }: RungSummary) => proposal.kind !== 'too_little';
  return [
    ...rungs.map((rung) => `${titleOf(rung)}: ${rung.right} of ${rung.asked}${advice(rung)}`),
    ...(rungs.every(isAdvised) ? [] : ['No advice where too few of the children practised.']),
    ...(rungs.some(isAdvised)
      ? [`Secure: we expect 9 in 10 right, going by ${ENOUGH_ASKED} answers or more.`]
      : []),
  ];
}

function advice(rung: RungSummary): string {
  const { proposal } = rung;
  switch (proposal.kind) {
    case 'too_little':
      return '';
    case 'move_up':
      return `, move up (${securely(rung)})`;
    case 'stay':
      return `, stay (${securely(rung)})`;
    case 'split':
      return `, split (${securely(rung)}): ${groups(rung, proposal)}`;
  }
}

/** `10 of 12 children secure, 1 not yet, 1 with too few answers`; nobody is counted twice, and the others are in between. */
function securely({ children, secure, notYet, tooFew }: RungSummary): string {
  return [
    `${secure} of ${count(children, 'child', 'children')} secure`,
    ...(notYet > 0 ? [`${notYet} not yet`] : []),
    ...(tooFew > 0 ? [`${tooFew} with too few answers`] : []),
  ].join(', ');
}

function groups(
  rung: RungSummary,
  { smaller, group }: { smaller: 'secure' | 'not_yet'; group: readonly Named[] },
): string {
  const who = named(group);
  if (smaller === 'not_yet') return `${who} need more time`;
  const next = nextTitle(rung);
  return next === null ? `${who} could leave it` : `${who} could go on to ${next}`;
}

/** A long list of names would not be read, nor fit into the message: the numbers of the class list are enough. */
function named(group: readonly Named[]): string {
  if (group.length > MOST_NAMES) return `numbers ${listOf(group.map(({ number }) => `${number}`))}`;
  return listOf(group.map(({ number, nickname }) => `${number}. ${name(nickname)}`));
}

/**
 * Growth over the class in one line, each child against its own past; null when nobody's scores moved.
 *
 * @example
 * growthLine([{ strand: 'halves', right: 80, asked: 90, rose: 9, slipped: 2 }]);
 * // 'Against their own last four weeks: halves 9 rose, 2 slipped.'
 */
export function growthLine(strands: readonly StrandSummary[]): string | null {
  const moved = strands.flatMap(({ strand, rose, slipped }) => {
    const said = [
      ...(rose > 0 ? [`${rose} rose`] : []),
      ...(slipped > 0 ? [`${slipped} slipped`] : []),
    ];
    return said.length > 0 ? [`${strandTitle(strand)} ${said.join(', ')}`] : [];
  });
  return moved.length > 0 ? `Against their own last four weeks: ${moved.join('; ')}.` : null;
}

function titleOf({ rung }: RungSummary): string {
  return rungById(rung)?.title ?? rung;
}

function nextTitle({ next }: RungSummary): string | null {
  return next === null ? null : (rungById(next)?.title ?? next);
}
