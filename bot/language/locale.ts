import { isLanguage, type Language } from '../../drills/index.ts';

const LOCALES: Readonly<Record<Language, string>> = {
  // Dates as in Britain and South Africa: the day before the month.
  en: 'en-GB',
  af: 'af',
  es: 'es',
  de: 'de',
  fr: 'fr',
};

/**
 * The locale by which dates, lists and plurals of a language are written (BCP 47).
 *
 * @example
 * localeOf('en'); // 'en-GB'
 */
export function localeOf(language: Language): string {
  return LOCALES[language];
}

/**
 * One of ours for a language tag as a phone reports it, or null: the part before the first hyphen decides.
 *
 * @example
 * languageOfTag('pt-BR'); // null
 * languageOfTag('es-419'); // 'es'
 */
export function languageOfTag(tag: string | undefined): Language | null {
  const base = tag?.toLowerCase().split('-')[0] ?? '';
  return isLanguage(base) ? base : null;
}
