/** A time on a dial: `hour` 1 to 12, `minute` 0 to 59. */
export interface ClockTime {
  readonly hour: number;
  readonly minute: number;
}

/** How one language says the five-minute times of a dial. */
export interface ClockWords {
  /**
   * All the ways to say a time, the usual one first. `hour` and `next`, the hour after it, run from 1 to 12; `minute` is a
   * multiple of five below 60.
   */
  readonly phrases: (hour: number, minute: number, next: number) => readonly string[];
  /** What may stand before a time ("it is"), folded: without spaces or accents. */
  readonly leadIn: RegExp;
  /** Makes two spellings of one folded phrase alike, where figures or habit give the wrong form of one. */
  readonly mend: (folded: string) => string;
}
