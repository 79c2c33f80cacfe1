import { describe, expect, test } from 'vitest';
import { clockPhrase } from '../../../drills/facts/clock-phrase.ts';
import { answerOf, clock } from '../../../drills/index.ts';

const FIVE_MINUTES = Array.from({ length: 12 }, (_, index) => index * 5);
const HOURS = Array.from({ length: 12 }, (_, index) => index + 1);

describe('clockPhrase', () => {
  test.each([
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
  ])('%d:%d is said %s', (hour, minute, phrase) => {
    expect(clockPhrase(hour, minute)).toBe(phrase);
  });

  test('no two of the 144 five-minute times are said alike', () => {
    const phrases = HOURS.flatMap((hour) =>
      FIVE_MINUTES.map((minute) => clockPhrase(hour, minute)),
    );
    expect(new Set(phrases).size).toBe(144);
  });

  test.each([
    [3, 7],
    [3, 60],
    [3, -5],
    [0, 30],
    [13, 0],
    [2.5, 0],
  ])('hour %d and minute %d have no phrase', (hour, minute) => {
    expect(() => clockPhrase(hour, minute)).toThrow(RangeError);
  });

  test('a clock card between two five-minute marks has no answer', () => {
    expect(() => answerOf(clock(3, 7))).toThrow(RangeError);
  });
});
