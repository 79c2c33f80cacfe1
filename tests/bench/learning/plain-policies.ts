import { createRandom, type FactId } from '../../../drills/index.ts';
import type { Policy } from './policy.ts';
import { entriesOf } from './schedule.ts';

/** A printed sheet: the same random cards for every child of the class. What all others are measured against. */
export const sameRandomCards: Policy = {
  name: 'same random cards for all',
  start: () => ({
    cards: ({ plan, day }) =>
      plan.parts.map(({ rung, cards }) => {
        const facts = entriesOf(rung).map(({ fact }) => fact);
        return createRandom(`class|${day}|${rung}`).shuffle(facts).slice(0, cards);
      }),
    marked: () => undefined,
  }),
};

/** What was missed last time comes back, the rest is random. */
export const missedFirst: Policy = {
  name: 'missed first',
  start: () => {
    const missed = new Set<FactId>();
    return {
      cards: ({ plan, random }) =>
        plan.parts.map(({ rung, cards }) => {
          const facts = random.shuffle(entriesOf(rung).map(({ fact }) => fact));
          const again = facts.filter((fact) => missed.has(fact));
          return [...again, ...facts.filter((fact) => !missed.has(fact))].slice(0, cards);
        }),
      marked: (marks) => {
        for (const { fact, right } of marks) {
          if (right) missed.delete(fact);
          else missed.add(fact);
        }
      },
    };
  },
};
