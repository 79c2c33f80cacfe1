/**
 * The languages a class's cards can be worded in, each with its own name for itself. The drill's language is the class's
 * language of instruction, whatever language a helper's buttons are in.
 *
 * @example
 * LANGUAGES.de; // 'Deutsch'
 */
export const LANGUAGES = {
  en: 'English',
  af: 'Afrikaans',
  es: 'Español',
  de: 'Deutsch',
  fr: 'Français',
} as const;

/** The tag of a language, as BCP 47 writes it. Stored with a class, so its spelling never changes. */
export type Language = keyof typeof LANGUAGES;

/**
 * Whether a text is the tag of one of our languages, in small letters.
 *
 * @example
 * isLanguage('nl'); // false
 */
export function isLanguage(text: string): text is Language {
  return Object.hasOwn(LANGUAGES, text);
}
