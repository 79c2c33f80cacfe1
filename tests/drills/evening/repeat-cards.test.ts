import { describe, expect, test } from 'vitest';
import { repeatCards } from '../../../drills/evening/repeat-cards.ts';
import { createRandom } from '../../../drills/index.ts';

const seeds = Array.from({ length: 50 }, (_, seed) => createRandom(`${seed}`));

describe('repeatCards', () => {
  test('two cards change places', () => {
    for (const random of seeds) {
      expect(repeatCards(['double:1', 'double:2'], random)).toEqual(['double:2', 'double:1']);
    }
  });

  test('two twins change places, though they stay together', () => {
    for (const random of seeds) {
      expect(repeatCards(['add:3+4', 'add:4+3'], random)).toEqual(['add:4+3', 'add:3+4']);
    }
  });

  test('one card, and none, stay as they are', () => {
    for (const random of seeds) {
      expect(repeatCards(['double:1'], random)).toEqual(['double:1']);
      expect(repeatCards([], random)).toEqual([]);
    }
  });
});
