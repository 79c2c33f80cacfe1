import { bkt } from './bkt.ts';
import { boxes } from './boxes.ts';
import { fsrs } from './fsrs.ts';
import { graded } from './graded.ts';
import type { MemoryModel } from './model.ts';

/**
 * Every memory model by its stored name, to compare them with each other. Whoever only keeps memory takes default-model
 * instead: the library behind one of these adds methods to Date while it loads.
 */
export const MODELS: ReadonlyMap<string, MemoryModel> = new Map(
  [boxes, bkt, fsrs, graded].map((model) => [model.name, model]),
);
