import { rungOfFact } from '../evening/plan-part.ts';
import type { FactId } from '../facts/fact-id.ts';
import type { Rung } from '../ladder/rung.ts';
import { RUNGS } from '../ladder/rungs.ts';
import type { PartScore } from './week.ts';

/** A mixed part as it is stored: its blueprint (see blueprintOf), and the marks of its cards that count. */
export interface MixedScore {
  readonly blueprint: string;
  readonly marks: readonly { readonly fact: FactId; readonly right: boolean }[];
}

/**
 * Whether a blueprint is of a mixed part.
 *
 * @example
 * isMixed('doubles.to10+halves.to10|10'); // true
 */
export function isMixed(blueprint: string): boolean {
  return blueprint.includes('+');
}

/**
 * One score for each rung of a mixed part, in ladder order: a card counts for the easiest of these rungs that has its fact. A
 * rung without a card has no score. Cards of a rung that this release does not have are left out.
 *
 * @example
 * splitMixed({ blueprint: 'doubles.to10+halves.to10|2', marks }).map(({ rung }) => rung);
 * // ['doubles.to10', 'halves.to10'] for one card of each
 */
export function splitMixed({ blueprint, marks }: MixedScore): PartScore[] {
  const rungs = rungsOf(blueprint);
  return rungs.flatMap((rung) => {
    const own = marks.filter(({ fact }) => rungOfFact(rungs, fact)?.id === rung.id);
    if (own.length === 0) return [];
    const right = own.filter((mark) => mark.right).length;
    return [{ strand: rung.strand, rung: rung.id, right, asked: own.length, mixed: blueprint }];
  });
}

function rungsOf(blueprint: string): readonly Rung[] {
  const ids = (blueprint.split('|')[0] ?? '').split('+');
  return RUNGS.filter(({ id }) => ids.includes(id));
}
