import { type RungId, rungById, rungsInPart, strandTitle } from '../../drills/index.ts';
import { listOf } from './words.ts';

/** What a title is made from: a part of a plan or of a drill. */
interface Titled {
  readonly rung: RungId;
  readonly also?: readonly RungId[];
}

/** A rung in plain words. */
export function rungTitle(rung: RungId): string {
  return rungById(rung)?.title ?? rung;
}

/**
 * A part in plain words, at the head of it.
 *
 * @example
 * partTitle({ rung: 'doubles.to5', also: ['bonds.make10'] }); // 'mixed: doubles to 5 + 5 and what makes 10'
 */
export function partTitle(part: Titled): string {
  const titles = rungsInPart(part).map(rungTitle);
  return titles.length > 1 ? `mixed: ${listOf(titles)}` : titles.join('');
}

/**
 * A part in plain words, as one of several in a sentence.
 *
 * @example
 * partInList({ rung: 'doubles.to5', also: ['bonds.make10'] }); // 'doubles to 5 + 5 mixed with what makes 10'
 */
export function partInList(part: Titled): string {
  const [first = '', ...others] = rungsInPart(part).map(rungTitle);
  return others.length > 0 ? `${first} mixed with ${listOf(others)}` : first;
}

/**
 * A part at the head of a picture or page, where there is little room: a mixed one by its strands alone.
 *
 * @example
 * shortPartTitle({ rung: 'doubles.to5', also: ['halves.to10'] }); // 'mixed: doubles and halves'
 * shortPartTitle({ rung: 'clock.half', also: ['clock.quarterto'] }); // 'mixed: clock, 2 steps'
 */
export function shortPartTitle(part: Titled): string {
  const rungs = rungsInPart(part);
  if (rungs.length < 2) return partTitle(part);
  const strands = rungs.flatMap((id) => rungById(id)?.strand ?? []);
  const titles = [...new Set(strands)].map(strandTitle);
  return `mixed: ${listOf(titles)}${titles.length === 1 ? `, ${rungs.length} steps` : ''}`;
}
