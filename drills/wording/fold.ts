import type { Language } from './language.ts';

/** Longer than any number word or clock phrase; what is longer is not read at all. */
const LONGEST = 100;

/**
 * A typed or dictated text as the key it is looked up by. Spelling is not what a drill asks, so these never matter:
 * capitals, accents, apostrophes, spaces and hyphens inside or between words, soft hyphens and other unseen characters, a
 * stop or mark at the end; in German ss for ß and ae, oe, ue for ä, ö, ü; in French the plural s of vingt, cent and heure.
 * A sign before a word stays ("-five" is not five), and a misspelling is not guessed at. Null for a text over 100
 * characters long.
 *
 * @example
 * fold('  Vingt et un. ', 'fr'); // 'vingtetun'
 */
export function fold(text: string, language: Language): string | null {
  if (text.length > LONGEST) return null;
  const key = text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[\p{M}\p{Cf}'\u2018\u2019\u02bc`]/gu, '')
    .trim()
    .replace(/[\s.!?]+$/u, '')
    .replace(/(?<=\p{L})\s*[-\u2010-\u2015]\s*(?=\p{L})/gu, '')
    .replace(/\s+/gu, '');
  return FORGIVEN[language](key);
}

const FORGIVEN: Readonly<Record<Language, (key: string) => string>> = {
  en: (key) => key,
  af: (key) => key,
  es: (key) => key,
  // No German number or clock word has these pairs of letters in its own right.
  de: (key) => key.replaceAll('ß', 'ss').replace(/([aou])e/g, '$1'),
  // The s of six, sept, seize and soixante is their own.
  fr: (key) => key.replace(/(vingt|cent|heure)s(?!ix|ept|eize|oix)/g, '$1'),
};
