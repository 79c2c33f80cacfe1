import { describe, expect, test } from 'vitest';
import { clockPhrase, handAngles, type Language, parseClockPhrase } from '../../drills/index.ts';

// Source: the clock-angle formula found in many public sources, hour = 30 (h mod 12) + m / 2, minute = 6 m, in degrees
// clockwise from 12, the angle between the hands the smaller of d and 360 - d. The values were worked out by hand.

const HAND_TABLE = [
  { hour: 3, minute: 0, hourHand: 90, minuteHand: 0, between: 90 },
  { hour: 3, minute: 15, hourHand: 97.5, minuteHand: 90, between: 7.5 },
  { hour: 3, minute: 30, hourHand: 105, minuteHand: 180, between: 75 },
  { hour: 3, minute: 45, hourHand: 112.5, minuteHand: 270, between: 157.5 },
  { hour: 12, minute: 0, hourHand: 0, minuteHand: 0, between: 0 },
  { hour: 10, minute: 30, hourHand: 315, minuteHand: 180, between: 135 },
  { hour: 6, minute: 30, hourHand: 195, minuteHand: 180, between: 15 },
  { hour: 12, minute: 50, hourHand: 25, minuteHand: 300, between: 85 },
  { hour: 9, minute: 55, hourHand: 297.5, minuteHand: 330, between: 32.5 },
  { hour: 11, minute: 55, hourHand: 357.5, minuteHand: 330, between: 27.5 },
  { hour: 1, minute: 5, hourHand: 32.5, minuteHand: 30, between: 2.5 },
  { hour: 2, minute: 10, hourHand: 65, minuteHand: 60, between: 5 },
];

describe('hand angles', () => {
  test.each(HAND_TABLE)('at $hour:$minute the hands stand at $hourHand and $minuteHand', (row) => {
    const hands = handAngles(row.hour, row.minute);
    expect(hands).toEqual({ hour: row.hourHand, minute: row.minuteHand });
    const apart = Math.abs(hands.hour - hands.minute);
    expect(Math.min(apart, 360 - apart)).toBe(row.between);
  });

  // Source: the hands of a twelve-hour clock meet 11 times in 12 hours, 12/11 hours apart (a classic puzzle).
  test('the minute hand passes the hour hand eleven times in a turn of the dial', () => {
    const lead = Array.from({ length: 721 }, (_, at) => {
      const { hour, minute } = handAngles(Math.floor(at / 60) % 12 || 12, at % 60);
      return (minute - hour + 360) % 360;
    });
    const meetings = lead.filter((degrees, at) => at > 0 && degrees < (lead[at - 1] ?? 0));
    expect(meetings).toHaveLength(11);
  });
});

// No open standard lists how clock times are said: CLDR has time formats and day periods, no spoken phrases (from memory). So
// single values are checked, each group with its source. English: general usage, in any dictionary under "clock". Afrikaans: a
// public grammar page on telling the time, which states half X = (X - 1):30 with the example half ses = 5:30.
describe('clock phrases with a source', () => {
  test.each<[Language, number, number, string]>([
    ['en', 3, 15, 'quarter past three'],
    ['en', 3, 30, 'half past three'],
    ['en', 3, 45, 'quarter to four'],
    ['af', 3, 15, 'kwart oor drie'],
    ['af', 3, 30, 'halfvier'],
    ['af', 3, 45, 'kwart voor vier'],
    ['af', 5, 30, 'halfses'],
  ])('%s %d:%d is %s', (language, hour, minute, phrase) => {
    expect(clockPhrase(hour, minute, language)).toBe(phrase);
    expect(parseClockPhrase(phrase, language)).toEqual({ hour, minute });
  });

  // The rule above at the turn of the dial. At least one public phrase page has it wrong by an hour.
  test.each<[Language, number, string]>([
    ['af', 12, 'half een'],
    ['af', 11, 'half twaalf'],
    ['af', 5, 'half ses'],
    ['de', 12, 'halb eins'],
    ['de', 11, 'halb zwölf'],
  ])('in %s the half hour after %d is %s: half of the next hour', (language, hour, phrase) => {
    expect(parseClockPhrase(phrase, language)).toEqual({ hour, minute: 30 });
  });
});

describe('clock phrases from memory', () => {
  test.each<[Language, number, number, string]>([
    ['en', 3, 30, 'half three'],
    ['de', 3, 15, 'Viertel nach drei'],
    ['de', 3, 15, 'viertel vier'],
    ['de', 3, 25, 'fünf vor halb vier'],
    ['de', 3, 30, 'halb vier'],
    ['de', 3, 35, 'fünf nach halb vier'],
    ['de', 3, 45, 'Viertel vor vier'],
    ['de', 3, 45, 'drei viertel vier'],
    ['es', 1, 0, 'la una'],
    ['es', 3, 15, 'las tres y cuarto'],
    ['es', 3, 30, 'las tres y media'],
    ['es', 3, 45, 'las cuatro menos cuarto'],
    ['fr', 3, 15, 'trois heures et quart'],
    ['fr', 3, 30, 'trois heures et demie'],
    ['fr', 3, 45, 'quatre heures moins le quart'],
    ['fr', 12, 0, 'midi'],
  ])('%s %d:%d is read from %s', (language, hour, minute, phrase) => {
    expect(parseClockPhrase(phrase, language)).toEqual({ hour, minute });
  });

  test('only German and Afrikaans name the next hour at the half', () => {
    const halves = (['en', 'af', 'es', 'de', 'fr'] as const).map((language) =>
      clockPhrase(3, 30, language),
    );
    expect(halves).toEqual([
      'half past three',
      'halfvier',
      'las tres y media',
      'halb vier',
      'trois heures et demie',
    ]);
  });
});
