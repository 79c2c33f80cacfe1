import { expect, test } from 'vitest';
import { shareSecure } from '../../../drills/digest/share-secure.ts';
import { wilson } from '../../../drills/index.ts';

test('levels are counted one a child, those in between only in the sum', () => {
  expect(shareSecure(['secure', 'not_yet', 'in_between', 'too_few', 'secure'])).toEqual({
    children: 5,
    secure: 2,
    notYet: 1,
    tooFew: 1,
    share: wilson(2, 5, 1.281552),
  });
  expect(shareSecure(['secure', 'not_yet']).secure).toBe(1);
});

test('of nobody every share is plausible', () => {
  expect(shareSecure([]).share).toEqual({ lower: 0, upper: 1 });
});
