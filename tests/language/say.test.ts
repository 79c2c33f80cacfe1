import { setImmediate as turn } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { languageOfTag, localeOf, readerLanguage, readIn, say } from '../../bot/language/index.ts';

describe('a message', () => {
  it('is in the language of whoever reads it, and in English where nobody was named', () => {
    expect(say('buttons-done')).toBe('Done');
    expect(readIn('de', () => say('buttons-done'))).toBe('Fertig');
    expect(readerLanguage()).toBe('en');
  });

  it('keeps its reader over awaits, and two readers at once do not mix', async () => {
    const slowly = (language: 'es' | 'fr') =>
      readIn(language, async () => {
        await turn();
        return readerLanguage();
      });
    expect(await Promise.all([slowly('es'), slowly('fr')])).toEqual(['es', 'fr']);
  });

  it('chooses the plural by the language: nought is one in French, and many in English', () => {
    expect(say('words-minutes', { count: 1 })).toBe('1 minute');
    expect(say('words-minutes', { count: 0 })).toBe('0 minutes');
    expect(readIn('fr', () => say('words-minutes', { count: 0 }))).toBe('0 minute');
  });

  it('writes a number without points or blanks between thousands', () => {
    for (const language of ['en', 'de', 'fr'] as const) {
      expect(readIn(language, () => say('words-minutes', { count: 2000 }))).toMatch(/^2000 /);
    }
  });
});

describe('a language', () => {
  it('is found by the tag a phone reports, and only if it is one of ours', () => {
    expect(languageOfTag('es-419')).toBe('es');
    expect(languageOfTag('DE')).toBe('de');
    expect(languageOfTag('pt-BR')).toBeNull();
    expect(languageOfTag('constructor')).toBeNull();
    expect(languageOfTag(undefined)).toBeNull();
  });

  it('writes dates by its locale', () => {
    expect(localeOf('en')).toBe('en-GB');
  });
});
