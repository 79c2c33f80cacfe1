import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  LAST_NUMBER_WORD,
  type Language,
  numberWord,
  numberWordVariants,
  parseNumberWord,
} from '../../../drills/index.ts';
import { afrikaansNumber } from '../../../drills/wording/numbers/af.ts';
import { germanNumber } from '../../../drills/wording/numbers/de.ts';
import { englishNumber } from '../../../drills/wording/numbers/en.ts';
import { spanishNumber } from '../../../drills/wording/numbers/es.ts';
import { frenchNumber } from '../../../drills/wording/numbers/fr.ts';
import { EVERY_LANGUAGE } from './every-language.ts';

const NUMBERS = Array.from({ length: LAST_NUMBER_WORD + 1 }, (_, n) => n);

describe.each(EVERY_LANGUAGE)('number words in %s', (language) => {
  test('every variant of every number is read as that number, so none names two', () => {
    const misread = NUMBERS.flatMap((n) =>
      numberWordVariants(n, language).filter((word) => parseNumberWord(word, language) !== n),
    );
    expect(misread).toEqual([]);
  });

  test('no variant is listed twice, and the usual word comes first', () => {
    for (const n of NUMBERS) {
      const variants = numberWordVariants(n, language);
      expect(new Set(variants).size).toBe(variants.length);
      expect(numberWord(n, language)).toBe(variants[0]);
    }
  });

  test('a word is read whatever its capitals, accents, hyphens, spaces and soft hyphens', () => {
    fc.assert(
      fc.property(fc.constantFrom(...NUMBERS), (n) => {
        const word = numberWord(n, language);
        const slips = [
          ` ${word.toUpperCase()} `,
          word.normalize('NFD').replace(/\p{M}/gu, ''),
          word.replaceAll('-', ' '),
          word.replaceAll('-', '\u2011'),
          word.replaceAll(' ', '-'),
          word.replace(/(?<=^...)/, '\u00ad'),
          `${word}.`,
        ];
        expect(slips.map((slip) => parseNumberWord(slip, language))).toEqual(slips.map(() => n));
      }),
    );
  });

  test.each([-1, 1001, 1.5, Number.NaN])('%d has no word', (n) => {
    expect(() => numberWord(n, language)).toThrow(/0 to 1000/);
    expect(() => numberWordVariants(n, language)).toThrow(RangeError);
  });

  test.each([
    '',
    ' ',
    '-',
    '7',
    'xyz',
    `${numberWord(5, language)}x`,
    `-${numberWord(5, language)}`,
  ])('%j is no number word', (text) => {
    expect(parseNumberWord(text, language)).toBeNull();
  });

  test('a text too long for a number word is not read', () => {
    const word = numberWord(5, language);
    expect(parseNumberWord(word.padEnd(100), language)).toBe(5);
    expect(parseNumberWord(word.padEnd(101), language)).toBeNull();
  });
});

describe('spellings that count as equal', () => {
  test.each<[Language, number, string]>([
    ['en', 101, 'one hundred one'],
    ['en', 120, 'a hundred and twenty'],
    ['en', 0, 'nought'],
    ['af', 18, 'agttien'],
    ['af', 21, 'een en twintig'],
    ['af', 105, 'honderd en vyf'],
    ['es', 16, 'dieciseis'],
    ['es', 32, 'treintaidós'],
    ['de', 100, 'hundert'],
    ['de', 5, 'fuenf'],
    ['de', 12, 'zwoelf'],
    ['de', 30, 'dreissig'],
    ['fr', 21, 'vingt et un'],
    ['fr', 80, 'quatre vingt'],
    ['fr', 92, 'nonante-deux'],
    ['fr', 200, 'deux cent'],
    ['fr', 206, 'deux cents six'],
  ])('%s %d may be %s', (language, n, text) => {
    expect(parseNumberWord(text, language)).toBe(n);
  });

  test.each<[Language, string]>([
    ['en', 'fourty'],
    ['en', 'one hundred and'],
    ['en', 'minus five'],
    ['de', 'fünf Uhr'],
    ['es', 'sietecientos'],
    ['fr', 'twenty'],
  ])('a %s text like %j is not guessed at', (language, text) => {
    expect(parseNumberWord(text, language)).toBeNull();
  });
});

test('the examples in the tables hold', () => {
  expect(numberWord(21, 'de')).toBe('einundzwanzig');
  expect(numberWordVariants(101, 'en').slice(0, 2)).toEqual([
    'one hundred and one',
    'one hundred one',
  ]);
  expect(parseNumberWord('Vingt et un', 'fr')).toBe(21);
  expect(englishNumber(101)).toEqual([
    'one hundred and one',
    'one hundred one',
    'a hundred and one',
    'a hundred one',
  ]);
  expect(afrikaansNumber(21)).toEqual(['een-en-twintig', 'een en twintig']);
  expect(spanishNumber(31)).toEqual(['treinta y uno', 'treintaiuno']);
  expect(germanNumber(101)).toEqual([
    'einhunderteins',
    'einhundertundeins',
    'hunderteins',
    'hundertundeins',
  ]);
  expect(frenchNumber(71)).toEqual([
    'soixante-et-onze',
    'soixante et onze',
    'septante-et-un',
    'septante et un',
  ]);
});
