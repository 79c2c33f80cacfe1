import { describe, expect, test } from 'vitest';
import { parseDigitalTime } from '../../../drills/wording/digital-time.ts';

describe('a time in figures', () => {
  test.each([
    ['3:30', 3, 30],
    ['03:30', 3, 30],
    ['3.30', 3, 30],
    ['3h30', 3, 30],
    ['3 h 30', 3, 30],
    ['3:30 Uhr', 3, 30],
    ['3.30 uur', 3, 30],
    ['3 h', 3, 0],
    ['12:59', 12, 59],
    [' 1:00 ', 1, 0],
  ])('%j is %d:%d', (text, hour, minute) => {
    expect(parseDigitalTime(text)).toEqual({ hour, minute });
  });

  test.each([
    '15:30',
    '13:00',
    '0:30',
    '00:00',
    '3:60',
    '3:3',
    '3:300',
    '330',
    '3',
    '-3:30',
    '3::30',
    '',
  ])('%j is no time of a dial', (text) => {
    expect(parseDigitalTime(text)).toBeNull();
  });

  test('the example holds', () => {
    expect(parseDigitalTime('3h30')).toEqual({ hour: 3, minute: 30 });
  });
});
