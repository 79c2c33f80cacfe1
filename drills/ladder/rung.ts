import type { FactId } from '../facts/fact-id.ts';

/**
 * A kind of practice. The order is the order parts are offered in.
 *
 * @example
 * STRANDS[0]; // 'words'
 */
export const STRANDS = [
  'words',
  'bonds',
  'takeaway',
  'doubles',
  'halves',
  'clock',
  'counting',
  'times',
] as const;

/** One of {@link STRANDS}. */
export type Strand = (typeof STRANDS)[number];

/** A step of a strand's ladder, as a stable string such as `bonds.to10`. It is stored, so the spelling never changes. */
export type RungId = `${Strand}.${string}`;

interface RungBase {
  readonly id: RungId;
  /** Plain words for a busy adult: `adding within 10`. */
  readonly title: string;
  /** Default number of cards, or of numbers to say in a run. */
  readonly cards: number;
  /** Default pace in seconds per card. */
  readonly seconds: number;
  /** The rungs that come just before: what a child should be at home with first. Common practice, no source. */
  readonly needs: readonly RungId[];
  /** Where it is asked for: the statement first, then curriculum and grade; or `common practice, no source` alone. */
  readonly sources: readonly string[];
}

/** A rung with a fixed set of facts. */
export interface FactRung extends RungBase {
  readonly kind: 'facts';
  readonly strand: Exclude<Strand, 'counting'>;
  readonly facts: readonly FactId[];
}

/**
 * A rung that makes counting runs in steps of `step`, upwards or downwards, every number between 0 and `limit`. `starts` says
 * where its numbers lie: on the multiples of the step, or on the others (13, 23, 33). With `crosses` a run stands on both sides
 * of a multiple of that number. Which starts that leaves is told by `runStarts`.
 */
export interface RunRung extends RungBase {
  readonly kind: 'run';
  readonly strand: 'counting';
  readonly step: number;
  readonly direction: 'on' | 'back';
  readonly limit: number;
  readonly starts: 'multiples' | 'others';
  readonly crosses?: number;
}

/** One step of a ladder. */
export type Rung = FactRung | RunRung;
