import type { RungEntry } from '../ladder/rung-table.ts';
import { bestOf } from './choice-best.ts';
import type { CardScores } from './choice-scores.ts';
import type { Random } from './random.ts';

/** One card in so many may be a new one with a nought in it. */
const NOUGHT_SHARE = 5;

/** The never-asked facts a part may bring, and surer ones that may stand in for some of them; places in `entries`. */
export interface NewFacts {
  readonly admitted: readonly number[];
  readonly spare: readonly number[];
}

/** How many cards the part has, how many new facts it may bring, and whether these are drawn from all instead of picked. */
export interface Wanted {
  readonly count: number;
  readonly limit: number;
  readonly drawn: boolean;
  readonly random: Random;
}

/**
 * The never-asked facts that a part of `count` cards may bring; `seen` are those asked before.
 *
 * A new fact counts by the chance that the child does not know it, because never asked is not the same as not known; so many
 * are let in, the most useful first or, when `drawn`, as chance has it, that these chances stay within `limit`, never more than `limit` rounded up in cards, and
 * always one. Where the asked ones do not fill the part, new ones drawn from the whole rung do, so that a first evening shows
 * what the rung is about; `spare` then holds the surest others. Facts with a nought are at most a fifth of the part while others
 * are to be had.
 */
export function admitNew(
  entries: readonly RungEntry[],
  { recall, worth, isNew }: CardScores,
  seen: readonly number[],
  { count, limit, drawn, random }: Wanted,
): NewFacts {
  const fresh: number[] = [];
  for (let at = 0; at < entries.length; at += 1) if (isNew[at] === 1) fresh.push(at);
  const needed = Math.min(fresh.length, count - seen.length);
  const admitted: number[] = [];
  if (fresh.length === 0 || (limit <= 0 && needed <= 0)) return { admitted, spare: [] };

  let noughts = Math.ceil(count / NOUGHT_SHARE);
  const admit = (places: readonly number[], goesOn: (at: number) => boolean) => {
    for (const at of places) {
      const nought = entries[at]?.hasNought === true;
      if ((nought && noughts === 0) || admitted.includes(at)) continue;
      if (!goesOn(at)) return;
      if (nought) noughts -= 1;
      admitted.push(at);
    }
  };
  let unknown = 0;
  if (limit > 0) {
    admit(drawn ? random.shuffle(fresh) : bestOf(fresh, worth, count), (at) => {
      unknown += 1 - (recall[at] ?? 0);
      return admitted.length === 0 || (unknown <= limit && admitted.length < Math.ceil(limit));
    });
  }
  if (admitted.length >= needed) return { admitted, spare: [] };
  const others = random.shuffle(fresh);
  const isShort = () => admitted.length < needed;
  admit(others, isShort);
  noughts = fresh.length;
  admit(others, isShort);
  const spare = bestOf(fresh, recall, 2 * count).filter(
    (at) => !admitted.includes(at) && entries[at]?.hasNought !== true,
  );
  return { admitted, spare };
}
