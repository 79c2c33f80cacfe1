import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MEMORY_MODEL } from '../../../drills/index.ts';
import type { Evidence, MemoryModel, MemoryState } from '../../../drills/memory/model.ts';
import { MODELS } from '../../../drills/memory/models.ts';

/** Days of two school years, in any order: marks come late. */
const anyDay = fc.integer({ min: 20_000, max: 20_730 });
const anyEvidence: fc.Arbitrary<Evidence> = fc.record({
  day: anyDay,
  right: fc.boolean(),
  way: fc.constantFrom('card', 'unmissed', 'run'),
  share: fc.oneof(fc.constant(1), fc.double({ min: 0.01, max: 0.99, noNaN: true })),
});
const anyHistory = fc.record({
  difficulty: fc.nat(5),
  seen: fc.array(anyEvidence, { maxLength: 40 }),
});
type History = { readonly difficulty: number; readonly seen: readonly Evidence[] };

/** Rounding in the last digits is no rise. */
const HAIR = 1e-9;

const learned = (model: MemoryModel, { difficulty, seen }: History): MemoryState =>
  seen.reduce<MemoryState>((state, each) => model.learn(state, each), model.start(difficulty));

test('the default model is one of the list, and each is listed under its own name', () => {
  expect(MODELS.get(MEMORY_MODEL.name)).toBe(MEMORY_MODEL);
  for (const [name, model] of MODELS) expect(model.name).toBe(name);
});

describe.each([...MODELS.values()])('the model $name', (model) => {
  test('recall is a chance and worth is never negative, whatever was seen and when', () => {
    fc.assert(
      fc.property(anyHistory, anyDay, (history, day) => {
        const state = learned(model, history);
        expect(state.every(Number.isFinite)).toBe(true);
        const recall = model.recall(state, day);
        expect(recall).toBeGreaterThanOrEqual(0);
        expect(recall).toBeLessThanOrEqual(1);
        const worth = model.worth(state, day);
        expect(worth).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(worth)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  test('a right answer never lowers recall against a wrong one on the same day', () => {
    fc.assert(
      fc.property(anyHistory, anyEvidence, anyDay, (history, last, day) => {
        const state = learned(model, history);
        const ifRight = model.recall(model.learn(state, { ...last, right: true }), day);
        const ifWrong = model.recall(model.learn(state, { ...last, right: false }), day);
        expect(ifRight).toBeGreaterThanOrEqual(ifWrong - HAIR);
      }),
      { numRuns: 500 },
    );
  });

  test('the less a relative shares, the less it changes', () => {
    fc.assert(
      fc.property(anyHistory, anyEvidence, anyDay, (history, last, day) => {
        const state = learned(model, history);
        const lent = model.learn(state, { ...last, share: 1e-9 });
        expect(Math.abs(model.recall(lent, day) - model.recall(state, day))).toBeLessThan(1e-5);
      }),
      { numRuns: 500 },
    );
  });

  test('a state is the same after a journey through JSON', () => {
    fc.assert(
      fc.property(anyHistory, (history) => {
        const state = learned(model, history);
        expect(JSON.parse(JSON.stringify(state))).toEqual(state);
      }),
    );
  });

  test('recall never rises as days pass without practice', () => {
    fc.assert(
      fc.property(anyHistory, anyDay, fc.nat(400), (history, day, later) => {
        const state = learned(model, history);
        expect(model.recall(state, day + later)).toBeLessThanOrEqual(
          model.recall(state, day) + HAIR,
        );
      }),
      { numRuns: 500 },
    );
  });

  test('a state given away is never changed', () => {
    fc.assert(
      fc.property(anyHistory, anyEvidence, (history, last) => {
        const state = Object.freeze([...learned(model, history)]);
        expect(() => model.learn(state, last)).not.toThrow();
      }),
    );
  });

  test('a harder fact is never thought better known at the start', () => {
    const recalls = [0, 1, 2, 3, 4, 5].map((hard) => model.recall(model.start(hard), 20_000));
    expect(recalls).toEqual(recalls.toSorted((one, other) => other - one));
  });
});
