import { describe, expect, test } from 'vitest';
import {
  askedOf,
  blueprintOf,
  composeEvening,
  type Drill,
  type EveningInput,
  type FactId,
} from '../../../drills/index.ts';
import { longestRun, runStarts } from '../../../drills/ladder/run-starts.ts';
import {
  canBeParted,
  factParts,
  forAnyEvening,
  forcedNew,
  goesWell,
  lastMarked,
  newOnes,
  opensWithTwins,
  runParts,
  twinsTouch,
} from '../support/check-evenings.ts';

function composed(input: EveningInput, variant: 'full' | 'short' | 'catch_up'): Drill {
  return composeEvening({ ...input, variant });
}

describe('any short evening', () => {
  test('each part asks for half of what is planned, rounded up and at least 3, or for the whole set', () => {
    forAnyEvening((input) => {
      const drill = composed(input, 'short');
      for (const { part, rung, planned } of factParts(drill, input)) {
        const half = Math.max(3, Math.ceil(planned / 2));
        expect(askedOf(part)).toBe(Math.min(half, rung.facts.length));
      }
      for (const { part, rung, planned } of runParts(drill, input)) {
        const half = Math.max(3, Math.ceil(planned / 2));
        expect(askedOf(part)).toBe(Math.min(half, longestRun(rung)));
      }
    });
  });

  test('it brings at most two new facts in a part, or half of the part while it goes well, unless too few were asked', () => {
    forAnyEvening((input) => {
      for (const { part, rung } of factParts(composed(input, 'short'), input)) {
        const size = part.cards.length;
        if (forcedNew(size, rung, input) > 0) continue;
        const most = goesWell(size, rung, input) ? Math.max(2, Math.floor(size / 2)) : 2;
        expect(newOnes(part.cards, input).length).toBeLessThanOrEqual(most);
      }
    });
  });
});

describe('any evening to catch up', () => {
  test('its blueprints are those of the full evening', () => {
    forAnyEvening((input) => {
      const blueprints = composed(input, 'catch_up').parts.map(blueprintOf);
      expect(blueprints).toEqual(composed(input, 'full').parts.map(blueprintOf));
    });
  });

  test('it brings no new fact while enough were asked before', () => {
    forAnyEvening((input) => {
      for (const { part, rung } of factParts(composed(input, 'catch_up'), input)) {
        const asked = rung.facts.length - newOnes(rung.facts, input).length;
        const forced = Math.max(0, part.cards.length - asked);
        expect(newOnes(part.cards, input)).toHaveLength(forced);
      }
    });
  });

  test('what was missed comes back and fills half of a part, or more where nothing else was asked', () => {
    forAnyEvening((input) => {
      for (const { part, rung } of factParts(composed(input, 'catch_up'), input)) {
        const missed = lastMarked(rung.facts, false, input).length;
        const right = lastMarked(rung.facts, true, input).length;
        const half = Math.floor(part.cards.length / 2);
        const forced = Math.min(missed, part.cards.length - right);
        expect(lastMarked(part.cards, false, input)).toHaveLength(
          Math.max(Math.min(missed, half), forced),
        );
      }
    });
  });

  test.each([
    ['missed', false],
    ['known', true],
  ])('a %s fact left out was never seen longer ago than one that came', (_, right) => {
    forAnyEvening((input) => {
      for (const { part, rung } of factParts(composed(input, 'catch_up'), input)) {
        const daysOf = (facts: readonly FactId[]) =>
          lastMarked(facts, right, input)
            .map((fact) => input.memory.get(fact)?.lastDay ?? '')
            .sort();
        const latestHere = daysOf(part.cards).at(-1) ?? '';
        const earliestLeft = daysOf(rung.facts.filter((fact) => !part.cards.includes(fact)))[0];
        if (earliestLeft !== undefined) expect(latestHere <= earliestLeft).toBe(true);
      }
    });
  });

  test('it opens with a known fact where it has one, unless twins force another beginning', () => {
    forAnyEvening((input) => {
      for (const { part } of factParts(composed(input, 'catch_up'), input)) {
        if (lastMarked(part.cards, true, input).length === 0 || !canBeParted(part.cards)) continue;
        const [first] = part.cards;
        if (first === undefined || opensWithTwins(part.cards)) continue;
        expect(lastMarked([first], true, input)).toEqual([first]);
      }
    });
  });
});

describe('any evening once more', () => {
  const again = (input: EveningInput, before: Drill) =>
    composeEvening({ ...input, variant: 'again', before });

  test('it has the same cards in another order, near twins apart', () => {
    forAnyEvening((input) => {
      const before = composed(input, 'full');
      const drill = again(input, before);
      factParts(drill, input).forEach(({ part }, at) => {
        const cards = factParts(before, input)[at]?.part.cards ?? [];
        expect([...part.cards].sort()).toEqual([...cards].sort());
        expect(part.cards).not.toEqual(cards);
        if (canBeParted(cards)) expect(twinsTouch(part.cards)).toBe(false);
      });
    });
  });

  test('its blueprints are the same, so that its scores compare', () => {
    forAnyEvening((input) => {
      const before = composed(input, 'full');
      expect(again(input, before).parts.map(blueprintOf)).toEqual(before.parts.map(blueprintOf));
    });
  });

  test('a run starts elsewhere, unless it can start nowhere else', () => {
    forAnyEvening((input) => {
      const before = composed(input, 'full');
      const earlier = runParts(before, input);
      runParts(again(input, before), input).forEach(({ part, rung }, at) => {
        if (runStarts(rung, part.length).length === 1) return;
        expect(part.start).not.toBe(earlier[at]?.part.start);
      });
    });
  });

  test('once more and once more again the order changes each time', () => {
    forAnyEvening((input) => {
      const once = again(input, composed(input, 'full'));
      const twice = factParts(again(input, once), input);
      factParts(once, input).forEach(({ part }, at) => {
        expect(twice[at]?.part.cards).not.toEqual(part.cards);
      });
    });
  });
});
