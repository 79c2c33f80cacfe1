import { expect, it } from 'vitest';
import { maybeFullName } from '../../../bot/input/full-name.ts';

it('a nickname with a surname reads as the docstring says', () => {
  expect(maybeFullName('Otto Baker')).toBe(true);
  expect(maybeFullName('Otto B')).toBe(false);
});

it.each([
  ['Wren', false],
  ['Wren 12', false],
  ['Otto B.', false],
  ['Otto Ba', false],
  ['Baker, Otto', true],
  ['Little Owl', true],
  ['Åsa-Li Öberg', true],
  ['', false],
])('%j may hold a surname: %s', (nickname, maybe) => {
  expect(maybeFullName(nickname)).toBe(maybe);
});
