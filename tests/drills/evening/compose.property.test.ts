import { describe, expect, test } from 'vitest';
import {
  composeEvening,
  type Drill,
  type EveningInput,
  hasNought,
  rebuildEvening,
  runNumbers,
} from '../../../drills/index.ts';
import { runStarts } from '../../../drills/ladder/run-starts.ts';
import {
  canBeParted,
  expectedUnknown,
  factParts,
  forAnyEvening,
  forcedNew,
  goesWell,
  newOnes,
  runParts,
  twinsTouch,
} from '../support/check-evenings.ts';

type Check = (drill: Drill, input: EveningInput) => void;

const VARIANTS = ['full', 'short', 'catch_up'] as const;

/** Checks evenings of every variant that is composed anew. */
function holdsForAnyEvening(check: Check): void {
  let turn = 0;
  forAnyEvening((plain) => {
    turn += 1;
    const input = { ...plain, variant: VARIANTS[turn % VARIANTS.length] ?? 'full' };
    check(composeEvening(input), input);
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

  test('it is rebuilt exactly from what it was made from', () => {
    holdsForAnyEvening((drill, input) => {
      expect(rebuildEvening(drill, input)).toEqual(drill);
    });
  });
});

describe('any part of cards', () => {
  test('a full part asks for as many cards as planned, or for the whole set when that is smaller', () => {
    forAnyEvening((input) => {
      for (const { part, rung, planned } of factParts(composeEvening(input), input)) {
        expect(part.cards).toHaveLength(Math.min(planned, rung.facts.length));
      }
    });
  });

  test('every card is a fact of the rung and none comes twice', () => {
    holdsForAnyEvening((drill, input) => {
      for (const { part, rung } of factParts(drill, input)) {
        const facts = new Set(rung.facts);
        expect(new Set(part.cards).size).toBe(part.cards.length);
        expect(part.cards.every((card) => facts.has(card))).toBe(true);
      }
    });
  });

  test('near twins are never next to each other, unless one family is more than half of the part', () => {
    holdsForAnyEvening((drill, input) => {
      for (const { part } of factParts(drill, input)) {
        if (canBeParted(part.cards)) expect(twinsTouch(part.cards)).toBe(false);
      }
    });
  });

  test('about four unknown new facts come, shared over the parts that have new ones; half a part while it goes well', () => {
    forAnyEvening((input) => {
      const parts = factParts(composeEvening(input), input);
      const sharing = parts.filter(({ rung }) => newOnes(rung.facts, input).length > 0).length;
      const share = Math.max(1, 4 / Math.max(1, sharing));
      for (const { part, rung } of parts) {
        const size = part.cards.length;
        if (forcedNew(size, rung, input) > 0) continue;
        const fresh = newOnes(part.cards, input);
        if (goesWell(size, rung, input)) {
          expect(fresh.length).toBeLessThanOrEqual(
            Math.max(Math.ceil(share), Math.floor(size / 2)),
          );
        } else {
          expect(fresh.length).toBeLessThanOrEqual(Math.ceil(share));
          if (fresh.length > 1) expect(expectedUnknown(fresh, input)).toBeLessThanOrEqual(share);
        }
      }
    });
  });

  test('new facts with a nought fill at most a fifth, while other new ones are to be had', () => {
    holdsForAnyEvening((drill, input) => {
      for (const { part, rung } of factParts(drill, input)) {
        const noughts = newOnes(part.cards, input).filter(hasNought).length;
        const othersLeft = newOnes(rung.facts, input).filter(
          (fact) => !hasNought(fact) && !part.cards.includes(fact),
        );
        if (othersLeft.length > 0) {
          expect(noughts).toBeLessThanOrEqual(Math.ceil(part.cards.length / 5));
        }
      }
    });
  });
});

describe('any counting run', () => {
  test('its numbers are a step apart and within 0 and the limit', () => {
    holdsForAnyEvening((drill, input) => {
      for (const { part, rung } of runParts(drill, input)) {
        const numbers = runNumbers(part);
        expect(Math.min(...numbers)).toBeGreaterThanOrEqual(0);
        expect(Math.max(...numbers)).toBeLessThanOrEqual(rung.limit);
        expect(part.step).toBe(rung.direction === 'on' ? rung.step : -rung.step);
      }
    });
  });

  test('it starts where its rung allows', () => {
    holdsForAnyEvening((drill, input) => {
      for (const { part, rung } of runParts(drill, input)) {
        expect(runStarts(rung, part.length)).toContain(part.start);
      }
    });
  });

  test('it is as long as planned, or as the range allows', () => {
    forAnyEvening((input) => {
      for (const { part, rung, planned } of runParts(composeEvening(input), input)) {
        expect(part.length).toBeLessThanOrEqual(planned);
        if (part.length < planned) expect(runStarts(rung, part.length + 1)).toEqual([]);
      }
    });
  });

  test('it never starts where the last one did, unless it can start nowhere else', () => {
    holdsForAnyEvening((drill, input) => {
      for (const { part, rung } of runParts(drill, input)) {
        if (runStarts(rung, part.length).length === 1) continue;
        expect(part.start).not.toBe(input.lastStarts.get(rung.id));
      }
    });
  });
});
