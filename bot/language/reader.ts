import { AsyncLocalStorage } from 'node:async_hooks';
import type { Language } from '../../drills/index.ts';

const reader = new AsyncLocalStorage<Language>();

/**
 * Does work for a person who reads this language: every text made meanwhile, however deep and however many awaits later, is in
 * it. Whoever turns to a person (a tap, a typed message, a delivery, a copy in another chat, a printed page) calls it once, so
 * that no text, screen or picture between has to carry a language along.
 *
 * @example
 * readIn('de', () => say('buttons-done')); // 'Fertig'
 */
export function readIn<T>(language: Language, work: () => T): T {
  return reader.run(language, work);
}

/**
 * The language of whoever reads what is being made. English where nobody was named: scripts, and what only the operator sees.
 *
 * @example
 * readerLanguage(); // 'en'
 */
export function readerLanguage(): Language {
  return reader.getStore() ?? 'en';
}
