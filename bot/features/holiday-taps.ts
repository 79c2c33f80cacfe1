import {
  AppError,
  addBreaks,
  getClass,
  getHolidayPlace,
  listBreaks,
  localTimeAt,
  type SchoolClass,
  setHolidayPlace,
  type TeacherScope,
} from '../../db/index.ts';
import {
  addDays,
  isSchoolDay,
  numberOf,
  parseSchoolDay,
  type SchoolDay,
} from '../../drills/index.ts';
import * as holidays from '../holidays/public-holidays.ts';
import {
  type HolidayChoice,
  holidayScreen,
  placesScreen,
  unpackOff,
} from '../screens/holiday-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { holidaysAdded } from '../texts/breaks.ts';
import { readBreaks } from './break-taps.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { turn } from './turn.ts';

/** The most holidays a list has: as many as can be added at once, and as its buttons can carry. */
const MOST = 40;
const EPOCH = '1970-01-01';

/** A list from today on, with everything ticked. */
const FRESH = { from: '0', off: '0' } as const;

/** What the buttons of a list of holidays carry. */
interface Wanted {
  readonly place: string;
  readonly from: string;
  readonly off: string;
}

/** Offering a country's public holidays as breaks. */
export const holidayTaps: TapHandlers<
  'holidays' | 'addHolidays' | 'holidayPlaces' | 'choosePlace'
> = {
  holidays: (tap, { classId, page, ...wanted }) =>
    turn(tap, classId, (scope) => readHolidays(tap, scope, wanted, page)),
  addHolidays: (tap, { classId, ...wanted }) =>
    turn(tap, classId, (scope) => add(tap, scope, wanted)),
  holidayPlaces: (tap, { classId, country, page }) =>
    turn(tap, classId, async (scope) => {
      await getClass(tap.deps.store, scope);
      return readPlaces(classId, country, page);
    }),
  choosePlace: (tap, { classId, place }) =>
    turn(tap, classId, async (scope) => {
      const [code = '', region] = place.split('-');
      const found = await holidays.placeOf(region ? place : code);
      if (!found) throw new AppError('invalid', 'country');
      // A country is asked for its region first; with a dash behind it, the whole country is meant.
      const hasRegions = region === undefined && (await holidays.regionsOf(code)).length > 0;
      if (hasRegions) {
        await getClass(tap.deps.store, scope);
        return readPlaces(classId, code, 0);
      }
      await setHolidayPlace(tap.deps.store, scope, found.code);
      return readHolidays(tap, scope, { place: found.code, ...FRESH }, 0);
    }),
};

/** The list as its button carries it, or as it stands today where the button is too old to be read. */
async function readHolidays(
  tap: Tap,
  scope: TeacherScope,
  wanted: Wanted,
  page: number,
): Promise<Screen> {
  const schoolClass = await getClass(tap.deps.store, scope);
  const code = wanted.place === 'own' ? await getHolidayPlace(tap.deps.store, scope) : wanted.place;
  if (code === null) return firstAsk(tap, scope, schoolClass);
  const choice = await choiceOf(tap, scope, schoolClass, { ...wanted, place: code });
  return choice
    ? holidayScreen(schoolClass, { ...choice, at: page })
    : readPlaces(scope.classId, 'all', 0);
}

/** Nobody has chosen a place yet: the time zone's country is tried, its regions or its neighbours with that zone are asked for. */
async function firstAsk(tap: Tap, scope: TeacherScope, schoolClass: SchoolClass): Promise<Screen> {
  const { classId } = scope;
  const [guess, ...others] = await holidays.countriesOfZone(schoolClass.zone);
  if (!guess) return readPlaces(classId, 'all', 0);
  if (others.length > 0) return placesScreen(classId, null, [guess, ...others], 0, 'some');
  if ((await holidays.regionsOf(guess.code)).length > 0) return readPlaces(classId, guess.code, 0);
  const choice = await choiceOf(tap, scope, schoolClass, { place: guess.code, ...FRESH });
  return choice ? holidayScreen(schoolClass, choice) : readPlaces(classId, 'all', 0);
}

/** Adds what is ticked, once: what is in the breaks by now is not in the list any more. */
async function add(tap: Tap, scope: TeacherScope, wanted: Wanted): Promise<Screen> {
  const { store, clock } = tap.deps;
  const schoolClass = await getClass(store, scope);
  const choice = await choiceOf(tap, scope, schoolClass, wanted);
  const chosen = choice?.holidays.filter(({ place }) => !choice.off.has(place)) ?? [];
  const breaks = chosen.map(({ day, name }) => ({
    break: { first: day, last: day },
    title: [...name].slice(0, 60).join(''),
  }));
  const { added, actId } = await addBreaks(store, scope, { breaks, now: clock.now() });
  return readBreaks(tap, scope, 0, { said: holidaysAdded(added.length), actId });
}

async function choiceOf(
  tap: Tap,
  scope: TeacherScope,
  schoolClass: SchoolClass,
  wanted: Wanted,
): Promise<HolidayChoice | null> {
  const { store, clock } = tap.deps;
  const { day: today } = localTimeAt(clock.now(), schoolClass.zone);
  const place = await holidays.placeOf(wanted.place);
  if (!place) return null;
  const asked = dayOf(wanted.from);
  const from = asked && asked <= today && addDays(asked, 366) > today ? asked : today;
  const breaks = await listBreaks(store, scope.classId, from);
  // Numbered before any is left out: a late tap means the same days, whatever is in the breaks by now.
  const all = (await holidays.holidaysAhead(place.code, from)).slice(0, MOST);
  const calendar = { weekdays: schoolClass.weekdays, breaks };
  const shown = all.flatMap((holiday, at) =>
    isSchoolDay(holiday.day, calendar) ? [{ ...holiday, place: at }] : [],
  );
  const off = (from === asked && unpackOff(wanted.off, all.length)) || new Set<number>();
  return { place, from: numberOf(from).toString(36), holidays: shown, off, at: 0 };
}

async function readPlaces(classId: string, country: string, page: number): Promise<Screen> {
  const found = country === 'all' ? null : await holidays.placeOf(country);
  const places = found ? await holidays.regionsOf(found.code) : await holidays.countries();
  return placesScreen(classId, found, places, page);
}

function dayOf(text: string): SchoolDay | null {
  const number = Number.parseInt(text, 36);
  const epoch = parseSchoolDay(EPOCH);
  return epoch && number > 0 && number < 100_000 ? addDays(epoch, number) : null;
}
