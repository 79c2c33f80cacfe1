import { entry } from './entry.ts';
import { fold } from './fold.ts';
import type { Language } from './language.ts';
import { afrikaansNumber } from './numbers/af.ts';
import { germanNumber } from './numbers/de.ts';
import { englishNumber } from './numbers/en.ts';
import { spanishNumber } from './numbers/es.ts';
import { frenchNumber } from './numbers/fr.ts';

/** The largest number that has a word here. */
export const LAST_NUMBER_WORD = 1000;

const SPELLINGS: Readonly<Record<Language, (n: number) => readonly string[]>> = {
  en: englishNumber,
  af: afrikaansNumber,
  es: spanishNumber,
  de: germanNumber,
  fr: frenchNumber,
};

/**
 * A number in words, in the spelling usual in schools of that language (each language's file says which, and why).
 * Throws RangeError unless `n` is whole, 0 to 1000.
 *
 * @example
 * numberWord(21, 'de'); // 'einundzwanzig'
 */
export function numberWord(n: number, language: Language): string {
  return entry(numberWordVariants(n, language), 0);
}

/**
 * Every spelling of a number that counts as equal, the usual one first. Throws RangeError unless `n` is whole, 0 to 1000.
 *
 * @example
 * numberWordVariants(101, 'en').slice(0, 2); // ['one hundred and one', 'one hundred one']
 */
export function numberWordVariants(n: number, language: Language): readonly string[] {
  if (!Number.isInteger(n) || n < 0 || n > LAST_NUMBER_WORD) {
    throw new RangeError(
      `${n} has no number word: whole numbers from 0 to ${LAST_NUMBER_WORD} have`,
    );
  }
  return SPELLINGS[language](n);
}

/**
 * The number a text names in words, 0 to 1000; null for anything else, digits included. {@link fold} says which slips of
 * spelling are forgiven.
 *
 * @example
 * parseNumberWord('Vingt et un', 'fr'); // 21
 */
export function parseNumberWord(text: string, language: Language): number | null {
  const key = fold(text, language);
  return key === null ? null : (numbersOf(language).get(key) ?? null);
}

const byLanguage = new Map<Language, ReadonlyMap<string, number>>();

function numbersOf(language: Language): ReadonlyMap<string, number> {
  const known = byLanguage.get(language);
  if (known) return known;
  const numbers = new Map<string, number>();
  for (let n = 0; n <= LAST_NUMBER_WORD; n++) {
    for (const word of SPELLINGS[language](n)) {
      const key = fold(word, language);
      if (key !== null) numbers.set(key, n);
    }
  }
  byLanguage.set(language, numbers);
  return numbers;
}
