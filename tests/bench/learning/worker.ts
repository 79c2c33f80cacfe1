import { type ClassTerm, simulateClass } from './class-term.ts';

/** One class to simulate, numbered so that results find their place again. */
export interface Job {
  readonly at: number;
  readonly term: ClassTerm;
}

// A process of its own, started by run-classes: it answers each job with its result, in whatever order they come.
process.on('message', ({ at, term }: Job) => {
  process.send?.({ at, outcome: simulateClass(term) });
});
