import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { minutesOf, parseTimeOfDay, timeOfDayFrom } from '../../../drills/index.ts';

describe('parseTimeOfDay', () => {
  test.each([
    ['17:30', '17:30'],
    ['7:05', '07:05'],
    ['17.30', '17:30'],
    ['17h30', '17:30'],
    ['5:30 pm', '17:30'],
    ['5.30pm', '17:30'],
    ['5pm', '17:00'],
    ['5 P.M.', '17:00'],
    ['  6:15 AM ', '06:15'],
    ['12am', '00:00'],
    ['12 pm', '12:00'],
    ['12:30 am', '00:30'],
    ['0:00', '00:00'],
    ['23:59', '23:59'],
  ])('%j reads as %s', (text, time) => {
    expect(parseTimeOfDay(text)).toBe(time);
  });

  test.each([
    ['25:99'],
    ['24:00'],
    ['13:00 pm'],
    ['0:30 pm'],
    ['5:60 pm'],
    [''],
    ['5'],
    ['1730'],
    ['17:3'],
    ['-1:30'],
    ['half past five'],
    ['17:30 tomorrow'],
  ])('%j is no time', (text) => {
    expect(parseTimeOfDay(text)).toBeNull();
  });
});

describe('minutes of a day', () => {
  test('half past five in the evening is minute 1050', () => {
    expect(timeOfDayFrom(1050)).toBe('17:30');
    expect(minutesOf(timeOfDayFrom(1050))).toBe(1050);
  });

  test('every minute of the day survives the way to text and back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1439 }), (minutes) => {
        const time = timeOfDayFrom(minutes);
        expect(minutesOf(time)).toBe(minutes);
        expect(parseTimeOfDay(time)).toBe(time);
      }),
    );
  });

  test.each([[-1], [1440], [0.5], [Number.NaN]])('%d is no minute of a day', (minutes) => {
    expect(() => timeOfDayFrom(minutes)).toThrow(RangeError);
  });
});
