import { describe, expect, test } from 'vitest';
import {
  askedOf,
  checkPlan,
  composeEvening,
  estimateMinutes,
  maxCards,
  PLAN_LIMITS,
  type PlanPart,
  RUNGS,
  type RungId,
  rungById,
} from '../../../drills/index.ts';
import { day } from '../support/day.ts';

const part = (rung: RungId, cards = 5, seconds = 3): PlanPart => ({ rung, cards, seconds });

describe('checkPlan', () => {
  test('every rung with its own defaults makes a plan without problems', () => {
    for (const { id, cards, seconds } of RUNGS) {
      expect(checkPlan({ parts: [part(id, cards, seconds)] }), id).toEqual([]);
    }
  });

  test('six parts are enough and seven are too many', () => {
    const parts = RUNGS.slice(0, 7).map(({ id }) => part(id));
    expect(checkPlan({ parts: parts.slice(0, 6) })).toEqual([]);
    expect(checkPlan({ parts })).toEqual([
      { part: 0, kind: 'too_many_parts', value: '7', min: 1, max: 6 },
    ]);
  });

  test('a plan is never empty', () => {
    expect(checkPlan({ parts: [] })).toEqual([
      { part: 0, kind: 'empty', value: '0', min: 1, max: 6 },
    ]);
  });

  test('a rung that does not exist is named and nothing else is said about its part', () => {
    const unknown = part('bonds.to30', 0, 0);
    expect(checkPlan({ parts: [part('bonds.to10'), unknown] })).toEqual([
      { part: 1, kind: 'unknown_rung', value: 'bonds.to30', min: 0, max: 0 },
    ]);
  });

  test('a rung comes once in a plan; the second time is the problem', () => {
    expect(checkPlan({ parts: [part('bonds.to10'), part('bonds.to10')] })).toEqual([
      { part: 1, kind: 'same_rung_twice', value: 'bonds.to10', min: 0, max: 0 },
    ]);
  });

  test.each([[2], [21], [3.5], [Number.NaN]])('%d cards are refused', (cards) => {
    expect(checkPlan({ parts: [part('bonds.to10', cards)] })).toEqual([
      { part: 0, kind: 'cards', value: String(cards), min: 3, max: 20 },
    ]);
  });

  test('a small set allows no more cards than it has facts', () => {
    expect(checkPlan({ parts: [part('doubles.to5', 6)] })).toEqual([
      { part: 0, kind: 'cards', value: '6', min: 3, max: 5 },
    ]);
  });

  test('a counting range allows no more numbers than its longest run has', () => {
    expect(checkPlan({ parts: [part('counting.tens100', 11)] })).toEqual([]);
    expect(checkPlan({ parts: [part('counting.tens100', 12)] })).toEqual([
      { part: 0, kind: 'cards', value: '12', min: 3, max: 11 },
    ]);
  });

  test.each([[1], [16], [2.5]])('%d seconds are refused', (seconds) => {
    expect(checkPlan({ parts: [part('bonds.to10', 10, seconds)] })).toEqual([
      { part: 0, kind: 'seconds', value: String(seconds), min: 2, max: 15 },
    ]);
  });

  test('the limits themselves are allowed', () => {
    const { cards, seconds } = PLAN_LIMITS;
    expect(checkPlan({ parts: [part('bonds.to10', cards.min, seconds.min)] })).toEqual([]);
    expect(checkPlan({ parts: [part('bonds.to10', cards.max, seconds.max)] })).toEqual([]);
  });
});

describe('maxCards', () => {
  test.each<[RungId, number]>([
    ['bonds.to10', 20],
    ['bonds.make10', 11],
    ['doubles.to5', 5],
    ['clock.mixed', 20],
    ['counting.tens', 20],
    ['counting.tens100', 11],
    ['counting.tensoffback100', 10],
  ])('%s allows %d', (id, max) => {
    const rung = rungById(id);
    expect(rung === null ? null : maxCards(rung)).toBe(max);
  });

  test('an evening asks for as many cards as any rung allows, and not for one fewer', () => {
    const today = day('2026-09-21');
    for (const rung of RUNGS) {
      const plan = { parts: [part(rung.id, maxCards(rung))] };
      const nothing = { memory: new Map(), lastStarts: new Map() };
      const { parts } = composeEvening({ plan, ...nothing, today, seed: 'wren' });
      expect(parts.map(askedOf), rung.id).toEqual([maxCards(rung)]);
    }
  });
});

describe('estimateMinutes', () => {
  test('ten cards at three seconds and their marking take one minute', () => {
    expect(estimateMinutes({ parts: [part('bonds.to10', 10, 3)] })).toBe(1);
  });

  test('a minute begun is a minute', () => {
    expect(estimateMinutes({ parts: [part('bonds.to10', 11, 3)] })).toBe(2);
  });

  test('parts add up before rounding', () => {
    const parts = [part('bonds.to10', 20, 3), part('clock.half', 12, 5), part('doubles.to5')];
    expect(estimateMinutes({ parts })).toBe(4);
  });

  test('an evening never takes less than a minute', () => {
    expect(estimateMinutes({ parts: [] })).toBe(1);
  });
});
