import { describe, expect, test } from 'vitest';
import { proposeStep } from '../../../drills/digest/propose-step.ts';
import { summariseWeek } from '../../../drills/index.ts';
import { child, practised, score, WEEK } from '../support/week.ts';

const tallies = (count: number, right: number, asked: number) =>
  Array.from({ length: count }, () => ({ right, asked }));

describe('proposeStep', () => {
  test('ten secure children of twelve move on', () => {
    expect(proposeStep([...tallies(10, 9, 10), ...tallies(2, 5, 10)], 12)).toEqual({
      children: 12,
      secure: 10,
      tooFew: 0,
      proposal: 'move_on',
    });
  });

  test('8 in 10 secure is enough and less is not', () => {
    expect(proposeStep([...tallies(8, 9, 10), ...tallies(2, 5, 10)], 10).proposal).toBe('move_on');
    expect(proposeStep([...tallies(7, 9, 10), ...tallies(2, 5, 10)], 9)).toEqual({
      children: 9,
      secure: 7,
      tooFew: 0,
      proposal: 'stay',
    });
  });

  test('9 in 10 right is secure and just under is not', () => {
    expect(proposeStep(tallies(3, 18, 20), 3).secure).toBe(3);
    expect(proposeStep(tallies(3, 17, 19), 3).secure).toBe(0);
  });

  test('eight asked are enough and seven are not, however good', () => {
    expect(proposeStep(tallies(3, 8, 8), 3).secure).toBe(3);
    expect(proposeStep(tallies(3, 7, 7), 3)).toEqual({
      children: 3,
      secure: 0,
      tooFew: 3,
      proposal: 'stay',
    });
  });

  test('half of those who joined must have marks', () => {
    expect(proposeStep(tallies(5, 10, 10), 11)).toEqual({
      children: 5,
      secure: 5,
      tooFew: 0,
      proposal: 'too_little',
    });
    expect(proposeStep(tallies(6, 10, 10), 11).proposal).toBe('move_on');
  });

  test('two children are never enough in a class of three or more', () => {
    expect(proposeStep(tallies(2, 10, 10), 4).proposal).toBe('too_little');
    expect(proposeStep(tallies(2, 10, 10), 3).proposal).toBe('too_little');
    expect(proposeStep(tallies(3, 10, 10), 4).proposal).toBe('move_on');
  });

  test('in a class of one or two, all of them are enough', () => {
    expect(proposeStep(tallies(1, 10, 10), 1)).toEqual({
      children: 1,
      secure: 1,
      tooFew: 0,
      proposal: 'move_on',
    });
    expect(proposeStep(tallies(1, 10, 10), 2).proposal).toBe('too_little');
    expect(proposeStep(tallies(2, 10, 10), 2).proposal).toBe('move_on');
  });

  test('nothing is proposed without marks', () => {
    expect(proposeStep([], 0).proposal).toBe('too_little');
  });
});

describe('strands of the week', () => {
  const children = [1, 2, 3].map((number) =>
    child(number, {
      evenings: [
        practised(0, { parts: [score('clock.half', 9, 10), score('bonds.to10', 5, 10)] }),
        practised(1, { parts: [score('bonds.make10', 10, 10)] }),
      ],
    }),
  );
  const { strands } = summariseWeek({ days: WEEK, children: [...children, child(4)] });

  test('only practised strands are there, in the order they are offered', () => {
    expect(strands.map(({ strand }) => strand)).toEqual(['bonds', 'clock']);
  });

  test('a strand adds up all its rungs over all children', () => {
    expect(strands[0]).toEqual({
      strand: 'bonds',
      rungs: ['bonds.to10', 'bonds.make10'],
      right: 45,
      asked: 60,
      children: 3,
      secure: 0,
      tooFew: 0,
      proposal: 'stay',
    });
  });

  test('a child without marks is no evidence, for or against', () => {
    expect(strands[1]).toMatchObject({ children: 3, secure: 3, proposal: 'move_on' });
  });
});
