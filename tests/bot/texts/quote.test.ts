import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quote, shorten } from '../../../bot/texts/quote.ts';

describe('what somebody typed, shown back', () => {
  it('is as the docstrings say', () => {
    expect(quote('half past six or so', 9)).toBe('“half past…”');
    expect(shorten('Half term and two days more', 9)).toBe('Half term…');
  });

  it('is whole when it is short, with its numbers, on one line', () => {
    expect(quote(' 5.\n pm ')).toBe('“5. pm”');
  });

  it('is never cut inside an emoji', () => {
    expect(quote('👨‍👩‍👧‍👦👨‍👩‍👧‍👦', 1)).toBe('“👨‍👩‍👧‍👦…”');
  });

  it('is kept apart when it runs from right to left', () => {
    expect(quote('מחר')).toBe('“\u2068מחר\u2069”');
  });

  it('never grows long and never holds half a character', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 5_000 }), fc.nat(80), (text, most) => {
        const shown = quote(text, most);
        expect(shown.length).toBeLessThanOrEqual(most * 16 + 5);
        expect(shown).not.toMatch(/\p{Surrogate}|\n/u);
      }),
    );
  });
});
