/** A model's belief about one child and one fact, as plain numbers, so that any model can be stored in the same place. */
export type MemoryState = readonly number[];

/**
 * One thing seen about a fact. `day` is a day number (see calendar/day-number). `way` says how it was seen: `card`, marked by
 * itself; `unmissed`, marked with others where only missed cards were tapped; `run`, one step of a counting run. `share` is 1
 * for the fact's own evidence and less where a relative lends it (4 + 3 to 3 + 4), never 0.
 */
export interface Evidence {
  readonly day: number;
  readonly right: boolean;
  readonly way: 'card' | 'unmissed' | 'run';
  readonly share: number;
}

/** A model of how one child remembers one fact. All functions are pure; days are day numbers and may stand still or go back. */
export interface MemoryModel {
  /** Stored beside the states, so that states of another model are never misread. */
  readonly name: string;
  /** The belief before anything was seen. `difficulty` is 0 (easiest) to 5, see facts/difficulty. */
  start(difficulty: number): MemoryState;
  /** The belief after one more thing was seen. */
  learn(state: MemoryState, evidence: Evidence): MemoryState;
  /** The chance, 0 to 1, that the child answers right when asked on that day. */
  recall(state: MemoryState, day: number): number;
  /** How much good it does to ask on that day, 0 or more; only its order matters. */
  worth(state: MemoryState, day: number): number;
}
