import { expect, it } from 'vitest';
import { withinBounds } from '../../rehearsal/bot-api/entity-bounds.ts';

const bold = (offset: number, length: number) => [{ type: 'bold', offset, length }];

it('entities within the text stand, counted in UTF-16 units', () => {
  expect(withinBounds('🐦 Wren', bold(3, 4))).toEqual(bold(3, 4));
  expect(withinBounds('🐦', bold(0, 2))).toEqual(bold(0, 2));
});

it('entities of nothing, and those after the text, are left out', () => {
  expect(withinBounds('Wren', [...bold(1, 0), ...bold(4, 2)])).toEqual([]);
});

it('entities of a kind that is not published are left out', () => {
  const wild = ['wild', 'constructor'].map((type) => ({ type, offset: 0, length: 4 }));
  expect(withinBounds('Wren', [...wild, ...bold(0, 4)])).toEqual(bold(0, 4));
});

it.each([
  [
    bold(3, 4),
    'Bad Request: entity beginning at UTF-16 offset 3 ends after the end of the text at UTF-16 offset 6',
  ],
  [
    bold(0, 1),
    'Bad Request: entity beginning at UTF-16 offset 0 ends in a middle of a UTF-16 symbol',
  ],
  [
    bold(1, 2),
    'Bad Request: entity beginning at UTF-16 offset 1 starts in a middle of a UTF-16 symbol',
  ],
  [bold(-1, 2), 'Bad Request: entity has incorrect bounds at -1'],
])('%j is refused', (entities, words) => {
  expect(() => withinBounds('🐦 Ada', entities)).toThrow(words);
});
