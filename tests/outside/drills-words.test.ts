import { toCardinal as germanWords } from 'n2words/de-DE';
import { toCardinal as britishWords } from 'n2words/en-GB';
import { toCardinal as americanWords } from 'n2words/en-US';
import { toCardinal as southAfricanWords } from 'n2words/en-ZA';
import { toCardinal as spanishWords } from 'n2words/es-ES';
import { toCardinal as frenchWords } from 'n2words/fr-FR';
import { describe, expect, test } from 'vitest';
import {
  type Language,
  numberWord,
  numberWordVariants,
  parseNumberWord,
} from '../../drills/index.ts';
import { publishedSpeller } from '../drills/support/number-rules.ts';

// Sources: the spell-out rules of the Unicode Consortium's CLDR 48 (npm cldr-rbnf 48.2.0) and npm n2words 4.0.0. Both are
// checked for every number from 0 to 1000; where they differ from ours, the numbers are listed with the reason.

const NUMBERS = Array.from({ length: 1001 }, (_, n) => n);

/** The numbers for which a speller and our usual spelling differ. */
function differing(language: Language, spell: (n: number) => string): number[] {
  return NUMBERS.filter((n) => spell(n) !== numberWord(n, language));
}

/** The numbers for which a speller writes what we do not accept as that number. */
function refused(language: Language, spell: (n: number) => string): number[] {
  return NUMBERS.filter((n) => !numberWordVariants(n, language).includes(spell(n)));
}

describe('number words against the rules of CLDR', () => {
  test.each<[Language, string, string]>([
    ['en', 'en', '%spellout-cardinal-verbose'],
    ['es', 'es', '%spellout-numbering'],
    ['de', 'de', '%spellout-numbering'],
  ])('%s agrees for every number from 0 to 1000', (language, locale, ruleSet) => {
    expect(differing(language, publishedSpeller(locale, ruleSet))).toEqual([]);
  });

  test('Afrikaans differs at 18 only, where CLDR writes agttien and schools agtien', () => {
    const published = publishedSpeller('af', '%spellout-numbering');
    expect(differing('af', published)).toEqual(NUMBERS.filter((n) => n % 100 === 18));
    expect(refused('af', published)).toEqual([]);
  });

  test('French differs from 101 on, where CLDR writes a space beside cent and the spelling of 1990 a hyphen', () => {
    const published = publishedSpeller('fr', '%spellout-numbering');
    expect(differing('fr', published)).toEqual(NUMBERS.filter((n) => n > 100 && n < 1000));
    expect(differing('fr', (n) => published(n).replaceAll(' ', '-'))).toEqual([]);
    expect(refused('fr', published)).toEqual([]);
  });

  test.each<[string, Language, string, string]>([
    ['American English', 'en', 'en', '%spellout-cardinal'],
    ['Swiss French', 'fr', 'fr-CH', '%spellout-numbering'],
  ])('%s counts as equal for every number', (_, language, locale, ruleSet) => {
    expect(refused(language, publishedSpeller(locale, ruleSet))).toEqual([]);
  });

  test('Belgian French counts as equal; from 81 to 89 the rules write a space for a hyphen, and it is still read', () => {
    const published = publishedSpeller('fr-BE', '%spellout-numbering');
    expect(published(82)).toBe('quatre-vingt deux');
    expect(refused('fr', published)).toEqual(NUMBERS.filter((n) => n % 100 > 80 && n % 100 < 90));
    expect(NUMBERS.filter((n) => parseNumberWord(published(n), 'fr') !== n)).toEqual([]);
  });

  test('Swiss German dreissig is read as thirty', () => {
    const published = publishedSpeller('de-CH', '%spellout-numbering');
    expect(published(31)).toBe('einunddreissig');
    expect(NUMBERS.filter((n) => parseNumberWord(published(n), 'de') !== n)).toEqual([]);
  });
});

describe('number words against n2words', () => {
  test.each<[string, Language, (n: number) => string]>([
    ['British English', 'en', britishWords],
    ['South African English', 'en', southAfricanWords],
    ['German', 'de', germanWords],
  ])('%s agrees for every number from 0 to 1000', (_, language, words) => {
    expect(differing(language, words)).toEqual([]);
  });

  test('American English counts as equal', () => {
    expect(refused('en', americanWords)).toEqual([]);
  });

  test('Spanish differs at 16 only, where the package leaves out the accent; it is still read', () => {
    const without = differing('es', (n) => spanishWords(n));
    expect(without).toEqual(NUMBERS.filter((n) => n % 100 === 16));
    expect(without.map((n) => parseNumberWord(spanishWords(n), 'es'))).toEqual(without);
  });

  test('French differs at et un, et onze and beside cent, where the package keeps the older spelling', () => {
    const joinedByEt = [21, 31, 41, 51, 61, 71];
    expect(differing('fr', frenchWords)).toEqual(
      NUMBERS.filter((n) => joinedByEt.includes(n) || (n > 100 && n < 1000)),
    );
    expect(refused('fr', frenchWords)).toEqual([]);
  });
});

describe('number words known by heart', () => {
  // Spot values from memory, as grammars of each language give them.
  test.each<[Language, number, string]>([
    ['de', 21, 'einundzwanzig'],
    ['de', 71, 'einundsiebzig'],
    ['fr', 71, 'soixante-et-onze'],
    ['fr', 80, 'quatre-vingts'],
    ['fr', 99, 'quatre-vingt-dix-neuf'],
    ['es', 16, 'dieciséis'],
    ['es', 22, 'veintidós'],
    ['es', 101, 'ciento uno'],
    ['af', 21, 'een-en-twintig'],
    ['af', 100, 'honderd'],
    ['af', 200, 'tweehonderd'],
  ])('%s %d is %s', (language, n, word) => {
    expect(numberWord(n, language)).toBe(word);
  });
});
