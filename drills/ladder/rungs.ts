import { FACT_RUNGS, TIMES_RUNGS } from './fact-rungs.ts';
import { RUN_RUNGS } from './run-rungs.ts';
import type { Rung, Strand } from './rung.ts';

/**
 * Every rung there is, in the order of the strands, easier ones first within a strand.
 *
 * @example
 * RUNGS[0]?.id; // 'words.to20'
 */
export const RUNGS: readonly Rung[] = [...FACT_RUNGS, ...RUN_RUNGS, ...TIMES_RUNGS];

const BY_ID: ReadonlyMap<string, Rung> = new Map(RUNGS.map((rung) => [rung.id, rung]));

const TITLES: Readonly<Record<Strand, string>> = {
  words: 'number words',
  bonds: 'number bonds',
  takeaway: 'take away',
  doubles: 'doubles',
  halves: 'halves',
  clock: 'clock',
  counting: 'counting',
  times: 'times tables',
};

/**
 * The rung stored under this id; null when there is none (any more).
 *
 * @example
 * rungById('counting.tens')?.title; // 'counting in tens to 200'
 */
export function rungById(id: string): Rung | null {
  return BY_ID.get(id) ?? null;
}

/**
 * One strand's ladder, easier rungs first.
 *
 * @example
 * rungsOf('doubles').map(({ id }) => id); // ['doubles.to5', 'doubles.to10', 'doubles.to20', 'doubles.tens']
 */
export function rungsOf(strand: Strand): readonly Rung[] {
  return RUNGS.filter((rung) => rung.strand === strand);
}

/**
 * A strand in plain words.
 *
 * @example
 * strandTitle('bonds'); // 'number bonds'
 */
export function strandTitle(strand: Strand): string {
  return TITLES[strand];
}
