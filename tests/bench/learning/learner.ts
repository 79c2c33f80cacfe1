/**
 * A simulated child's true memory of a list of facts; none of the models under test. A fact is its place in the list, a day a
 * day number. Days never go back.
 */
export interface Learner {
  /** The true chance, 0 to 1, of a right answer on that day. */
  chance(fact: number, day: number): number;
  /** The true chance on a `later` day if the fact were asked once on `day`. Changes nothing. */
  chanceIfAsked(fact: number, day: number, later: number): number;
  /** The fact is asked on that day. A wrong answer is put right at once, so that every asking is a practice. */
  ask(fact: number, day: number): void;
}

/** What tells one child's facts apart. All arrays are in the order of the facts. */
export interface Traits {
  /** How much easier than usual a fact is for this child, in logits. */
  readonly ease: Float64Array;
  /** The days, all before the first, on which the fact was met before the term; oldest first. */
  readonly metBefore: readonly (readonly number[])[];
}
