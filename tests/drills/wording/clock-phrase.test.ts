import { describe, expect, test } from 'vitest';
import {
  answerOf,
  type ClockTime,
  clock,
  clockPhrase,
  clockPhraseVariants,
  type Language,
  parseClockPhrase,
} from '../../../drills/index.ts';
import { EVERY_LANGUAGE } from './every-language.ts';

const TIMES: readonly ClockTime[] = Array.from({ length: 144 }, (_, index) => ({
  hour: Math.floor(index / 12) + 1,
  minute: (index % 12) * 5,
}));

describe('clockPhrase', () => {
  test.each<[number, number, string]>([
    [3, 0, 'three o\u2019clock'],
    [3, 5, 'five past three'],
    [3, 10, 'ten past three'],
    [3, 15, 'quarter past three'],
    [3, 20, 'twenty past three'],
    [3, 25, 'twenty-five past three'],
    [3, 30, 'half past three'],
    [3, 35, 'twenty-five to four'],
    [3, 40, 'twenty to four'],
    [3, 45, 'quarter to four'],
    [3, 50, 'ten to four'],
    [3, 55, 'five to four'],
    [12, 0, 'twelve o\u2019clock'],
    [12, 30, 'half past twelve'],
    [12, 45, 'quarter to one'],
    [11, 55, 'five to twelve'],
  ])('%d:%d is said %s where no language is named', (hour, minute, phrase) => {
    expect(clockPhrase(hour, minute)).toBe(phrase);
  });

  test('a clock card between two five-minute marks has no answer in words', () => {
    expect(() => answerOf(clock(3, 7))).toThrow(RangeError);
  });

  test('the examples hold', () => {
    expect(clockPhrase(3, 30, 'de')).toBe('halb vier');
    expect(clockPhraseVariants(3, 30, 'af')).toEqual(['halfvier', 'half vier', 'drie-uur dertig']);
    expect(parseClockPhrase('Fünf vor halb vier', 'de')).toEqual({ hour: 3, minute: 25 });
  });
});

describe.each(EVERY_LANGUAGE)('a dial in %s', (language) => {
  test('every way to say each of the 144 five-minute times is read as that time, so none names two', () => {
    for (const { hour, minute } of TIMES) {
      const variants = clockPhraseVariants(hour, minute, language);
      expect(variants[0]).toBe(clockPhrase(hour, minute, language));
      expect(new Set(variants).size).toBe(variants.length);
      for (const phrase of variants) {
        expect([phrase, parseClockPhrase(phrase, language)]).toEqual([phrase, { hour, minute }]);
      }
    }
  });

  test('no two times are said alike', () => {
    const usual = TIMES.map(({ hour, minute }) => clockPhrase(hour, minute, language));
    expect(new Set(usual).size).toBe(144);
  });

  test.each([
    [3, 7],
    [3, 60],
    [3, -5],
    [0, 30],
    [13, 0],
    [2.5, 0],
    [3, Number.NaN],
  ])('hour %d and minute %d have no phrase', (hour, minute) => {
    expect(() => clockPhrase(hour, minute, language)).toThrow(RangeError);
  });

  test.each(['', '3', '3:30', 'x', '99 99'])('%j is no phrase', (text) => {
    expect(parseClockPhrase(text, language)).toBeNull();
  });
});

describe('what counts as equal', () => {
  test.each<[Language, string, number, number]>([
    ['en', 'half three', 3, 30],
    ['en', 'Half past 3.', 3, 30],
    ['en', 'It\u2019s a quarter to 4', 3, 45],
    ['en', "3 o'clock", 3, 0],
    ['en', '3 oclock', 3, 0],
    ['en', '3 o clock', 3, 0],
    ['en', 'noon', 12, 0],
    ['en', '20 past 12', 12, 20],
    ['af', 'half vier', 3, 30],
    ['af', 'Half 4', 3, 30],
    ['af', 'Dit is vyf voor halfvier', 3, 25],
    ['af', 'drie uur', 3, 0],
    ['af', '25 oor 3', 3, 25],
    ['es', 'Son las 3 y media', 3, 30],
    ['es', 'es la 1', 1, 0],
    ['es', 'la 1 menos cuarto', 12, 45],
    ['es', 'un cuarto para las cuatro', 3, 45],
    ['de', 'fünfundzwanzig nach drei', 3, 25],
    ['de', 'viertel vier', 3, 15],
    ['de', 'drei viertel vier', 3, 45],
    ['de', 'Es ist 1 Uhr', 1, 0],
    ['de', 'halb 1', 12, 30],
    ['de', 'zehn vor halb vier', 3, 20],
    ['fr', 'midi', 12, 0],
    ['fr', 'minuit et demi', 12, 30],
    ['fr', 'Il est 3 heures et quart', 3, 15],
    ['fr', '1 heure moins le quart', 12, 45],
    ['fr', 'trois heure et demi', 3, 30],
  ])('%s %j is %d:%d', (language, text, hour, minute) => {
    expect(parseClockPhrase(text, language)).toEqual({ hour, minute });
  });

  test.each<[Language, string]>([
    ['en', 'three'],
    ['en', 'fifteen thirty'],
    ['en', 'half past thirteen'],
    ['en', 'seven past three'],
    ['af', 'halfdertien'],
    ['de', 'drei'],
    ['de', 'half past three'],
    ['es', 'tres'],
    ['fr', 'trois'],
  ])('%s %j is no time of a dial', (language, text) => {
    expect(parseClockPhrase(text, language)).toBeNull();
  });
});
