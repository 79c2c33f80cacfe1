import type { EveningFacts, Violation } from '../facts.ts';

/** In the end nothing waits, nothing is on its way and nothing was given up. */
export function checkRest({ open }: EveningFacts): Violation[] {
  return Object.entries(open)
    .filter(([, count]) => count > 0)
    .map(([what, count]) => ({
      invariant: 'everything comes to an end',
      what: `${count} ${what}`,
    }));
}
