import { describe, expect, test } from 'vitest';
import { type Judged, proposeStep } from '../../../drills/digest/propose-step.ts';

type Counts = { secure?: number; between?: number; notYet?: number; tooFew?: number };

/** Children of these levels, numbered in this order. */
function judged({ secure = 0, between = 0, notYet = 0, tooFew = 0 }: Counts): Judged[] {
  const levels = [
    ...Array.from({ length: secure }, () => 'secure' as const),
    ...Array.from({ length: between }, () => 'in_between' as const),
    ...Array.from({ length: notYet }, () => 'not_yet' as const),
    ...Array.from({ length: tooFew }, () => 'too_few' as const),
  ];
  return levels.map((level, index) => ({
    childId: `child-${index + 1}`,
    number: index + 1,
    nickname: `Wren ${index + 1}`,
    level,
  }));
}

const kindOf = (counts: Counts, joined: number) =>
  proposeStep(judged(counts), joined).proposal.kind;

describe('moving up', () => {
  test('is as its docstring says', () => {
    const wren = { childId: 'a', number: 1, nickname: 'Wren', level: 'secure' } as const;
    expect(proposeStep([wren], 1).proposal).toEqual({ kind: 'move_up' });
  });

  test('is proposed when 8 in 10 are secure, and not below', () => {
    expect(kindOf({ secure: 8, between: 2 }, 10)).toBe('move_up');
    expect(kindOf({ secure: 7, between: 2 }, 9)).toBe('stay');
  });

  test('counts children with too few answers as not secure', () => {
    expect(kindOf({ secure: 7, tooFew: 3 }, 10)).toBe('stay');
  });

  test('needs marks of half of those who joined', () => {
    expect(kindOf({ secure: 5 }, 11)).toBe('too_little');
    expect(kindOf({ secure: 6 }, 11)).toBe('move_up');
  });

  test('never goes by two children in a class of three or more', () => {
    expect(kindOf({ secure: 2 }, 4)).toBe('too_little');
    expect(kindOf({ secure: 2 }, 3)).toBe('too_little');
    expect(kindOf({ secure: 3 }, 4)).toBe('move_up');
  });

  test('goes by all of them in a class of one or two', () => {
    expect(kindOf({ secure: 1 }, 1)).toBe('move_up');
    expect(kindOf({ secure: 1 }, 2)).toBe('too_little');
    expect(kindOf({ secure: 2 }, 2)).toBe('move_up');
  });

  test('is never proposed without marks', () => {
    expect(kindOf({}, 0)).toBe('too_little');
    expect(kindOf({}, 5)).toBe('too_little');
  });
});

describe('splitting', () => {
  test('names the smaller group by class list', () => {
    const children = judged({ secure: 5, notYet: 3 });
    expect(proposeStep(children.toReversed(), 8).proposal).toMatchObject({
      kind: 'split',
      smaller: 'not_yet',
      group: [{ number: 6 }, { number: 7 }, { number: 8 }],
    });
    expect(proposeStep(judged({ secure: 3, notYet: 5 }), 8).proposal).toMatchObject({
      kind: 'split',
      smaller: 'secure',
      group: [{ number: 1 }, { number: 2 }, { number: 3 }],
    });
  });

  test('names those who need more time when the groups are equal', () => {
    expect(proposeStep(judged({ secure: 3, notYet: 3 }), 6).proposal).toMatchObject({
      smaller: 'not_yet',
    });
  });

  test('needs three on either side; those in between belong to neither', () => {
    expect(kindOf({ secure: 2, notYet: 4 }, 6)).toBe('stay');
    expect(kindOf({ secure: 4, notYet: 2, between: 4 }, 10)).toBe('stay');
    expect(kindOf({ secure: 3, notYet: 3, between: 4 }, 10)).toBe('split');
  });

  test('comes before moving up when three are left behind', () => {
    expect(kindOf({ secure: 17, notYet: 3 }, 20)).toBe('split');
    expect(kindOf({ secure: 18, notYet: 2 }, 20)).toBe('move_up');
  });

  test('is not proposed while too few have marks', () => {
    expect(kindOf({ secure: 3, notYet: 3 }, 13)).toBe('too_little');
  });
});

describe('the numbers beside a proposal', () => {
  test('count every child with marks once', () => {
    const { children, secure, notYet, tooFew } = proposeStep(
      judged({ secure: 4, between: 3, notYet: 2, tooFew: 1 }),
      10,
    );
    expect({ children, secure, notYet, tooFew }).toEqual({
      children: 10,
      secure: 4,
      notYet: 2,
      tooFew: 1,
    });
  });

  test('give the range of the share secure, everything possible where nobody has marks', () => {
    const { share } = proposeStep(judged({ secure: 8, between: 2 }), 10);
    expect(share.lower).toBeGreaterThan(0.5);
    expect(share.lower).toBeLessThan(0.8);
    expect(share.upper).toBeGreaterThan(0.8);
    expect(proposeStep([], 0).share).toEqual({ lower: 0, upper: 1 });
  });
});
