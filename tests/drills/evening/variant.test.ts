import { describe, expect, test } from 'vitest';
import { cardsIn, composeEvening, type EveningInput, variantAfter } from '../../../drills/index.ts';
import { anEvening, cardsOf, factsOf, startOf } from '../support/an-evening.ts';
import { day } from '../support/day.ts';
import { allAskedOn } from '../support/memories.ts';

const monday = day('2026-09-07');

describe('variantAfter', () => {
  test('two evenings missed in a row call for catching up, one does not', () => {
    expect(variantAfter(2)).toBe('catch_up');
    expect(variantAfter(3)).toBe('catch_up');
    expect(variantAfter(1)).toBe('full');
    expect(variantAfter(0)).toBe('full');
  });
});

describe('cardsIn', () => {
  test('a short part has half of the cards, rounded up', () => {
    expect(cardsIn('short', 9)).toBe(5);
    expect(cardsIn('short', 10)).toBe(5);
  });

  test('a short part has no fewer than 3 cards and no more than planned', () => {
    expect(cardsIn('short', 4)).toBe(3);
    expect(cardsIn('short', 3)).toBe(3);
    expect(cardsIn('short', 2)).toBe(2);
  });

  test.each(['full', 'catch_up', 'again'] as const)('the variant %s has all of them', (variant) => {
    expect(cardsIn(variant, 9)).toBe(9);
  });
});

describe('the variant of a drill', () => {
  test('a full drill names none, the others do', () => {
    const input = anEvening(['bonds.to10']);
    expect(composeEvening(input)).not.toHaveProperty('variant');
    expect(composeEvening({ ...input, variant: 'full' })).toEqual(composeEvening(input));
    expect(composeEvening({ ...input, variant: 'short' }).variant).toBe('short');
    expect(composeEvening({ ...input, variant: 'catch_up' }).variant).toBe('catch_up');
  });
});

describe('an evening to catch up', () => {
  const facts = factsOf('bonds.to10');

  test('missed ones and the longest unseen fill it', () => {
    const long = allAskedOn(facts.slice(0, 7), [day('2026-08-20')]);
    const missed = allAskedOn(facts.slice(7, 10), [monday], false);
    const fresh = allAskedOn(facts.slice(10), [monday]);
    const memory = new Map([...fresh, ...long, ...missed]);
    const [cards = []] = cardsOf(
      composeEvening(anEvening(['bonds.to10'], { memory, variant: 'catch_up' })),
    );
    expect([...cards].sort()).toEqual(facts.slice(0, 10).toSorted());
  });

  test('it opens with cards that were right last time, and the missed ones follow', () => {
    const missed = allAskedOn(facts.slice(0, 5), [monday], false);
    const memory = new Map([...allAskedOn(facts, [monday]), ...missed]);
    for (const seed of ['wren', 'otter', 'robin', 'sparrow']) {
      const input = anEvening(['bonds.to10'], { memory, seed, variant: 'catch_up' });
      const [cards = []] = cardsOf(composeEvening(input));
      expect(cards.slice(0, 2).filter((card) => missed.has(card))).toEqual([]);
      expect(cards.filter((card) => missed.has(card))).toHaveLength(5);
    }
  });

  test('a child who knows nothing yet begins with the easier facts', () => {
    const input = anEvening(['bonds.to20'], { variant: 'catch_up' });
    const [cards = []] = cardsOf(composeEvening(input));
    expect(cards).toHaveLength(10);
    expect(cards).not.toContain('add:8+7');
    expect(cards).not.toContain('add:9+9');
  });
});

describe('an evening once more', () => {
  const input = anEvening(['bonds.to10', 'counting.fives']);
  const before = composeEvening(input);
  const again = (rest: Partial<EveningInput> = {}) =>
    composeEvening({ ...input, variant: 'again', before, ...rest });

  test('the cards are those of the drill before, in another order', () => {
    const [cards = []] = cardsOf(again());
    const [earlier = []] = cardsOf(before);
    expect(cards.toSorted()).toEqual(earlier.toSorted());
    expect(cards).not.toEqual(earlier);
  });

  test('a run never starts where that of the drill before did, whatever came before it', () => {
    const earlier = startOf(before);
    for (let seed = 0; seed < 200; seed += 1) {
      expect(startOf(again({ seed: `${seed}` }))).not.toBe(earlier);
    }
  });

  test('a rung that is planned no more is left out, and a new one composed anew', () => {
    const plan = anEvening(['doubles.to5', 'counting.fives']).plan;
    const drill = again({ plan });
    expect(drill.parts.map(({ rung }) => rung)).toEqual(['doubles.to5', 'counting.fives']);
    expect(cardsOf(drill)[0]).toHaveLength(5);
  });

  test('a part whose size has changed is composed anew: its score could not be compared', () => {
    const plan = { parts: [{ rung: 'bonds.to10', cards: 6, seconds: 3 } as const] };
    const drill = again({ plan });
    expect(cardsOf(drill)[0]).toEqual(cardsOf(composeEvening({ ...input, plan }))[0]);
  });

  test('it goes at the pace that is planned now', () => {
    const plan = { parts: [{ rung: 'bonds.to10', cards: 10, seconds: 5 } as const] };
    expect(again({ plan }).parts.map(({ seconds }) => seconds)).toEqual([5]);
  });

  test('without a drill before it is refused', () => {
    expect(() => composeEvening({ ...input, variant: 'again' })).toThrow(
      'the variant again needs the drill before, to take its cards from',
    );
  });
});
