import type { Level } from './judge-security.ts';
import { type ShareSecure, shareSecure } from './share-secure.ts';
import type { Named } from './summary.ts';

/** A class of fewer than three cannot be asked for three; a group of fewer is no group. */
const FEWEST_CHILDREN = 3;

/** What the digest proposes for one rung. */
export type Proposal =
  | { readonly kind: 'move_up' }
  | { readonly kind: 'stay' }
  | { readonly kind: 'too_little' }
  | {
      readonly kind: 'split';
      /** Which of the two groups is the smaller one, and who is in it, by class list. */
      readonly smaller: 'secure' | 'not_yet';
      readonly group: readonly Named[];
    };

/** One child with marks on the rung, and what can be said of it. */
export interface Judged extends Named {
  readonly level: Level;
}

/**
 * Proposes a step for one rung from its children (those with a helper and marks this week) and the number who joined.
 *
 * - `too_little`: fewer than half of those who joined have marks, or fewer than three (all of them in a class of fewer).
 * - `split`: at least three children are secure and at least three are clearly not yet; those in between are in no group.
 *   The smaller group is named, and the one that needs more time when they are equal.
 * - `move_up`: 8 in 10 of the children are secure; those with too few answers count as not secure.
 * - `stay`: otherwise.
 *
 * The thresholds are our choice, no source. The Wilson interval of the share secure is at 80 %.
 *
 * @example
 * proposeStep([{ childId: 'a', number: 1, nickname: 'Wren', level: 'secure' }], 1).proposal; // { kind: 'move_up' }
 */
export function proposeStep(
  judged: readonly Judged[],
  joined: number,
): ShareSecure & { readonly proposal: Proposal } {
  const children = judged.length;
  const secure = groupOf(judged, 'secure');
  const notYet = groupOf(judged, 'not_yet');
  return {
    ...shareSecure(judged.map(({ level }) => level)),
    proposal: decide({ children, joined, secure, notYet }),
  };
}

function decide(rung: {
  children: number;
  joined: number;
  secure: readonly Named[];
  notYet: readonly Named[];
}): Proposal {
  const { children, joined, secure, notYet } = rung;
  const needed = Math.min(joined, Math.max(FEWEST_CHILDREN, Math.ceil(joined / 2)));
  if (children < Math.max(1, needed)) return { kind: 'too_little' };
  if (Math.min(secure.length, notYet.length) >= FEWEST_CHILDREN) {
    return secure.length < notYet.length
      ? { kind: 'split', smaller: 'secure', group: secure }
      : { kind: 'split', smaller: 'not_yet', group: notYet };
  }
  // Whole numbers: 0.8 has no exact binary form, and a class sits on the border often.
  return { kind: secure.length * 10 >= children * 8 ? 'move_up' : 'stay' };
}

function groupOf(judged: readonly Judged[], level: Level): Named[] {
  return judged
    .filter((child) => child.level === level)
    .map(({ childId, number, nickname }) => ({ childId, number, nickname }))
    .sort((one, other) => one.number - other.number);
}
