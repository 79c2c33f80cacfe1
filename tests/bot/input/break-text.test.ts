import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseBreak } from '../../../bot/input/break-text.ts';
import { readIn } from '../../../bot/language/index.ts';
import { askBreak } from '../../../bot/texts/breaks.ts';
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

describe('a break in any of our languages, whatever the reader’s is', () => {
  test.each([
    ['12. bis 16. Oktober Herbstferien', halfTerm, 'Herbstferien'],
    ['vom 12. Okt. bis zum 16. Okt. Herbstferien', halfTerm, 'Herbstferien'],
    ['Herbstferien vom 12.10. bis 16.10.', halfTerm, 'Herbstferien'],
    ['Montag, den 12. Oktober 2026: Sporttag', on('2026-10-12'), 'Sporttag'],
    ['24. Dez. bis 3. Jän. frei', { first: '2026-12-24', last: '2027-01-03' }, 'frei'],
    ['Di., 13. Okt.', on('2026-10-13'), 'Break'],
    ['12 tot 16 Oktober Herfsvakansie', halfTerm, 'Herfsvakansie'],
    ['12 Okt. tot en met 16 Okt. Vakansie', halfTerm, 'Vakansie'],
    ['Ma 12 Oktober', on('2026-10-12'), 'Break'],
    ['1ste Mrt', on('2027-03-01'), 'Break'],
    ['del 12 al 16 de octubre de 2026: otoño', halfTerm, 'otoño'],
    ['12 oct a 16 oct Descanso', halfTerm, 'Descanso'],
    ['Descanso del lun 12 al vie 16 de oct.', halfTerm, 'Descanso'],
    ['mar 13 al vie 16 oct', { first: '2026-10-13', last: '2026-10-16' }, 'Break'],
    ['miércoles 14 de octubre', on('2026-10-14'), 'Break'],
    ['1.º de mayo', on('2027-05-01'), 'Break'],
    ['du lun 12 au ven 16 oct. Vacances d’automne', halfTerm, 'Vacances d’automne'],
    ['Vacances du 12 au 16 octobre', halfTerm, 'Vacances'],
    ['12 oct jusqu’au 16 oct', halfTerm, 'Break'],
    ['1er mai : fête', on('2027-05-01'), 'fête'],
    ['15 aout', on('2027-08-15'), 'Break'],
    ['15 AOÛT', on('2027-08-15'), 'Break'],
    ['Mar 12-16', { first: '2027-03-12', last: '2027-03-16' }, 'Break'],
    ['4 Sep a fair', on('2027-09-04'), 'a fair'],
    ['4 Sep a 5 km run', on('2027-09-04'), 'a 5 km run'],
  ])('%j reads as %j', (text, span, title) => {
    expect(parseBreak(text, TODAY)).toEqual({ break: span, title });
  });

  test('"mar" before a day and another weekday is no March: its weekday has to fit', () => {
    const value = '2027-06-12';
    expect(parseBreak('Mar 12 to Fri 16 June', TODAY)).toEqual({ problem: 'weekday', value });
  });

  test.each(['en', 'af', 'es', 'de', 'fr'] as const)(
    'the examples in the question can be sent in %s',
    (language) => {
      const examples = readIn(language, askBreak)
        .split('\n')
        .map((line) => line.split(/: /).at(-1) ?? '');
      const [range, day] = examples.map((example) => parseBreak(example, TODAY));
      expect(range).toMatchObject({ break: halfTerm });
      expect(day).toMatchObject({ break: on('2027-09-04') });
    },
  );

  test.each([
    ['af', 'Vakansie', '30 Feb'],
    ['es', 'Descanso', '30 feb'],
    ['de', 'Freie Tage', '30. Feb'],
    ['fr', 'Congé', '30 févr'],
  ] as const)(
    'in %s one without a name is called %j, and a date is said back as %j',
    (language, title, date) => {
      readIn(language, () => {
        expect(parseBreak('12 Oct', TODAY)).toMatchObject({ title });
        expect(parseBreak('30 Feb', TODAY)).toEqual({ problem: 'date', value: date });
      });
    },
  );
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
