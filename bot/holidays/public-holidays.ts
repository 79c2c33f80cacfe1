import { addDays, parseSchoolDay, type SchoolDay } from '../../drills/index.ts';
import { localeOf, readerLanguage } from '../language/index.ts';

/** A country or a region of one, by its ISO 3166 code, as `ZA` or `GB-SCT`. */
export interface Place {
  readonly code: string;
  readonly name: string;
}

/** A public holiday on one day. */
export interface PublicHoliday {
  readonly day: SchoolDay;
  readonly name: string;
}

/** How far ahead holidays are offered: a year, so that each comes once. */
const DAYS_AHEAD = 365;
const DAY_MS = 86_400_000;
/** Regions of regions, and places that no ISO code stands for, are left out: the country's own holidays are near enough. */
const REGION = /^[A-Z0-9]{1,3}$/;

/** Loaded when the first teacher asks: the tables of all countries take a third of a second to read. */
async function library() {
  return (await import('date-holidays')).default;
}

/** The language the tables are read in: the reader's. They know no Afrikaans, and would name days in the country's own then. */
function language(): string {
  const read = readerLanguage();
  return read === 'af' ? 'en' : read;
}

/** All countries there are holidays for, by name. */
export async function countries(): Promise<readonly Place[]> {
  const Holidays = await library();
  const table = new Holidays().getCountries('en');
  if (readerLanguage() === 'en') return byName(table);
  // The tables name few countries in other languages; the names of CLDR are whole.
  const names = new Intl.DisplayNames(localeOf(readerLanguage()), { type: 'region' });
  return byName(
    Object.fromEntries(Object.entries(table).map(([code, name]) => [code, names.of(code) ?? name])),
  );
}

/** The regions of a country that have holidays of their own, by name; none where the whole country keeps the same. */
export async function regionsOf(country: string): Promise<readonly Place[]> {
  const Holidays = await library();
  const states = Object.entries(new Holidays().getStates(country, language()) ?? {});
  return byName(
    Object.fromEntries(
      states.flatMap(([code, name]) => (REGION.test(code) ? [[`${country}-${code}`, name]] : [])),
    ),
  );
}

/** A country or region by its code; null when there are no holidays for it. */
export async function placeOf(code: string): Promise<Place | null> {
  const [country = ''] = code.split('-');
  const found = (await countries()).find((each) => each.code === country);
  if (!found || code === country) return found ?? null;
  const region = (await regionsOf(country)).find((each) => each.code === code);
  return region ? { code, name: `${region.name}, ${found.name}` } : null;
}

/** The countries that a time zone is used in, by name; none for one that is no country's. */
export async function countriesOfZone(zone: string): Promise<readonly Place[]> {
  const Holidays = await library();
  return (await countries()).filter(({ code }) =>
    new Holidays(code).getTimezones()?.includes(zone),
  );
}

/**
 * A place's public holidays from a day on, for a year: whole days only, in order, each day once.
 * Holidays that the law names later, as after an election is called, are not known.
 */
export async function holidaysAhead(
  code: string,
  from: SchoolDay,
): Promise<readonly PublicHoliday[]> {
  const [country = '', region] = code.split('-');
  const Holidays = await library();
  const table = region ? new Holidays(country, region) : new Holidays(country);
  const last = addDays(from, DAYS_AHEAD - 1);
  const names = new Map<SchoolDay, string>();
  for (const year of new Set([from, last].map((day) => Number(day.slice(0, 4))))) {
    for (const { type, date, start, end, name } of table.getHolidays(year, language())) {
      const first = parseSchoolDay(date.slice(0, 10));
      // What begins at noon is a half day: school may well be open.
      if (type !== 'public' || !first || !date.slice(10).startsWith(' 00:00')) continue;
      const days = Math.max(1, Math.floor((end.getTime() - start.getTime()) / DAY_MS));
      for (let ahead = 0; ahead < days; ahead += 1) {
        const day = addDays(first, ahead);
        if (day >= from && day <= last && !names.has(day)) {
          names.set(day, name);
        }
      }
    }
  }
  return [...names].map(([day, name]) => ({ day, name })).sort((a, b) => (a.day < b.day ? -1 : 1));
}

function byName(table: Readonly<Record<string, string>>): Place[] {
  return Object.entries(table)
    .map(([code, name]) => ({ code, name }))
    .sort((a, b) => a.name.localeCompare(b.name, localeOf(readerLanguage())));
}
