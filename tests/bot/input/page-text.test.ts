import { describe, expect, it } from 'vitest';
import { parsePageText } from '../../../bot/input/page-text.ts';

const BOOK = { firstPage: 3, lastPage: 48, pagesADay: 2 };

describe('a page as typed', () => {
  it.each([
    ['14', 14],
    [' Page 14 ', 14],
    ['p. 14', 14],
    ['p14', 14],
    ['3', 3],
    ['48', 48],
    ['done', 49],
    ['Finished.', 49],
    ['bladsy 14', 14],
    ['pág. 14', 14],
    ['Seite 14', 14],
    ['klaar', 49],
    ['Listo.', 49],
    ['fertig', 49],
    ['terminé', 49],
  ])('is read: %j', (text, page) => {
    expect(parsePageText(text, BOOK)).toBe(page);
  });

  it.each(['', '2', '49', '0', '-5', '14.5', 'fourteen', '14 15', '14\n15', '99999', 'not done'])(
    'is nothing outside the book or in another shape: %j',
    (text) => {
      expect(parsePageText(text, BOOK)).toBeNull();
    },
  );
});
