import { describe, expect, it, test } from 'vitest';
import { readDate, readDayOnly } from '../../../bot/input/date-text.ts';
import { monthOf, weekdayOf } from '../../../bot/input/date-words.ts';
import { zonesNamed } from '../../../bot/input/zone-text.ts';
import { localeOf } from '../../../bot/language/index.ts';

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

describe('the words of a date', () => {
  test('are as the docstrings say', () => {
    expect(monthOf('Août')).toBe(8);
    expect(weekdayOf('mié')).toBe(3);
    expect(monthOf('Half')).toBeNull();
    expect(weekdayOf('term')).toBeNull();
  });

  // Against CLDR, by way of ICU: what a reader sees as a date can be typed back.
  test.each(['en', 'af', 'es', 'de', 'fr'] as const)(
    'in %s are all known, long and short',
    (tag) => {
      for (const style of ['long', 'short'] as const) {
        const month = new Intl.DateTimeFormat(localeOf(tag), {
          month: style,
          day: 'numeric',
          timeZone: 'UTC',
        });
        const weekday = new Intl.DateTimeFormat(localeOf(tag), { weekday: style, timeZone: 'UTC' });
        for (let at = 1; at <= 12; at += 1) {
          const parts = month.formatToParts(Date.UTC(2024, at - 1, 1));
          const word = parts.find(({ type }) => type === 'month')?.value.replace('.', '') ?? '';
          expect(monthOf(word), word).toBe(at);
          expect(readDate(`1 ${word} 2024`)?.date.month, word).toBe(at);
        }
        for (let at = 1; at <= 7; at += 1) {
          const word = weekday.format(Date.UTC(2024, 0, at)).replace('.', '');
          expect(weekdayOf(word), word).toBe(at);
        }
      }
    },
  );
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
