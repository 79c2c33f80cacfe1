import { expect, test } from 'vitest';
import { readPauseDay } from '../../../bot/input/pause-text.ts';
import { addDays } from '../../../drills/index.ts';
import { day } from '../../drills/support/day.ts';

// A Friday.
const TODAY = day('2026-09-18');

test.each([
  ['12 October', '2026-10-12'],
  ['until 12 October', '2026-10-12'],
  ['Mon 12 Oct.', '2026-10-12'],
  ['October 12, 2026', '2026-10-12'],
  ['2026-10-12', '2026-10-12'],
  ['12.10.', '2026-10-12'],
  ['25/12', '2026-12-25'],
  ['19 Sep', '2026-09-19'],
  ['4 Jan', '2027-01-04'],
  ['bis 12. Oktober', '2026-10-12'],
  ['bis zum 12.10.', '2026-10-12'],
  ['tot 12 Oktober', '2026-10-12'],
  ['tot op 12 Okt.', '2026-10-12'],
  ['hasta el 12 de octubre', '2026-10-12'],
  ['jusqu’au 12 octobre', '2026-10-12'],
  ['on 12 October', '2026-10-12'],
  ['le 12 octobre', '2026-10-12'],
])('%j is the day it says, the next one when no year stands there', (text, expected) => {
  expect(readPauseDay(text, TODAY)).toEqual({ day: expected });
});

test.each([
  ['soon', { problem: 'shape', value: 'soon' }],
  ['', { problem: 'shape', value: '' }],
  ['12 to 16 October', { problem: 'shape', value: '12 to 16 October' }],
  ['12 October, or later', { problem: 'shape', value: '12 October, or later' }],
  ['3/4', { problem: 'slash', value: '3/4' }],
  ['31 April', { problem: 'date', value: '31 April' }],
  ['29 Feb 2027', { problem: 'date', value: '29 Feb 2027' }],
  ['Tue 12 October', { problem: 'weekday', day: '2026-10-12' }],
  ['2026-09-18', { problem: 'past', day: '2026-09-18' }],
  ['1 October 2025', { problem: 'past', day: '2025-10-01' }],
  ['18 Sep', { problem: 'far', day: '2027-09-18' }],
])('%j cannot end a pause', (text, expected) => {
  expect(readPauseDay(text, TODAY)).toEqual(expected);
});

test('a pause ends in 120 days at the latest', () => {
  expect(readPauseDay(addDays(TODAY, 120), TODAY)).toEqual({ day: '2027-01-16' });
  expect(readPauseDay(addDays(TODAY, 121), TODAY)).toMatchObject({ problem: 'far' });
});
