import { graded } from './graded.ts';
import type { MemoryModel } from './model.ts';

/** The model that children's memory is kept with: the one that taught most in `npm run bench:learning`. */
export const MEMORY_MODEL: MemoryModel = graded;
