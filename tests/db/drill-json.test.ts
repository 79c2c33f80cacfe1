import { describe, expect, it } from 'vitest';
import { storedDrill } from '../../db/evenings/drill-json.ts';
import { composeEvening, type Drill, VARIANTS } from '../../drills/index.ts';
import { forAnyEvening } from '../drills/support/check-evenings.ts';

const stored = (drill: unknown) => storedDrill(JSON.parse(JSON.stringify(drill)));

const fives: Drill = {
  version: 1,
  parts: [
    {
      kind: 'run',
      strand: 'counting',
      rung: 'counting.fives',
      seconds: 3,
      start: 35,
      step: 5,
      length: 4,
    },
  ],
};

describe('a stored drill', () => {
  it('reads back exactly as it was composed, in every variant', () => {
    let turn = 0;
    forAnyEvening((input) => {
      turn += 1;
      const before = composeEvening(input);
      const variant = VARIANTS[turn % VARIANTS.length] ?? 'full';
      const drill = composeEvening({ ...input, variant, before });
      expect(stored(drill)).toEqual(drill);
    });
  });

  it('of an earlier version is read too, and is full', () => {
    expect(stored(fives)).toEqual(fives);
    expect(stored(fives)).not.toHaveProperty('variant');
  });

  it.each([
    ['an unknown variant', { ...fives, variant: 'longer' }],
    ['no version', { parts: fives.parts }],
    ['a version of nought', { ...fives, version: 0 }],
    ['an unknown rung', { version: 2, parts: [{ ...fives.parts[0], rung: 'counting.elevens' }] }],
    [
      'an unknown fact',
      {
        version: 2,
        parts: [
          {
            kind: 'facts',
            strand: 'bonds',
            rung: 'bonds.to10',
            seconds: 3,
            cards: ['add:3plus4'],
          },
        ],
      },
    ],
  ])('with %s is refused', (_, json) => {
    expect(() => stored(json)).toThrow();
  });
});
