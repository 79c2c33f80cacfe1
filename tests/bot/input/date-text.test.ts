import { describe, expect, it, test } from 'vitest';
import { readDate, readDayOnly } from '../../../bot/input/date-text.ts';
import { zonesNamed } from '../../../bot/input/zone-text.ts';

describe('a written date', () => {
  it('is read off the beginning of a text, and what follows is kept', () => {
    expect(readDate('Fri 4 Sep: fair')).toEqual({
      date: { year: null, month: 9, day: 4, weekday: 5 },
      rest: ': fair',
      slashed: false,
    });
    expect(readDayOnly('Mon 12 to 16 October')).toEqual({
      day: 12,
      weekday: 1,
      rest: ' to 16 October',
    });
  });

  test.each(['fair on 4 Sep', 'Friday', '', 'Septembre', '12'])('%j begins with none', (text) => {
    expect(readDate(text)).toBeNull();
  });
});

describe('a time zone', () => {
  test.each([
    ['new york', ['America/New_York']],
    ['Kolkata', ['Asia/Kolkata']],
    ['europe/london', ['Europe/London']],
    ['Johannesburg', ['Africa/Johannesburg']],
  ])('%j means %j', (text, zones) => {
    expect(zonesNamed(text)).toEqual(zones);
  });

  test.each(['Mars', 'Mars/Base', '', '+02:00', '“London”', '../London'])(
    '%j means none',
    (text) => {
      expect(zonesNamed(text)).toEqual([]);
    },
  );
});
