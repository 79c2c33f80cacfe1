import { isLanguage, LANGUAGES, type Language } from '../../../drills/index.ts';

export const EVERY_LANGUAGE: readonly Language[] = Object.keys(LANGUAGES).filter(isLanguage);
