import type { SchoolClass } from '../../db/index.ts';
import type { Place, PublicHoliday } from '../holidays/public-holidays.ts';
import * as texts from '../texts/breaks.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { name } from '../texts/words.ts';
import { pageRow } from './page-row.ts';
import { pageOf } from './pages.ts';
import { button, rows, type Screen } from './screen.ts';

const HOLIDAYS_A_PAGE = 6;
/** Two in a row, seven rows. */
const PLACES_A_PAGE = 14;

/** A holiday that can be added; `place` is its place among all the holidays of the list's year. */
export interface NumberedHoliday extends PublicHoliday {
  readonly place: number;
}

/** A list of holidays as its buttons carry it. `off` are the places in the list that are not ticked. */
export interface HolidayChoice {
  readonly place: Place;
  /** The first day of the list, as buttons spell it. */
  readonly from: string;
  readonly holidays: readonly NumberedHoliday[];
  readonly off: ReadonlySet<number>;
  readonly at: number;
}

/** The public holidays ahead, ticked or not, and one button that adds the ticked ones. */
export function holidayScreen(schoolClass: SchoolClass, choice: HolidayChoice): Screen {
  const { id: classId } = schoolClass;
  const { holidays, off, from, at } = choice;
  const place = choice.place.code;
  const { shown, page, pages } = pageOf(holidays, at, HOLIDAYS_A_PAGE);
  const chosen = holidays.filter((each) => !off.has(each.place)).length;
  const go = (unticked: ReadonlySet<number>, to: number) =>
    ({ kind: 'holidays', classId, place, from, off: packOff(unticked), page: to }) as const;
  const ticks = shown.map((holiday) => {
    const label = texts.holidayButton(holiday.day, holiday.name, !off.has(holiday.place));
    return [button(label, go(turned(off, holiday.place), page))];
  });
  const words = { place: name(choice.place.name), of: holidays.length, chosen, page, pages };
  return {
    text: texts.holidayList(schoolClass, words),
    buttons: [
      ...ticks,
      ...pageRow({ page, pages }, (to) => go(off, to)),
      ...(chosen > 0
        ? [
            [
              button(texts.addHolidaysButton(chosen), {
                kind: 'addHolidays',
                classId,
                place,
                from,
                off: packOff(off),
              }),
            ],
          ]
        : []),
      [button(BUTTONS.otherPlace, { kind: 'holidayPlaces', classId, country: 'all', page: 0 })],
      [button(BUTTONS.back, { kind: 'breaks', classId })],
    ],
  };
}

/** Countries, or the regions of one. `country` is null for a list of countries, `some` of them say that there are more. */
export function placesScreen(
  classId: string,
  country: Place | null,
  places: readonly Place[],
  at: number,
  which: 'all' | 'some' = 'all',
): Screen {
  const { shown, page, pages } = pageOf(places, at, PLACES_A_PAGE);
  const choose = (label: string, place: string) =>
    button(label, { kind: 'choosePlace', classId, place });
  const of = country?.code ?? 'all';
  return {
    text: texts.choosePlace(country?.name ?? null, page, pages),
    buttons: [
      ...(country ? [[choose(BUTTONS.wholeCountry, `${country.code}-`)]] : []),
      ...rows(
        shown.map(({ code, name: label }) => choose(label, code)),
        2,
      ),
      ...pageRow({ page, pages }, (to) => ({
        kind: 'holidayPlaces',
        classId,
        country: of,
        page: to,
      })),
      ...(which === 'some'
        ? [
            [
              button(BUTTONS.otherPlace, {
                kind: 'holidayPlaces',
                classId,
                country: 'all',
                page: 0,
              }),
            ],
          ]
        : []),
      [
        country
          ? button(BUTTONS.back, { kind: 'holidayPlaces', classId, country: 'all', page: 0 })
          : button(BUTTONS.back, { kind: 'breaks', classId }),
      ],
    ],
  };
}

/** Which holidays are not ticked, as one number in base 36: 40 of them fit. */
export function packOff(off: ReadonlySet<number>): string {
  return [...off].reduce((sum, place) => sum + 2 ** place, 0).toString(36);
}

/** The places in a list of `of` holidays that {@link packOff} packed; null for a text it could not have written. */
export function unpackOff(text: string, of: number): ReadonlySet<number> | null {
  const number = Number.parseInt(text, 36);
  if (!(number >= 0 && number < 2 ** of) || number.toString(36) !== text) return null;
  const places = Array.from({ length: of }, (_, place) => place);
  return new Set(places.filter((place) => Math.floor(number / 2 ** place) % 2 === 1));
}

function turned(off: ReadonlySet<number>, place: number): ReadonlySet<number> {
  const next = new Set(off);
  if (!next.delete(place)) next.add(place);
  return next;
}
