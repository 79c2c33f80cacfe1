import { beforeAll, describe, expect, it } from 'vitest';
import {
  countries,
  countriesOfZone,
  holidaysAhead,
  placeOf,
  regionsOf,
} from '../../bot/holidays/public-holidays.ts';
import { readIn } from '../../bot/language/index.ts';
import { weekdayOf } from '../../drills/index.ts';
import { day } from '../support/term.ts';

/**
 * Holidays of 2026 as published. England and Wales: GOV.UK, "UK bank holidays" (https://www.gov.uk/bank-holidays), from memory.
 * South Africa: Public Holidays Act 36 of 1994, schedule 1, and section 2(1), by which the Monday after a holiday on a Sunday is
 * one too, from memory; the dates of Easter follow from the calendar.
 */
const ENGLAND_AND_WALES = [
  '2026-01-01',
  '2026-04-03',
  '2026-04-06',
  '2026-05-04',
  '2026-05-25',
  '2026-08-31',
  '2026-12-25',
  '2026-12-28',
];
const SOUTH_AFRICA = [
  '2026-01-01',
  '2026-03-21',
  '2026-04-03',
  '2026-04-06',
  '2026-04-27',
  '2026-05-01',
  '2026-06-16',
  '2026-08-09',
  '2026-08-10',
  '2026-09-24',
  '2026-12-16',
  '2026-12-25',
  '2026-12-26',
];

const NEW_YEAR = day('2026-01-01');
/** The first call reads the tables of all countries. */
beforeAll(async () => {
  await countries();
});

describe('the public holidays of 2026', () => {
  it.each(['GB-ENG', 'GB-WLS'])('on weekdays are those published for %s', async (place) => {
    const found = (await holidaysAhead(place, NEW_YEAR)).filter((each) => weekdayOf(each.day) < 6);
    expect(found.map((each) => each.day)).toEqual(ENGLAND_AND_WALES);
  });

  it('of South Africa are those of the Act, with the Monday after a Sunday', async () => {
    const found = await holidaysAhead('ZA', NEW_YEAR);
    expect(found.map((each) => each.day)).toEqual(SOUTH_AFRICA);
  });

  it('of Scotland have no Easter Monday and have Saint Andrew’s Day', async () => {
    const days = (await holidaysAhead('GB-SCT', NEW_YEAR)).map((each) => each.day);
    expect(days).not.toContain('2026-04-06');
    expect(days).toContain('2026-11-30');
  });
});

describe('a year of holidays', () => {
  it('begins on the day asked for, ends before that day comes again, and has each day once', async () => {
    const found = (await holidaysAhead('ZA', day('2026-06-16'))).map((each) => each.day);
    expect(found[0]).toBe('2026-06-16');
    expect(found.at(-1)).toBe('2027-05-01');
    expect(new Set(found).size).toBe(found.length);
    expect(found).toEqual(found.toSorted());
  });

  it('leaves out half days, which begin at noon', async () => {
    const found = (await holidaysAhead('CN', NEW_YEAR)).map((each) => each.day);
    expect(found).toContain('2026-10-01');
    expect(found).not.toContain('2026-03-08');
  });
});

describe('a place', () => {
  it('is guessed from a time zone, or from the few countries that share one', async () => {
    const using = async (zone: string) => (await countriesOfZone(zone)).map(({ code }) => code);
    expect(await using('Europe/London')).toEqual(['GB']);
    expect((await using('Africa/Johannesburg')).sort()).toEqual(['LS', 'SZ', 'ZA']);
    expect(await using('Mars/Base')).toEqual([]);
  });

  it('has a name; a region’s says which country it is in', async () => {
    expect((await placeOf('ZA'))?.name).toBe('South Africa');
    expect((await placeOf('GB-SCT'))?.name).toBe('Scotland, United Kingdom');
    for (const code of ['XX', 'GB-XXX', '', 'constructor']) expect(await placeOf(code)).toBeNull();
  });

  it('has regions where holidays differ within the country', async () => {
    expect((await regionsOf('GB')).map(({ code }) => code)).toContain('GB-NIR');
    expect(await regionsOf('ZA')).toEqual([]);
  });

  it('has a code that fits in a button, wherever it is', async () => {
    for (const { code } of await countries()) {
      for (const region of [{ code }, ...(await regionsOf(code))]) {
        expect(region.code).toMatch(/^[A-Z]{2}(-[A-Z0-9]{1,3})?$/);
      }
    }
  });
});

// Names of countries are those of CLDR, by way of ICU; of holidays those of the tables, which know no Afrikaans.
it.each([
  ['af', 'Duitsland', 'Good Friday'],
  ['es', 'Alemania', 'Viernes Santo'],
  ['de', 'Deutschland', 'Karfreitag'],
  ['fr', 'Allemagne', 'Vendredi saint'],
] as const)('are named in the reader’s language: %s', async (language, country, friday) => {
  await readIn(language, async () => {
    expect((await placeOf('DE'))?.name).toBe(country);
    const ahead = await holidaysAhead('DE', day('2026-04-01'));
    expect(ahead[0]).toEqual({ day: '2026-04-03', name: friday });
  });
});
