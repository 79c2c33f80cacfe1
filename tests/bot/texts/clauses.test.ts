import { describe, expect, it } from 'vitest';
import { readIn } from '../../../bot/language/index.ts';
import { capital } from '../../../bot/texts/capital.ts';
import { clauses } from '../../../bot/texts/clauses.ts';

describe('things with commas of their own in one sentence', () => {
  it('stand apart by semicolons, and those left out are counted', () => {
    expect(clauses(['doubles to 5 + 5', 'clock (half past)'], 2)).toBe(
      'doubles to 5 + 5; clock (half past); and 2 more',
    );
    expect(clauses(['halves'])).toBe('halves');
    expect(clauses([])).toBe('');
  });

  it('have the narrow blank before a semicolon that French has', () => {
    expect(readIn('fr', () => clauses(['a', 'b'], 1))).toBe('a\u202f; b\u202f; et 1 de plus');
  });
});

it('words at the beginning of a line begin with a capital letter', () => {
  expect(capital('pages 1 to 48')).toBe('Pages 1 to 48');
  expect(capital('')).toBe('');
});
