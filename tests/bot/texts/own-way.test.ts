import { describe, expect, test } from 'vitest';
import { adjustedLine } from '../../../bot/texts/adjusted.ts';
import { ownWay, ownWayLine } from '../../../bot/texts/own-way.ts';
import { PLAN_LIMITS, UNADJUSTED, type WeekPlan } from '../../../drills/index.ts';
import { listed } from '../support/kingfisher.ts';

const ALL = { steps: -1, fewer: true, untimed: true } as const;
const SIX: WeekPlan = {
  parts: [
    'halves.to20',
    'doubles.to20',
    'clock.half',
    'counting.fives',
    'words.to20',
    'times.twos',
  ].map((rung) => ({ rung: rung as 'halves.to20', cards: 10, seconds: 3 })),
};

describe('what a family reads of an adjusted evening', () => {
  test('is kind and names no reason', () => {
    expect(adjustedLine({ steps: -1, fewer: true, untimed: false }, 'Wren')).toBe(
      'Picked for Wren: a little shorter today.',
    );
    expect(adjustedLine({ ...UNADJUSTED, steps: 1 }, 'Wren')).toBe('Picked for Wren.');
    expect(adjustedLine({ ...UNADJUSTED, untimed: true }, 'Wren')).toBe(
      'No timing: as long as it takes.',
    );
  });

  test('is nothing where nothing differs', () => {
    expect(adjustedLine(undefined, 'Wren')).toBeNull();
    expect(adjustedLine(UNADJUSTED, 'Wren')).toBeNull();
  });

  test('easier and harder read the same', () => {
    const lines = ([-1, 1] as const).map((steps) => adjustedLine({ ...ALL, steps }, 'Wren'));
    expect(lines[0]).toBe(lines[1]);
  });
});

describe('what a teacher reads', () => {
  test('has fewer than ten lines for the longest plan with everything changed', () => {
    expect(SIX.parts).toHaveLength(PLAN_LIMITS.parts.max);
    const { text } = ownWay({ ...listed(1, 'Wren'), adjustment: ALL }, SIX);
    expect(text.split('\n').length).toBeLessThan(10);
    expect(text).toContain('1. halves of even numbers to 10, 5 cards, instead of halves of even');
    expect(text).toContain('5. number words to 20, 6 cards (no easier step here)');
  });

  test('names the plan as it is while nothing is changed, and says when there is none', () => {
    const child = { ...listed(1, 'Wren'), adjustment: UNADJUSTED };
    expect(ownWay(child, SIX).text).not.toContain('instead');
    expect(ownWay(child, null).text).toContain('No week plan is in use yet');
  });

  test('on the child’s page is one line, or none', () => {
    expect(ownWayLine(ALL)).toBe('For this child only: easier steps, fewer cards, no timing');
    expect(ownWayLine(UNADJUSTED)).toBeNull();
  });
});
