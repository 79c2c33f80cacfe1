import { type FactId, next } from '../facts/fact-id.ts';

const BY_STEP = new Map<number, Map<number, FactId>>();

/**
 * One step of a count as a fact, like `next` in facts/fact-id. Each is spelled once and then kept: the choice of a run looks at
 * some forty steps, and spelling them anew for every child would cost more than all the rest of an evening. There are
 * only as many as the ladder's runs have.
 *
 * @example
 * stepFact(35, 5); // 'next:35+5'
 */
export function stepFact(n: number, step: number): FactId {
  let facts = BY_STEP.get(step);
  if (facts === undefined) {
    facts = new Map();
    BY_STEP.set(step, facts);
  }
  let fact = facts.get(n);
  if (fact === undefined) {
    fact = next(n, step);
    facts.set(n, fact);
  }
  return fact;
}
