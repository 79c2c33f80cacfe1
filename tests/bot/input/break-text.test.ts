import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseBreak } from '../../../bot/input/break-text.ts';
import { day } from '../../support/term.ts';

const TODAY = day('2026-09-14');
const halfTerm = { first: '2026-10-12', last: '2026-10-16' };
const on = (date: string) => ({ first: date, last: date });

describe('a break in one line', () => {
  test.each([
    ['2026-10-12 to 2026-10-16 Half term', halfTerm, 'Half term'],
    ['2026-10-12–2026-10-16: Half  term', halfTerm, 'Half term'],
    ['12 Oct to 16 Oct Half term', halfTerm, 'Half term'],
    ['12-16 October', halfTerm, 'Break'],
    ['12th of October until 16th October, Half term', halfTerm, 'Half term'],
    ['Mon 12 to Fri 16 October', halfTerm, 'Break'],
    ['Oct 12-16 Half term', halfTerm, 'Half term'],
    ['October 12, 2026 to October 16, 2026 rest', halfTerm, 'rest'],
    ['Oct 12-16, 2026 Half term', halfTerm, 'Half term'],
    ['Oct 12-16 2027: Half term', { first: '2027-10-12', last: '2027-10-16' }, 'Half term'],
    ['12.10.2026-16.10.2026', halfTerm, 'Break'],
    ['12.–16.10. Half term', halfTerm, 'Half term'],
    ['Half term: 12 Oct to 16 Oct', halfTerm, 'Half term'],
    ['Half term 12 - 16 October', halfTerm, 'Half term'],
    ['24.12. - 3.1. Winter', { first: '2026-12-24', last: '2027-01-03' }, 'Winter'],
    ['Fri 18 Sep', on('2026-09-18'), 'Break'],
    ['4 September: sports day', on('2027-09-04'), 'sports day'],
    ['Founders’ day on 16 December', on('2026-12-16'), 'Founders’ day'],
    ['2026-12-16 Tomorrow is free', on('2026-12-16'), 'Tomorrow is free'],
    ['25/12', on('2026-12-25'), 'Break'],
    ['12/25 Fair', on('2026-12-25'), 'Fair'],
    ['4/4', on('2027-04-04'), 'Break'],
  ])('%j reads as %j', (text, span, title) => {
    expect(parseBreak(text, TODAY)).toEqual({ break: span, title });
  });

  test.each([
    ['14 Sep', on('2026-09-14')],
    ['13 Sep', on('2027-09-13')],
    ['10 Sep to 20 Sep', { first: '2026-09-10', last: '2026-09-20' }],
    ['29 Feb', on('2028-02-29')],
    ['24 Dec to 3 Jan 2027', { first: '2026-12-24', last: '2027-01-03' }],
    ['24 Dec 2026 to 3 Jan', { first: '2026-12-24', last: '2027-01-03' }],
  ])('%j without a year is the next such day, or the range that is running', (text, span) => {
    expect(parseBreak(text, TODAY)).toMatchObject({ break: span });
  });
});

describe('a line that is no break', () => {
  test.each([['3/4'], ['3/4 Fair'], ['3/4/2026'], ['1/2 to 3/2']])(
    '%j could be two days and is refused',
    (text) => {
      expect(parseBreak(text, TODAY)).toMatchObject({ problem: 'slash' });
    },
  );

  test.each([
    [''],
    ['Half term'],
    ['may holiday'],
    ['1 to 5'],
    ['5 - 9 April 2027 12 - 16 April 2027'],
    ['2026-10-12x'],
    ['2026-10-12 to'],
    ['2026-10-12 to Friday'],
    ['5 Nov 10 Nov'],
  ])('%j never passes for a break', (text) => {
    expect(parseBreak(text, TODAY)).toEqual({ problem: 'shape', value: text });
  });

  test.each([
    ['30 Feb', 'date', '30 Feb'],
    ['2026-10-12 to 2026-10-32', 'date', '32 Oct 2026'],
    ['99.99.', 'date', '99.99.'],
    ['16 Oct to 12 Oct', 'order', '12 Oct'],
    ['2026-10-16 to 2026-10-12 Half term', 'order', '12 Oct 2026'],
    ['2026-01-01 to 2026-05-01', 'long', '121'],
    ['Mon 13 Oct', 'weekday', '2026-10-13'],
  ])('%j names what is wrong', (text, problem, value) => {
    expect(parseBreak(text, TODAY)).toEqual({ problem, value });
  });

  test('120 days are a break', () => {
    expect(parseBreak('2026-01-01 to 2026-04-30', TODAY)).toMatchObject({ title: 'Break' });
  });

  test('never ends before it begins, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), (text) => {
        const parsed = parseBreak(text, TODAY);
        expect('problem' in parsed || parsed.break.first <= parsed.break.last).toBe(true);
      }),
    );
  });
});
