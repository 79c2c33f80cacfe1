import { describe, expect, test } from 'vitest';
import {
  COMPOSER_VERSION,
  composeEvening,
  MEMORY_MODEL,
  type MemoryModel,
  rebuildEvening,
} from '../../../drills/index.ts';
import { anEvening, cardsOf, factsOf } from '../support/an-evening.ts';
import { expectedUnknown, newOnes } from '../support/check-evenings.ts';
import { day } from '../support/day.ts';
import { allAskedOn } from '../support/memories.ts';

describe('composeEvening', () => {
  test('a drill never changes for the same input, or old evenings could not be rebuilt', () => {
    expect(composeEvening(anEvening(['doubles.to5', 'counting.fives']))).toEqual({
      version: 2,
      parts: [
        {
          kind: 'facts',
          strand: 'doubles',
          rung: 'doubles.to5',
          seconds: 3,
          cards: ['double:3', 'double:1', 'double:2', 'double:4', 'double:5'],
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
    expect(COMPOSER_VERSION).toBe(2);
    expect(composeEvening(anEvening(['bonds.to10'])).version).toBe(COMPOSER_VERSION);
  });

  test('two children on one plan get the same sizes and not the same cards', () => {
    const [wren = []] = cardsOf(composeEvening(anEvening(['bonds.to10'], { seed: 'wren' })));
    const [otter = []] = cardsOf(composeEvening(anEvening(['bonds.to10'], { seed: 'otter' })));
    expect(wren).toHaveLength(10);
    expect(otter).toHaveLength(10);
    expect(wren).not.toEqual(otter);
  });

  test('a change to a later part leaves an earlier part as it was', () => {
    const [before] = cardsOf(composeEvening(anEvening(['doubles.to10', 'halves.to10'])));
    const [after] = cardsOf(composeEvening(anEvening(['doubles.to10', 'clock.half'])));
    expect(after).toEqual(before);
  });

  test('input is left as it was', () => {
    const memory = allAskedOn(factsOf('bonds.to10'), [day('2026-09-07')]);
    const input = anEvening(['bonds.to10', 'counting.fives'], { memory });
    const before = structuredClone(input);
    for (const variant of ['full', 'short', 'catch_up'] as const) {
      composeEvening({ ...input, variant });
    }
    expect(input).toEqual(before);
  });

  test('the model that is given is the one that is asked', () => {
    const asked: string[] = [];
    const listening: MemoryModel = {
      ...MEMORY_MODEL,
      recall: (state, on) => {
        asked.push('recall');
        return MEMORY_MODEL.recall(state, on);
      },
    };
    const memory = allAskedOn(factsOf('bonds.to10'), [day('2026-09-07')]);
    composeEvening(anEvening(['bonds.to10'], { memory, variant: 'catch_up' }), listening);
    expect(asked).not.toEqual([]);
  });
});

describe('new facts', () => {
  const monday = day('2026-09-07');
  const newIn = (input: ReturnType<typeof anEvening>) =>
    cardsOf(composeEvening(input)).map((cards) => newOnes(cards, input));
  const countNew = (input: ReturnType<typeof anEvening>) =>
    newIn(input).map(({ length }) => length);

  test('they are shared out when two parts have new ones', () => {
    const asked = allAskedOn(
      [...factsOf('bonds.to10').slice(0, 50), ...factsOf('takeaway.to10').slice(0, 50)],
      [monday],
    );
    // One in five missed last: it does not go well, so new facts are few.
    const memory = new Map(
      [...asked].map(([fact, known], at) => [fact, { ...known, lastRight: at % 5 !== 0 }] as const),
    );
    const input = anEvening(['bonds.to10', 'takeaway.to10'], { memory });
    const [bonds = [], takeaway = []] = newIn(input);
    expect(expectedUnknown(bonds, input)).toBeLessThanOrEqual(2);
    expect(expectedUnknown(takeaway, input)).toBeLessThanOrEqual(2);
  });

  test('a part that has seen everything takes no share of them', () => {
    const facts = factsOf('bonds.to10').slice(0, 50);
    const alone = allAskedOn(facts, [monday]);
    const memory = allAskedOn([...facts, ...factsOf('bonds.make10')], [monday]);
    const [beside] = countNew(anEvening(['bonds.to10', 'bonds.make10'], { memory }));
    expect(beside).toBe(countNew(anEvening(['bonds.to10'], { memory: alone }))[0]);
  });
});

describe('an unusual plan', () => {
  test('a rung that does not exist is refused', () => {
    expect(() => composeEvening(anEvening(['bonds.to30']))).toThrow('no such rung: bonds.to30');
  });

  test('a plan without parts gives a drill without parts', () => {
    expect(composeEvening(anEvening([]))).toEqual({ version: 2, parts: [] });
  });
});

describe('rebuildEvening', () => {
  test('a drill is rebuilt from what it was made from, its variant included', () => {
    const input = anEvening(['bonds.to10', 'counting.fives']);
    for (const variant of ['full', 'short', 'catch_up'] as const) {
      const drill = composeEvening({ ...input, variant });
      expect(rebuildEvening(drill, input)).toEqual(drill);
    }
  });

  test('a drill done once more is rebuilt with the drill before it', () => {
    const input = anEvening(['bonds.to10', 'counting.fives']);
    const before = composeEvening(input);
    const drill = composeEvening({ ...input, variant: 'again', before });
    expect(rebuildEvening(drill, { ...input, before })).toEqual(drill);
  });

  test.each([[0], [1], [3]])('a drill of version %d is refused by its number', (version) => {
    expect(() => rebuildEvening({ version }, anEvening(['bonds.to10']))).toThrow(
      `cannot rebuild a drill of version ${version}`,
    );
  });
});
