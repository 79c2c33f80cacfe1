import { describe, expect, test } from 'vitest';
import {
  answerOf,
  CARD_WORDS,
  type FactId,
  faceOf,
  isLanguage,
  LANGUAGES,
  type Language,
  questionOf,
  RUNGS,
} from '../../../drills/index.ts';

describe('faceOf', () => {
  test.each<[FactId, string]>([
    ['add:3+4', '3 + 4'],
    ['gap:7+10', '7 + ? = 10'],
    ['sub:9-4', '9 \u2212 4'],
    ['double:7', 'double 7'],
    ['half:14', 'half of 14'],
    ['lead:7+10', '? + 7 = 10'],
    ['less:10-7', '10 \u2212 ? = 7'],
    ['from:3-7', '? \u2212 3 = 7'],
    ['times:3x5', '3 \u00d7 5'],
    ['word:114', 'one hundred and fourteen'],
    ['next:95+5', 'after 95 in fives'],
    ['next:95+1', 'after 95'],
    ['next:100-1', 'before 100'],
    ['next:100-10', 'before 100 in tens'],
    ['next:14+7', 'after 14 in steps of 7'],
  ])('%s shows as %j', (fact, text) => {
    expect(faceOf(fact)).toEqual({ kind: 'text', text });
    expect(questionOf(fact)).toBe(text);
  });

  test('a clock shows hands, not words', () => {
    expect(faceOf('clock:0330')).toEqual({ kind: 'clock', hour: 3, minute: 30 });
  });

  test('a clock in words never gives its answer', () => {
    expect(questionOf('clock:0330')).toBe('a clock');
    const clocks = Object.keys(LANGUAGES)
      .filter(isLanguage)
      .map((language) => questionOf('clock:0330', language));
    expect(clocks).toEqual(['a clock', '\u2019n horlosie', 'un reloj', 'eine Uhr', 'une horloge']);
  });

  test.each<[Language, readonly string[]]>([
    ['af', ['veertien', 'dubbel 7', 'helfte van 14', 'n\u00e1 95 in stappe van 5', 'voor 100']],
    ['es', ['catorce', 'doble de 7', 'mitad de 14', 'después de 95 de 5 en 5', 'antes de 100']],
    ['de', ['vierzehn', 'verdopple 7', 'halbiere 14', 'nach 95 in 5er-Schritten', 'vor 100']],
    ['fr', ['quatorze', 'double de 7', 'moitié de 14', 'après 95 de 5 en 5', 'avant 100']],
  ])('in %s the words are of that language', (language, texts) => {
    const facts: FactId[] = ['word:14', 'double:7', 'half:14', 'next:95+5', 'next:100-1'];
    expect(facts.map((fact) => questionOf(fact, language))).toEqual(texts);
  });

  test('figures and signs are the same in every language', () => {
    const facts: FactId[] = [
      'add:3+4',
      'gap:7+10',
      'lead:7+10',
      'sub:9-4',
      'less:10-7',
      'times:3x5',
    ];
    for (const language of Object.keys(LANGUAGES).filter(isLanguage)) {
      expect(facts.map((fact) => faceOf(fact, language))).toEqual(
        facts.map((fact) => faceOf(fact)),
      );
    }
  });

  test('a number above 1000 has no word to show', () => {
    expect(() => faceOf('word:1001')).toThrow(RangeError);
  });

  test('the examples hold', () => {
    expect(CARD_WORDS.en.next(95, 5)).toBe('after 95 in fives');
    expect(answerOf('clock:0330', 'de')).toBe('halb vier');
  });

  test('a text that is no fact is refused', () => {
    expect(() => faceOf('half:7')).toThrow(RangeError);
    expect(() => answerOf('add:x')).toThrow(RangeError);
  });
});

describe('answerOf', () => {
  test.each<[FactId, string]>([
    ['add:3+4', '7'],
    ['add:0+0', '0'],
    ['gap:7+10', '3'],
    ['sub:9-4', '5'],
    ['double:7', '14'],
    ['half:14', '7'],
    ['clock:0330', 'half past three'],
    ['word:14', '14'],
    ['lead:7+10', '3'],
    ['less:10-7', '3'],
    ['from:3-7', '10'],
    ['next:95+5', '100'],
    ['next:100-1', '99'],
    ['times:3x5', '15'],
  ])('the answer to %s is %s', (fact, answer) => {
    expect(answerOf(fact)).toBe(answer);
  });

  test('every card of every rung has a face, and an answer in digits or, for a clock, in words', () => {
    const facts = RUNGS.flatMap((rung) => (rung.kind === 'facts' ? rung.facts : []));
    expect(facts.length).toBeGreaterThan(0);
    for (const fact of facts) {
      const digits = faceOf(fact).kind === 'text';
      expect(answerOf(fact)).toMatch(
        digits ? /^\d+$/ : /^[a-z-]+ (past|to) [a-z]+$|^[a-z]+ o\u2019clock$/,
      );
    }
  });
});
