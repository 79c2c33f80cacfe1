import { isLanguage, type Language } from '../../drills/index.ts';

/** A language as it is stored; anything else there is a fault of ours. */
export function storedLanguage(stored: string): Language {
  if (!isLanguage(stored)) throw new TypeError('stored language is none of ours');
  return stored;
}
