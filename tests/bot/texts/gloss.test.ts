import { describe, expect, it } from 'vitest';
import { readIn } from '../../../bot/language/index.ts';
import { meaningLine, meaningOf, withMeaning } from '../../../bot/texts/gloss.ts';
import { bonds, clocks, fives } from '../support/evening.ts';

const doubles = { ...bonds, strand: 'doubles', rung: 'doubles.to5', cards: ['double:7'] } as const;

describe('what a card’s words mean', () => {
  it('stands beside them where the helper reads another language than the class', () => {
    expect(meaningOf('double:7', 'de')).toBe('double 7');
    expect(withMeaning('halb vier', 'clock:0330', 'de')).toBe('halb vier (half past three)');
    expect(readIn('es', () => meaningOf('word:17', 'en'))).toBe('diecisiete');
  });

  it('is left out where both are the same, and for sums, which have no words', () => {
    expect(meaningOf('double:7', 'en')).toBeNull();
    expect(meaningOf('add:3+4', 'de')).toBeNull();
    expect(withMeaning('half past three', 'clock:0330', 'en')).toBe('half past three');
  });
});

describe('a part’s example', () => {
  it('is its first card that needs one, quoted as the reader’s language quotes', () => {
    expect(meaningLine(doubles, 'de')).toBe('“verdopple 7” means “double 7”.');
    expect(readIn('de', () => meaningLine(doubles, 'en'))).toBe('„double 7“ heißt „verdopple 7“.');
  });

  it('is missing for sums, for clocks before their answers are shown, and for counting', () => {
    for (const part of [bonds, clocks, fives]) expect(meaningLine(part, 'de')).toBeNull();
  });
});
