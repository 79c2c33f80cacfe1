import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sharesOf } from '../../../drills/evening/choose-mixed.ts';
import {
  addDays,
  askedOf,
  blueprintOf,
  canMix,
  composeEvening,
  createRandom,
  type Drill,
  drawFacts,
  type FactId,
  type FactRung,
  maxCardsOf,
  type PlanPart,
  RUNGS,
  type RungId,
  rebuildEvening,
  rebuildMemory,
  rungById,
  VARIANTS,
} from '../../../drills/index.ts';
import { anEvening, factsOf } from '../support/an-evening.ts';
import { opensWithTwins, twinsTouch } from '../support/check-evenings.ts';
import { day } from '../support/day.ts';
import { allAskedOn } from '../support/memories.ts';

const TODAY = day('2026-09-11');
const FACT_RUNGS = RUNGS.filter((rung): rung is FactRung => rung.kind === 'facts');

/** Two or three rungs that mix, and a size they allow. */
const anyMixed: fc.Arbitrary<PlanPart> = fc
  .tuple(fc.constantFrom(...FACT_RUNGS), fc.nat(), fc.nat(), fc.nat(), fc.boolean())
  .map(([first, one, two, size, isThree]) => {
    const others = FACT_RUNGS.filter(
      ({ id, strand }) => id !== first.id && canMix(first.strand, strand),
    );
    const second = others[one % others.length]?.id ?? first.id;
    const third = others[two % others.length]?.id ?? first.id;
    const also = isThree && third !== second ? [second, third] : [second];
    const most = maxCardsOf({ rung: first.id, also });
    return { rung: first.id, also, cards: 3 + (size % (most - 2)), seconds: 3 };
  });

const compose = (part: PlanPart, rest: Parameters<typeof anEvening>[1] = {}) =>
  composeEvening(anEvening([], { plan: { parts: [part] }, ...rest }));
const cardsIn = ({ parts: [part] }: Drill): readonly FactId[] =>
  part?.kind === 'facts' ? part.cards : [];
const of = (cards: readonly FactId[], id: RungId) =>
  cards.filter((card) => factsOf(id).includes(card)).length;

const DOUBLES: PlanPart = { rung: 'doubles.to10', also: ['halves.to20'], cards: 10, seconds: 3 };

describe('a mixed part', () => {
  test('shuffles as many cards of each rung, and says which rungs it is made of', () => {
    const drill = compose(DOUBLES);
    const cards = cardsIn(drill);
    expect([of(cards, 'doubles.to10'), of(cards, 'halves.to20')]).toEqual([5, 5]);
    const kinds = cards.map((card) => card.split(':')[0]);
    // One kind after the other would change once.
    expect(kinds.filter((kind, at) => at > 0 && kind !== kinds[at - 1]).length).toBeGreaterThan(1);
    expect(drill.parts[0]).toMatchObject({
      strand: 'doubles',
      rung: 'doubles.to10',
      also: ['halves.to20'],
    });
  });

  test('has distinct cards of its rungs only, as many as asked, shared out evenly, twins apart', () => {
    fc.assert(
      fc.property(anyMixed, fc.string(), fc.boolean(), (part, seed, isLate) => {
        const cards = cardsIn(compose(part, { seed, variant: isLate ? 'catch_up' : 'full' }));
        expect(cards).toHaveLength(part.cards);
        expect(new Set(cards).size).toBe(cards.length);
        const rungs = [part.rung, ...(part.also ?? [])];
        for (const card of cards) {
          expect(
            rungs.some((id) => factsOf(id).includes(card)),
            card,
          ).toBe(true);
        }
        const even = Math.floor(part.cards / rungs.length);
        const fromEasiest = FACT_RUNGS.map(({ id }) => id).filter((id) => rungs.includes(id));
        for (const [at, id] of fromEasiest.entries()) {
          const before = fromEasiest.slice(0, at).flatMap(factsOf);
          const own = factsOf(id).filter((fact) => !before.includes(fact)).length;
          expect(of(cards, id)).toBeGreaterThanOrEqual(Math.min(even, own));
        }
        if (!opensWithTwins(cards)) expect(twinsTouch(cards)).toBe(false);
      }),
      { numRuns: 60 },
    );
  });

  test('gives an easier step its share too when it is named last and the other holds all its facts', () => {
    const also: RungId[] = ['halves.to10'];
    const part: PlanPart = { rung: 'halves.to20', also, cards: 10, seconds: 3 };
    const drawn = { strand: 'halves', rung: part.rung, also, seconds: 3 } as const;
    for (const seed of ['wren', 'otter', 'robin']) {
      const cards = cardsIn(compose({ ...part, cards: 6 }, { seed }));
      expect(of(cards, 'halves.to10'), seed).toBe(3);
      const sample = { kind: 'facts', ...drawn, cards: cards.slice(0, 4) } as const;
      expect(of(drawFacts(sample, createRandom(seed)), 'halves.to10'), seed).toBe(2);
    }
  });

  test('after missed evenings still has as many of each rung, and opens with what is surest', () => {
    const memory = allAskedOn(factsOf('halves.to20'), [addDays(TODAY, -9)]);
    const cards = cardsIn(compose(DOUBLES, { memory, variant: 'catch_up' }));
    expect(of(cards, 'halves.to20')).toBe(5);
    expect(of(cards.slice(0, 3), 'halves.to20')).toBe(3);
  });
});

describe('a mixed part as time goes by', () => {
  test('done again has the same cards, whatever order its rungs are named in', () => {
    const before = compose(DOUBLES);
    const turned: PlanPart = { ...DOUBLES, rung: 'halves.to20', also: ['doubles.to10'] };
    for (const part of [DOUBLES, turned]) {
      const again = cardsIn(compose(part, { variant: 'again', before }));
      expect(again.toSorted()).toEqual(cardsIn(before).toSorted());
    }
    const apart = compose({ rung: 'doubles.to10', cards: 10, seconds: 3 }, { before });
    expect(of(cardsIn(apart), 'halves.to20')).toBe(0);
  });

  test('is rebuilt exactly, in every variant', () => {
    for (const variant of VARIANTS) {
      const input = anEvening([], {
        plan: { parts: [DOUBLES] },
        before: compose(DOUBLES),
        variant,
      });
      const drill = composeEvening(input);
      expect(rebuildEvening(drill, input)).toEqual(drill);
    }
  });

  test('has an own best of its own, apart from its rungs kept apart', () => {
    const blueprints = [DOUBLES, { ...DOUBLES, also: ['halves.to10'] } as const].map((part) =>
      compose(part).parts.map(blueprintOf),
    );
    expect(blueprints).toEqual([['doubles.to10+halves.to20|10'], ['doubles.to10+halves.to10|10']]);
  });

  test('brings about as many new facts as a part of one rung', () => {
    const known = [
      ...factsOf('bonds.to20').slice(0, 150),
      ...factsOf('takeaway.to20').slice(0, 150),
    ];
    const asked = allAskedOn(known, [addDays(TODAY, -2)]);
    // One in five was missed last: it does not go well, so new facts are few.
    const memory = new Map(
      [...asked].map(([fact, each], at) => [fact, { ...each, lastRight: at % 5 !== 0 }] as const),
    );
    const part: PlanPart = { rung: 'bonds.to20', also: ['takeaway.to20'], cards: 12, seconds: 3 };
    const fresh = cardsIn(compose(part, { memory })).filter((card) => !memory.has(card));
    expect(fresh.length).toBeLessThanOrEqual(4);
  });
});

describe('shares of cards', () => {
  test('are even, and what one set cannot give another does', () => {
    expect(sharesOf(10, [20, 3, 20])).toEqual([4, 3, 3]);
    expect(sharesOf(10, [20, 1, 20])).toEqual([5, 1, 4]);
    expect(sharesOf(10, [2, 3])).toEqual([2, 3]);
    expect(sharesOf(0, [2])).toEqual([0]);
    expect(sharesOf(5, [])).toEqual([]);
  });
});

describe('a drill drawn by chance', () => {
  test('takes as many cards from each rung of a mixed part', () => {
    const [part] = compose(DOUBLES).parts;
    if (part?.kind !== 'facts') throw new Error('the part has cards');
    const drawn = drawFacts(part, createRandom('wren'));
    expect(drawn).toHaveLength(10);
    expect([of(drawn, 'doubles.to10'), of(drawn, 'halves.to20')]).toEqual([5, 5]);
    expect(drawn).not.toEqual(drawFacts(part, createRandom('otter')));
  });
});

/** Asked facts of some rungs, a quarter of the marks missed. */
function someMemory(rungs: readonly RungId[], chance: string) {
  const random = createRandom(chance);
  const marks = rungs.flatMap((id) => {
    const rung = rungById(id);
    if (rung?.kind !== 'facts') return [];
    return rung.facts.flatMap((fact) => {
      if (random.int(2) !== 0) return [];
      const on = addDays(TODAY, -1 - random.int(20));
      return [{ fact, day: on, right: random.int(4) !== 0, way: 'card' as const }];
    });
  });
  return rebuildMemory(
    marks.sort((one, other) => (one.day < other.day ? -1 : one.day > other.day ? 1 : 0)),
  );
}

test('a plan without mixed parts composes exactly as it did before parts could be mixed', () => {
  // The sum was made by the release before, over the same 120 plans in three variants.
  const drills = Array.from({ length: 120 }, (_, n) => {
    const random = createRandom(`golden ${n}`);
    const rungs = random.shuffle(RUNGS).slice(0, 1 + random.int(6));
    const parts = rungs.map(({ id }) => ({
      rung: id,
      cards: 3 + random.int(18),
      seconds: 2 + random.int(14),
    }));
    const memory = someMemory(
      rungs.map(({ id }) => id),
      `m ${n}`,
    );
    const input = {
      plan: { parts },
      memory,
      lastStarts: new Map(),
      today: TODAY,
      seed: `child ${n}`,
    };
    return (['full', 'short', 'catch_up'] as const).map((variant) =>
      composeEvening({ ...input, variant }),
    );
  }).flat();
  expect(drills.flatMap(({ parts }) => parts.map(askedOf)).length).toBeGreaterThan(360);
  expect(createHash('sha256').update(JSON.stringify(drills)).digest('hex')).toBe(
    'b73d4e4335261b5a83e0d2a432245663f01c8ed77188ac5ec35ffa6771ad2ca9',
  );
});
