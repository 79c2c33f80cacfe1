/** A fact is known when the true chance of a right answer on the next school day is at least this. */
export const KNOWN = 0.9;
/** And nearly known from here on. */
export const NEARLY = 0.8;

/** What a term did for one child. */
export interface Outcome {
  /** Facts known before the first evening, and after the last. */
  readonly knownBefore: number;
  readonly known: number;
  readonly nearly: number;
  readonly evenings: number;
  /** True chance of a right answer, over all cards of all evenings. */
  readonly score: number;
  /** Practised evenings until nine facts in ten were known, looked up at the end of each week; null for never. */
  readonly eveningsToMost: number | null;
}
