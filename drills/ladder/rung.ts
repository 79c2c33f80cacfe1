import type { FactId } from '../facts/fact-id.ts';

/** A kind of practice. The order is the order parts are offered in. */
export const STRANDS = ['bonds', 'takeaway', 'doubles', 'halves', 'clock', 'counting'] as const;

/** One of {@link STRANDS}. */
export type Strand = (typeof STRANDS)[number];

/** A step of a strand's ladder, as a stable string such as `bonds.to10`. It is stored, so the spelling never changes. */
export type RungId = `${Strand}.${string}`;

interface RungBase {
  readonly id: RungId;
  /** Plain words for a busy adult: `bonds to 10`. */
  readonly title: string;
  /** Default number of cards, or of numbers to say in a run. */
  readonly cards: number;
  /** Default pace in seconds per card. */
  readonly seconds: number;
  /** Where the range comes from, or `common practice, no source`. */
  readonly source: string;
}

/** A rung with a fixed set of facts. */
export interface FactRung extends RungBase {
  readonly kind: 'facts';
  readonly strand: Exclude<Strand, 'counting'>;
  readonly facts: readonly FactId[];
}

/** A rung that makes counting runs: multiples of `step` between 0 and `limit`, upwards or downwards. */
export interface RunRung extends RungBase {
  readonly kind: 'run';
  readonly strand: 'counting';
  readonly step: number;
  readonly direction: 'on' | 'back';
  readonly limit: number;
}

/** One step of a ladder. */
export type Rung = FactRung | RunRung;
