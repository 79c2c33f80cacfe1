import { describe, expect, test } from 'vitest';
import {
  COMPOSER_VERSION,
  composeEvening,
  type EveningInput,
  type FactId,
  type FactMemory,
  type RungId,
  rungsOf,
} from '../../../drills/index.ts';
import { day } from '../support/day.ts';

const monday = day('2026-09-07');

const known: FactMemory = { asked: 3, right: 3, streak: 3, lastDay: monday, lastRight: true };
const missed: FactMemory = { asked: 3, right: 2, streak: 0, lastDay: monday, lastRight: false };

function evening(rungs: readonly RungId[], rest: Partial<EveningInput> = {}): EveningInput {
  return {
    plan: { parts: rungs.map((rung) => ({ rung, cards: 10, seconds: 3 })) },
    memory: new Map(),
    lastStarts: new Map(),
    today: day('2026-09-08'),
    seed: 'wren|2026-09-08',
    ...rest,
  };
}

function factsOf(id: RungId): readonly FactId[] {
  const rung = rungsOf('bonds').find((each) => each.id === id);
  return rung?.kind === 'facts' ? rung.facts : [];
}

function cardsOf(input: EveningInput): readonly FactId[][] {
  return composeEvening(input).parts.map((part) => (part.kind === 'facts' ? [...part.cards] : []));
}

describe('composeEvening', () => {
  test('a drill never changes for the same input, or old evenings could not be rebuilt', () => {
    expect(composeEvening(evening(['doubles.to5', 'counting.fives']))).toEqual({
      version: 1,
      parts: [
        {
          kind: 'facts',
          strand: 'doubles',
          rung: 'doubles.to5',
          seconds: 3,
          cards: ['double:2', 'double:3', 'double:5', 'double:1', 'double:4'],
        },
        {
          kind: 'run',
          strand: 'counting',
          rung: 'counting.fives',
          seconds: 3,
          start: 155,
          step: 5,
          length: 10,
        },
      ],
    });
  });

  test('a drill carries the version of its composer', () => {
    expect(COMPOSER_VERSION).toBe(1);
    expect(composeEvening(evening(['bonds.to10'])).version).toBe(COMPOSER_VERSION);
  });

  test('two children on one plan get the same sizes and not the same cards', () => {
    const wren = cardsOf(evening(['bonds.to10'], { seed: 'wren' }));
    const otto = cardsOf(evening(['bonds.to10'], { seed: 'otto' }));
    expect(wren[0]).toHaveLength(10);
    expect(otto[0]).toHaveLength(10);
    expect(wren).not.toEqual(otto);
  });

  test('a change to a later part leaves an earlier part as it was', () => {
    const [before] = cardsOf(evening(['doubles.to10', 'halves.to10']));
    const [after] = cardsOf(evening(['doubles.to10', 'clock.half']));
    expect(after).toEqual(before);
  });
});

describe('the cards of a part', () => {
  test('four new facts come where enough is known, shared out when two parts have new ones', () => {
    const facts = factsOf('bonds.to10');
    const memory = new Map(facts.slice(0, 50).map((fact) => [fact, known]));
    const [only = []] = cardsOf(evening(['bonds.to10'], { memory }));
    expect(only.filter((fact) => !memory.has(fact))).toHaveLength(4);

    const [bonds = []] = cardsOf(evening(['bonds.to10', 'doubles.to10'], { memory }));
    expect(bonds.filter((fact) => !memory.has(fact))).toHaveLength(2);
  });

  test('a part that has seen everything takes no share of the new facts', () => {
    const memory = new Map([
      ...factsOf('bonds.to10')
        .slice(0, 50)
        .map((fact) => [fact, known] as const),
      ...factsOf('bonds.make10').map((fact) => [fact, known] as const),
    ]);
    const [bonds = []] = cardsOf(evening(['bonds.to10', 'bonds.make10'], { memory }));
    expect(bonds.filter((fact) => !memory.has(fact))).toHaveLength(4);
  });

  test('missed facts leave less room for new ones', () => {
    const facts = factsOf('bonds.to10');
    const memory = new Map(
      facts.slice(0, 50).map((fact, at) => [fact, at < 4 ? missed : known] as const),
    );
    const [cards = []] = cardsOf(evening(['bonds.to10'], { memory }));
    expect(cards.filter((fact) => memory.get(fact) === missed)).toHaveLength(4);
    expect(cards.filter((fact) => !memory.has(fact))).toHaveLength(1);
  });

  test('of many missed facts the one missed longest ago comes first', () => {
    const facts = factsOf('bonds.to10');
    const older = { ...missed, lastDay: day('2026-09-01') };
    const memory = new Map(facts.map((fact, at) => [fact, at < 5 ? older : missed] as const));
    for (const seed of ['wren', 'otto', 'juniper']) {
      const [cards = []] = cardsOf(evening(['bonds.to10'], { memory, seed }));
      expect(cards.filter((fact) => memory.get(fact) === older)).toHaveLength(5);
    }
  });

  test('of known facts equally long unseen the shorter streak comes first', () => {
    const facts = factsOf('bonds.to10');
    const shaky = { ...known, streak: 1 };
    const memory = new Map(facts.map((fact, at) => [fact, at < 10 ? shaky : known] as const));
    const [cards = []] = cardsOf(evening(['bonds.to10'], { memory }));
    expect(cards.filter((fact) => memory.get(fact) === shaky)).toHaveLength(10);
  });

  test('a fact last seen on a later day counts as seen today, never as seen longer ago', () => {
    const facts = factsOf('bonds.to10');
    const today = { ...known, lastDay: day('2026-09-08') };
    const later = { ...known, lastDay: day('2026-09-09'), streak: 1 };
    const memory = new Map(facts.map((fact, at) => [fact, at < 10 ? later : today] as const));
    const [cards = []] = cardsOf(evening(['bonds.to10'], { memory }));
    expect(cards.filter((fact) => memory.get(fact) === later)).toHaveLength(10);
  });

  test('cards are shuffled: what was missed does not always stand first', () => {
    const facts = factsOf('bonds.to10');
    const memory = new Map(facts.map((fact, at) => [fact, at < 1 ? missed : known] as const));
    const places = ['wren', 'otto', 'juniper', 'sparrow', 'rowan', 'ash', 'fern', 'pip'].map(
      (seed) =>
        cardsOf(evening(['bonds.to10'], { memory, seed }))[0]?.findIndex(
          (fact) => memory.get(fact) === missed,
        ),
    );
    expect(new Set(places).size).toBeGreaterThan(3);
  });
});

describe('a counting run', () => {
  test('a run too long for its range is shortened, and starts where it must', () => {
    const plan = { parts: [{ rung: 'counting.tens100', cards: 20, seconds: 3 } as const] };
    const lastStarts = new Map<RungId, number>([['counting.tens100', 0]]);
    expect(composeEvening({ ...evening([]), plan, lastStarts }).parts).toEqual([
      {
        kind: 'run',
        strand: 'counting',
        rung: 'counting.tens100',
        seconds: 3,
        start: 0,
        step: 10,
        length: 11,
      },
    ]);
  });

  test('over many seeds a run starts at every place it can', () => {
    const starts = new Set<number>();
    for (let seed = 0; seed < 300; seed += 1) {
      for (const part of composeEvening(evening(['counting.onesback20'], { seed: `${seed}` }))
        .parts) {
        if (part.kind === 'run') starts.add(part.start);
      }
    }
    expect([...starts].sort((a, b) => a - b)).toEqual([
      9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20,
    ]);
  });
});

describe('an unusual plan', () => {
  test('a rung that does not exist is refused', () => {
    expect(() => composeEvening(evening(['bonds.to30']))).toThrow(RangeError);
  });

  test('a plan without parts gives a drill without parts', () => {
    expect(composeEvening(evening([])).parts).toEqual([]);
  });
});
