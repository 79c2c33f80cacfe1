import { describe, expect, test } from 'vitest';
import { createRandom } from '../../../drills/index.ts';
import { createActivationLearner } from './activation-learner.ts';
import type { Learner } from './learner.ts';
import { createPowerLearner } from './power-learner.ts';
import { drawFactEase, drawTraits } from './traits.ts';

const PLAIN = { ease: new Float64Array([0, 0, 1, 0]), metBefore: [[], [-10], [-10], [-30, -10]] };
const UNMET = 0;
const MET = 1;
const EASY = 2;
const MET_TWICE = 3;

describe('the activation learner', () => {
  test('one asking a day ago gives the activation that the published values give by hand', () => {
    // d = 0.177; a day counts as 86400 x 0.025 = 2160 s; the offset is 3 logits of 0.255 each.
    const learner = createActivationLearner(PLAIN);
    learner.ask(UNMET, 0);
    const activation = 3 * 0.255 - 0.177 * Math.log(2160);
    const chance = 1 / (1 + Math.exp((-0.704 - activation) / 0.255));
    expect(learner.chance(UNMET, 1)).toBeCloseTo(chance, 9);
    expect(chance).toBeCloseTo(0.606, 3);
  });

  test('a second asking decays faster the more is still remembered', () => {
    const gainAfter = (days: number) => {
      const learner = createActivationLearner(PLAIN);
      learner.ask(UNMET, 0);
      learner.ask(UNMET, days);
      return learner.chance(UNMET, days + 60);
    };
    expect(gainAfter(7)).toBeGreaterThan(gainAfter(0));
  });
});

describe('the power learner', () => {
  test('odds are the first odds times practice squared times a power of the days', () => {
    const learner = createPowerLearner(PLAIN);
    // Met once, ten days ago: 0.25 x 1 x ((1 + 10) / 2)^-0.6.
    const odds = 0.25 * 5.5 ** -0.6;
    expect(learner.chance(MET, 0)).toBeCloseTo(odds / (1 + odds), 9);
  });
});

describe.each([
  ['activation', createActivationLearner],
  ['power', createPowerLearner],
])('any learner: %s', (_, create) => {
  test('what was never met is not known', () => {
    expect(create(PLAIN).chance(UNMET, 0)).toBe(0);
  });

  test('ease and earlier meetings help, time does not', () => {
    const learner = create(PLAIN);
    expect(learner.chance(EASY, 0)).toBeGreaterThan(learner.chance(MET, 0));
    expect(learner.chance(MET_TWICE, 0)).toBeGreaterThan(learner.chance(MET, 0));
    expect(learner.chance(MET, 20)).toBeLessThan(learner.chance(MET, 0));
  });

  test('what an asking would do is what it does, and asking what it would do changes nothing', () => {
    const learner: Learner = create(PLAIN);
    learner.ask(MET, 0);
    const before = learner.chance(MET, 5);
    const foreseen = learner.chanceIfAsked(MET, 2, 5);
    expect(learner.chance(MET, 5)).toBe(before);
    learner.ask(MET, 2);
    expect(learner.chance(MET, 5)).toBeCloseTo(foreseen, 12);
    expect(foreseen).toBeGreaterThan(before);
  });
});

describe('the traits of children', () => {
  const facts = Array.from({ length: 400 }, (_, at) => ({
    family: `${at}`,
    difficulty: at % 2 === 0 ? 0 : 5,
  }));
  const ease = drawFactEase(facts, createRandom('facts'));
  const mean = (numbers: readonly number[]) =>
    numbers.reduce((sum, each) => sum + each, 0) / numbers.length;

  test('harder facts are harder and were met less often', () => {
    const { ease: own, metBefore } = drawTraits(facts, ease, createRandom('wren'));
    const of = (rest: number) => facts.flatMap((_, at) => (at % 2 === rest ? [at] : []));
    const easeOf = (rest: number) => mean(of(rest).map((at) => own[at] ?? 0));
    const metOf = (rest: number) => mean(of(rest).map((at) => metBefore[at]?.length ?? 0));
    expect(easeOf(0)).toBeGreaterThan(easeOf(1));
    expect(metOf(0)).toBeGreaterThan(metOf(1));
  });

  test('every meeting lies before the term, the oldest first', () => {
    const { metBefore } = drawTraits(facts, ease, createRandom('wren'));
    for (const days of metBefore) {
      expect(days.every((day) => day < 0)).toBe(true);
      expect(days).toEqual(days.toSorted((one, other) => one - other));
    }
  });

  test('the same seed gives the same child, another seed another', () => {
    const draw = (seed: string) => drawTraits(facts, ease, createRandom(seed));
    expect(draw('wren')).toEqual(draw('wren'));
    expect(draw('wren')).not.toEqual(draw('otter'));
  });
});
