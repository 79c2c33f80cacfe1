import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  askedOf,
  composeEvening,
  type Drill,
  type EveningInput,
  type FactId,
  hasNought,
  isNearTwin,
  rungById,
  runNumbers,
} from '../../../drills/index.ts';
import { anyEvening } from '../support/arbitrary-evening.ts';

function holdsForAnyEvening(check: (drill: Drill, input: EveningInput) => void): void {
  fc.assert(
    fc.property(anyEvening, (input) => check(composeEvening(input), input)),
    { numRuns: 300 },
  );
}

function factParts(drill: Drill, { memory }: EveningInput) {
  return drill.parts.flatMap((part) => {
    const rung = rungById(part.rung);
    if (part.kind !== 'facts' || rung?.kind !== 'facts') return [];
    const countIn = (facts: readonly FactId[]) => ({
      unseen: facts.filter((fact) => !memory.has(fact)).length,
      missed: facts.filter((fact) => memory.get(fact)?.lastRight === false).length,
      known: facts.filter((fact) => memory.get(fact)?.lastRight === true).length,
    });
    return [{ cards: part.cards, rung, chosen: countIn(part.cards), set: countIn(rung.facts) }];
  });
}

describe('any evening', () => {
  test('it has the parts of the plan in their order, at their pace', () => {
    holdsForAnyEvening((drill, { plan }) => {
      expect(drill.parts.map(({ rung, seconds }) => [rung, seconds])).toEqual(
        plan.parts.map(({ rung, seconds }) => [rung, seconds]),
      );
    });
  });

  test('the same input gives the same drill, in whatever order memory was filled', () => {
    holdsForAnyEvening((drill, input) => {
      const memory = new Map([...input.memory].reverse());
      const lastStarts = new Map([...input.lastStarts].reverse());
      expect(composeEvening({ ...input, memory, lastStarts })).toEqual(drill);
    });
  });

  test('a part asks for as many cards as planned, or for the whole set when that is smaller', () => {
    holdsForAnyEvening((drill, { plan }) => {
      drill.parts.forEach((part, at) => {
        const rung = rungById(part.rung);
        if (rung?.kind !== 'facts') return;
        expect(askedOf(part)).toBe(Math.min(plan.parts[at]?.cards ?? 0, rung.facts.length));
      });
    });
  });
});

describe('any part of cards', () => {
  test('every card is a fact of the rung and none comes twice', () => {
    holdsForAnyEvening((drill, input) => {
      for (const { cards, rung } of factParts(drill, input)) {
        expect(new Set(cards).size).toBe(cards.length);
        expect(cards.every((card) => rung.facts.includes(card))).toBe(true);
      }
    });
  });

  test('near twins are never next to each other', () => {
    holdsForAnyEvening((drill, input) => {
      for (const { cards } of factParts(drill, input)) {
        cards.slice(1).forEach((card, at) => {
          const before = cards[at];
          expect(before !== undefined && isNearTwin(before, card)).toBe(false);
        });
      }
    });
  });

  test('missed facts come back, as many as fit in half of the part', () => {
    holdsForAnyEvening((drill, input) => {
      for (const { cards, chosen, set } of factParts(drill, input)) {
        const half = Math.floor(cards.length / 2);
        expect(chosen.missed).toBeGreaterThanOrEqual(Math.min(set.missed, half));
      }
    });
  });

  test('missed facts never fill more than half while the set has anything else', () => {
    holdsForAnyEvening((drill, input) => {
      for (const { cards, chosen, set } of factParts(drill, input)) {
        const others = set.known + set.unseen;
        const forced = cards.length - others;
        expect(chosen.missed).toBeLessThanOrEqual(Math.max(Math.floor(cards.length / 2), forced));
      }
    });
  });

  test('at most four new facts come, unless there is too little else', () => {
    holdsForAnyEvening((drill, input) => {
      for (const { cards, chosen, set } of factParts(drill, input)) {
        const half = Math.floor(cards.length / 2);
        const forced = cards.length - Math.min(set.missed, half) - set.known;
        expect(chosen.unseen).toBeLessThanOrEqual(Math.max(4, forced));
      }
    });
  });

  test('new facts with a nought fill at most a fifth, unless there is too little else', () => {
    holdsForAnyEvening((drill, input) => {
      for (const { cards, rung } of factParts(drill, input)) {
        const isNew = (fact: FactId) => !input.memory.has(fact);
        const noughts = cards.filter((fact) => isNew(fact) && hasNought(fact)).length;
        const newOthersLeft = rung.facts.filter(
          (fact) => isNew(fact) && !hasNought(fact) && !cards.includes(fact),
        ).length;
        if (newOthersLeft > 0) expect(noughts).toBeLessThanOrEqual(Math.ceil(cards.length / 5));
      }
    });
  });

  test('at least half of the part is known whenever enough is known', () => {
    holdsForAnyEvening((drill, input) => {
      for (const { cards, chosen, set } of factParts(drill, input)) {
        const upperHalf = Math.ceil(cards.length / 2);
        expect(chosen.known).toBeGreaterThanOrEqual(Math.min(set.known, upperHalf));
      }
    });
  });

  test('a known fact left out was never seen longer ago than one that came', () => {
    holdsForAnyEvening((drill, input) => {
      for (const { cards, rung } of factParts(drill, input)) {
        const lastDays = (facts: readonly FactId[]) =>
          facts.flatMap((fact) => {
            const known = input.memory.get(fact);
            return known?.lastRight === true ? [known.lastDay] : [];
          });
        const latestChosen = lastDays(cards).sort().at(-1);
        const earliestLeft = lastDays(rung.facts.filter((fact) => !cards.includes(fact))).sort()[0];
        if (latestChosen === undefined || earliestLeft === undefined) continue;
        expect(latestChosen <= earliestLeft).toBe(true);
      }
    });
  });
});

describe('any counting run', () => {
  test('its numbers are neighbouring multiples within the range', () => {
    holdsForAnyEvening((drill) => {
      for (const part of drill.parts) {
        const rung = rungById(part.rung);
        if (part.kind !== 'run' || rung?.kind !== 'run') continue;
        const numbers = runNumbers(part);
        for (const number of numbers) {
          expect(number >= 0 && number <= rung.limit && number % rung.step === 0).toBe(true);
        }
        expect(part.step).toBe(rung.direction === 'on' ? rung.step : -rung.step);
      }
    });
  });

  test('it is as long as planned, or as the range allows', () => {
    holdsForAnyEvening((drill, { plan }) => {
      drill.parts.forEach((part, at) => {
        const rung = rungById(part.rung);
        if (part.kind !== 'run' || rung?.kind !== 'run') return;
        const fits = rung.limit / rung.step + 1;
        expect(part.length).toBe(Math.min(plan.parts[at]?.cards ?? 0, fits));
      });
    });
  });

  test('it never starts where the last one did, unless it can start nowhere else', () => {
    holdsForAnyEvening((drill, { lastStarts }) => {
      for (const part of drill.parts) {
        const rung = rungById(part.rung);
        if (part.kind !== 'run' || rung?.kind !== 'run') continue;
        const places = rung.limit / rung.step + 2 - part.length;
        if (places > 1) expect(part.start).not.toBe(lastStarts.get(part.rung));
      }
    });
  });
});
