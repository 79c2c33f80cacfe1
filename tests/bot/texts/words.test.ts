import { describe, expect, it } from 'vitest';
import { readIn } from '../../../bot/language/index.ts';
import {
  bold,
  dayAndMonth,
  dayName,
  dayRange,
  lines,
  listOf,
  name,
  pageRange,
  shortDate,
  weekdayName,
  weekdayRange,
} from '../../../bot/texts/words.ts';
import { storedDay } from '../../../db/index.ts';
import type { Weekday } from '../../../drills/index.ts';

describe('a name in a text', () => {
  it.each(['שרה', 'يوسف', 'ދިވެހި', 'ܣܘܪܝܝܐ', 'ߒߞߏ', '𞤀𞤣𞤤𞤢𞤥', 'Otto שרה', 'ﺱ', 'שׁ'])(
    'is kept apart from its neighbours when it runs from right to left: %s',
    (text) => {
      expect(name(text)).toBe(`\u2068${text}\u2069`);
    },
  );

  it.each(['Wren', 'Zoë', '小明', 'Дина', 'नमस्ते', '👩‍🚀', '3 Otters', '<b>Wren</b>', ''])(
    'is left as it is otherwise: %s',
    (text) => {
      expect(name(text)).toBe(text);
    },
  );
});

describe('words for numbers of things', () => {
  it('a list is said with commas and an and', () => {
    expect(listOf(['doubles', 'halves', 'clock'])).toBe('doubles, halves and clock');
    expect(listOf(['doubles', 'clock'])).toBe('doubles and clock');
    expect(listOf(['clock'])).toBe('clock');
    expect(listOf([])).toBe('');
  });

  it.each<[number, number, string]>([
    [14, 15, 'pages 14 and 15'],
    [14, 14, 'page 14'],
    [14, 16, 'pages 14 to 16'],
  ])('pages %d to %d are %s', (from, to, words) => {
    expect(pageRange(from, to)).toBe(words);
  });
});

describe('words for days', () => {
  it.each<[Weekday[], string]>([
    [[1, 2, 3, 4, 5], 'Mon to Fri'],
    [[1, 3], 'Mon and Wed'],
    [[1, 2], 'Mon and Tue'],
    [[4], 'Thu'],
    [[5, 1, 3], 'Mon, Wed and Fri'],
    [[3, 1, 2], 'Mon to Wed'],
    [[7, 6, 1], 'Mon, Sat and Sun'],
    [[1, 2, 3, 4, 5, 6, 7], 'Mon to Sun'],
    [[], ''],
  ])('weekdays %j are %s', (weekdays, words) => {
    expect(weekdayRange(weekdays)).toBe(words);
  });

  it('a day has its name', () => {
    const day = storedDay('2026-09-15');
    expect(dayName(day)).toBe('Tuesday');
    // Releases of Node differ in the comma and in the short name of September.
    expect(shortDate(day)).toMatch(/^Tue,? 15 Sept?$/);
    expect(dayRange(day, day)).toBe(shortDate(day));
    expect(dayRange(day, storedDay('2026-09-18'))).toMatch(/^Tue,? 15 Sept? to Fri,? 18 Sept?$/);
    expect(weekdayName(1, 'long')).toBe('Monday');
    expect(weekdayName(7, 'short')).toBe('Sun');
  });
});

describe('words for days and lists in the reader’s language', () => {
  const monday = storedDay('2026-09-14');
  const friday = storedDay('2026-09-18');

  // Weekdays, months and "and" as CLDR 45 has them, without the points behind what is shortened.
  it.each([
    ['af', 'Maandag', 'Ma 14 Sep tot Vr 18 Sep', 'Ma tot Vr', 'Ma en Wo', 'bladsye 14 en 15'],
    [
      'es',
      'lunes',
      'del lun 14 sept al vie 18 sept',
      'de lun a vie',
      'lun y mié',
      'páginas 14 y 15',
    ],
    ['de', 'Montag', 'Mo 14. Sept bis Fr 18. Sept', 'Mo bis Fr', 'Mo und Mi', 'Seiten 14 und 15'],
    [
      'fr',
      'lundi',
      'du lun 14 sept au ven 18 sept',
      'du lun au ven',
      'lun et mer',
      'pages 14 et 15',
    ],
  ] as const)('%s', (language, long, range, school, two, pages) => {
    const said = readIn(language, () => [
      dayName(monday),
      dayRange(monday, friday),
      weekdayRange([1, 2, 3, 4, 5]),
      weekdayRange([1, 3]),
      pageRange(14, 15),
    ]);
    expect(said).toEqual([long, range, school, two, pages]);
  });

  it('the first of a month is the 1er in French and nowhere else', () => {
    const may = storedDay('2027-05-01');
    expect(readIn('fr', () => [shortDate(may), dayAndMonth(may)])).toEqual([
      'sam 1er mai',
      '1er mai',
    ]);
    expect(readIn('de', () => dayAndMonth(may))).toBe('1. Mai');
    expect(readIn('fr', () => dayAndMonth(storedDay('2027-05-11')))).toBe('11 mai');
  });
});

describe('lines', () => {
  it('leave out what is null and keep blank ones', () => {
    expect(lines('one', null, '', bold('two')).text).toBe('one\n\ntwo');
  });

  it('keep bold parts in place, counted in UTF-16 units', () => {
    const { text, entities } = lines(bold('👩‍🚀 · Tue'), name('שרה'), bold('Done 🦊'));
    expect(entities.map(({ offset, length }) => text.slice(offset, offset + length))).toEqual([
      '👩‍🚀 · Tue',
      'Done 🦊',
    ]);
  });
});
