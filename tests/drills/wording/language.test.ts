import { expect, test } from 'vitest';
import { isLanguage, LANGUAGES } from '../../../drills/index.ts';
import { entry } from '../../../drills/wording/entry.ts';
import { fold } from '../../../drills/wording/fold.ts';
import { EVERY_LANGUAGE } from './every-language.ts';

test('every language is named as it names itself', () => {
  expect(LANGUAGES.de).toBe('Deutsch');
  expect(EVERY_LANGUAGE).toEqual(['en', 'af', 'es', 'de', 'fr']);
});

test.each(['nl', 'EN', '', 'en-GB', 'toString', '__proto__'])('%j is none of the tags', (tag) => {
  expect(isLanguage(tag)).toBe(false);
});

// Source: the language names of CLDR in Node's own ICU.
test.each(EVERY_LANGUAGE)('the name of %s is the one its own speakers use', (language) => {
  const own = new Intl.DisplayNames([language], { type: 'language' }).of(language) ?? '';
  expect(own.toLowerCase()).toBe(LANGUAGES[language].toLowerCase());
});

test('a place outside a table is refused, not undefined', () => {
  expect(entry(['nought', 'one'], 1)).toBe('one');
  expect(() => entry(['nought'], 1)).toThrow(RangeError);
});

test('a text is folded to one key', () => {
  expect(fold('  Vingt et un. ', 'fr')).toBe('vingtetun');
  expect(fold('a'.repeat(101), 'fr')).toBeNull();
});
