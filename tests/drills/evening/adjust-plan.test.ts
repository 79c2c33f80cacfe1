import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Adjustment,
  adjustPlan,
  checkPlan,
  composeEvening,
  fewerCards,
  isAdjusted,
  type PlanPart,
  rebuildEvening,
  rungById,
  UNADJUSTED,
  type WeekPlan,
} from '../../../drills/index.ts';
import { anEvening } from '../support/an-evening.ts';
import { anyEvening } from '../support/arbitrary-evening.ts';

const EASIER: Adjustment = { steps: -1, fewer: false, untimed: false };
const HARDER: Adjustment = { steps: 1, fewer: false, untimed: false };
const FEWER: Adjustment = { steps: 0, fewer: true, untimed: false };
const UNTIMED: Adjustment = { steps: 0, fewer: false, untimed: true };

const anyAdjustment: fc.Arbitrary<Adjustment> = fc.record({
  steps: fc.constantFrom(-1 as const, 0 as const, 1 as const),
  fewer: fc.boolean(),
  untimed: fc.boolean(),
});

function planOf(...parts: readonly PlanPart[]): WeekPlan {
  return { parts };
}

describe('adjustPlan', () => {
  test('easier and fewer together, as its documentation says', () => {
    const plan = planOf({ rung: 'halves.to20', cards: 8, seconds: 3 });
    expect(adjustPlan(plan, { steps: -1, fewer: true, untimed: false })).toEqual(
      planOf({ rung: 'halves.to10', cards: 5, seconds: 3 }),
    );
  });

  test('a part asks for no more cards than the easier step has', () => {
    const plan = planOf({ rung: 'doubles.to10', cards: 10, seconds: 4 });
    expect(adjustPlan(plan, EASIER)).toEqual(planOf({ rung: 'doubles.to5', cards: 5, seconds: 4 }));
  });

  test('a step without a neighbour stays, and the others move', () => {
    const plan = planOf(
      { rung: 'doubles.to20', cards: 10, seconds: 3 },
      { rung: 'halves.to10', cards: 5, seconds: 3 },
    );
    expect(adjustPlan(plan, HARDER).parts.map(({ rung }) => rung)).toEqual([
      'doubles.to20',
      'halves.to20',
    ]);
  });

  test('two steps that follow one another both move when the harder one can make room', () => {
    const plan = planOf(
      { rung: 'doubles.to5', cards: 5, seconds: 3 },
      { rung: 'doubles.to10', cards: 10, seconds: 3 },
    );
    expect(adjustPlan(plan, HARDER).parts.map(({ rung }) => rung)).toEqual([
      'doubles.to10',
      'doubles.to20',
    ]);
  });

  test('a step stays when its neighbour is in the plan and cannot make room', () => {
    const plan = planOf(
      { rung: 'doubles.to5', cards: 5, seconds: 3 },
      { rung: 'doubles.to10', cards: 10, seconds: 3 },
    );
    expect(adjustPlan(plan, EASIER)).toEqual(plan);
  });

  test('each step of a mixed part moves by itself', () => {
    const plan = planOf({ rung: 'doubles.to10', also: ['halves.to20'], cards: 12, seconds: 3 });
    expect(adjustPlan(plan, EASIER)).toEqual(
      planOf({ rung: 'doubles.to5', also: ['halves.to10'], cards: 10, seconds: 3 }),
    );
  });

  test('no timing leaves the plan alone, and so does no difference at all', () => {
    const plan = planOf({ rung: 'halves.to20', cards: 8, seconds: 3 });
    expect(adjustPlan(plan, UNTIMED)).toBe(plan);
    expect(adjustPlan(plan, UNADJUSTED)).toBe(plan);
  });

  test('a rung that does not exist stays for checkPlan to name', () => {
    const plan = planOf({ rung: 'halves.to999', cards: 8, seconds: 3 });
    expect(adjustPlan(plan, { steps: 1, fewer: true, untimed: false })).toEqual(
      planOf({ rung: 'halves.to999', cards: 5, seconds: 3 }),
    );
  });

  test('what could be sent before can be sent after', () => {
    fc.assert(
      fc.property(anyEvening, anyAdjustment, ({ plan }, adjustment) => {
        const sendable = planOf(...plan.parts.map(cutToSize));
        fc.pre(checkPlan(sendable).length === 0);
        expect(checkPlan(adjustPlan(sendable, adjustment))).toEqual([]);
      }),
    );
  });

  test('parts keep their number, strand, kind and pace, and never grow', () => {
    fc.assert(
      fc.property(anyEvening, anyAdjustment, ({ plan }, adjustment) => {
        const adjusted = adjustPlan(plan, adjustment);
        expect(adjusted.parts).toHaveLength(plan.parts.length);
        adjusted.parts.forEach((part, index) => {
          const before = plan.parts[index];
          expect(rungById(part.rung)?.strand).toBe(rungById(before?.rung ?? '')?.strand);
          expect(rungById(part.rung)?.kind).toBe(rungById(before?.rung ?? '')?.kind);
          expect(part.seconds).toBe(before?.seconds);
          expect(part.cards).toBeLessThanOrEqual(before?.cards ?? 0);
        });
      }),
    );
  });
});

function cutToSize(part: PlanPart): PlanPart {
  const rung = rungById(part.rung);
  const most = rung?.kind === 'facts' ? rung.facts.length : 10;
  return { ...part, cards: Math.min(part.cards, most) };
}

describe('fewer cards', () => {
  test.each([
    [20, 12],
    [10, 6],
    [8, 5],
    [5, 3],
    [4, 3],
    [3, 3],
  ])('of %i are %i', (cards, fewer) => {
    expect(fewerCards(cards)).toBe(fewer);
  });
});

describe('an adjusted drill', () => {
  test('says how it was adjusted; one that is not names nothing', () => {
    const input = anEvening(['bonds.to10']);
    expect(composeEvening({ ...input, adjustment: FEWER }).adjusted).toEqual(FEWER);
    expect(composeEvening({ ...input, adjustment: UNADJUSTED })).toEqual(composeEvening(input));
    expect(composeEvening(input)).not.toHaveProperty('adjusted');
  });

  test('has the cards of the adjusted plan', () => {
    const input = anEvening(['halves.to20']);
    const [part] = composeEvening({
      ...input,
      adjustment: { steps: -1, fewer: true, untimed: false },
    }).parts;
    expect(part).toMatchObject({ rung: 'halves.to10', strand: 'halves' });
    expect(part?.kind === 'facts' ? part.cards : []).toHaveLength(5);
  });

  test('untimed has the very cards of the timed one', () => {
    const input = anEvening(['bonds.to10', 'counting.fives']);
    expect(composeEvening({ ...input, adjustment: UNTIMED }).parts).toEqual(
      composeEvening(input).parts,
    );
  });

  test('is rebuilt from the class’s plan by what it says itself, whatever the child has by then', () => {
    fc.assert(
      fc.property(anyEvening, anyAdjustment, anyAdjustment, (input, then, since) => {
        const drill = composeEvening({ ...input, adjustment: then });
        expect(rebuildEvening(drill, { ...input, adjustment: since })).toEqual(drill);
      }),
      { numRuns: 40 },
    );
  });
});

test('an adjustment is one as soon as anything differs', () => {
  expect(isAdjusted(UNADJUSTED)).toBe(false);
  expect([EASIER, HARDER, FEWER, UNTIMED].map(isAdjusted)).toEqual([true, true, true, true]);
});
