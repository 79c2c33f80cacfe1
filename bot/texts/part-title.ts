import { type RungId, rungById, rungsInPart, type Strand } from '../../drills/index.ts';
import { type MessageKey, say } from '../language/index.ts';
import { listOf } from './words.ts';

/** What a title is made from: a part of a plan or of a drill. */
interface Titled {
  readonly rung: RungId;
  readonly also?: readonly RungId[];
}

/** The messages that name a rung. */
type RungKey = Extract<MessageKey, `rungs-${string}`>;

/**
 * A rung in plain words; its id where this release does not know it.
 *
 * @example
 * rungTitle('bonds.to10'); // 'adding within 10'
 */
export function rungTitle(rung: RungId): string {
  const key = `rungs-${rung.replaceAll('.', '-')}`;
  return isRungKey(key, rung) ? say(key) : rung;
}

/** tests/language proves that every rung has its message in every language. */
function isRungKey(_key: string, rung: RungId): _key is RungKey {
  return rungById(rung) !== null;
}

/**
 * A strand in plain words.
 *
 * @example
 * strandName('bonds'); // 'number bonds'
 */
export function strandName(strand: Strand): string {
  return say(`strands-${strand}`);
}

/**
 * A strand over a narrow column.
 *
 * @example
 * strandColumn('times'); // 'times tables'
 */
export function strandColumn(strand: Strand): string {
  return say(`strands-short-${strand}`);
}

/**
 * A part in plain words, at the head of it.
 *
 * @example
 * partTitle({ rung: 'doubles.to5', also: ['bonds.make10'] }); // 'mixed: doubles to 5 + 5 and what makes 10'
 */
export function partTitle(part: Titled): string {
  const titles = rungsInPart(part).map(rungTitle);
  return titles.length > 1 ? say('part-title-mixed', { parts: listOf(titles) }) : titles.join('');
}

/**
 * A part in plain words, as one of several in a sentence.
 *
 * @example
 * partInList({ rung: 'doubles.to5', also: ['bonds.make10'] }); // 'doubles to 5 + 5 mixed with what makes 10'
 */
export function partInList(part: Titled): string {
  const [first = '', ...others] = rungsInPart(part).map(rungTitle);
  if (others.length === 0) return first;
  return say('part-title-mixed-with', { first, others: listOf(others) });
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
  const titles = [...new Set(strands)].map(strandName);
  const [strand, ...others] = titles;
  return strand !== undefined && others.length === 0
    ? say('part-title-mixed-steps', { strand, count: rungs.length })
    : say('part-title-mixed', { parts: listOf(titles) });
}
