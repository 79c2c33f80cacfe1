/**
 * How months are written, by number from January on: in English, Afrikaans, Spanish, German and French, whole and short. Accents
 * may be left out.
 */
const MONTHS: readonly string[] = [
  'january januarie enero januar jänner jaenner janvier janv jän jan ene',
  'february februarie febrero februar feber février févr fevr feb',
  'march maart marzo märz maerz mars mrt mrz mär mar',
  'april abril avril apr abr avr',
  'may mei mayo mai',
  'june junie junio juni juin jun',
  'july julie julio juli juillet juil jul',
  'august augustus agosto août aug ago',
  'september septiembre setiembre septembre sept sep',
  'october oktober octubre octobre oct okt',
  'november noviembre novembre nov',
  'december desember diciembre dezember décembre déc dec des dic dez',
];

/** How weekdays are written, from Monday on. */
const WEEKDAYS: readonly string[] = [
  'monday mon mons maandag ma lunes lundi lun montag mo',
  'tuesday tues tue dinsdag di martes mardi mar dienstag',
  'wednesday weds wed woensdag wo miércoles mié mercredi mer mittwoch mi',
  'thursday thurs thur thu donderdag do jueves jue jeudi jeu donnerstag',
  'friday fri vrydag vr viernes vie vendredi ven freitag fr',
  'saturday sat saterdag sa sábado sáb samedi sam samstag sonnabend',
  'sunday sun sondag so domingo dom dimanche dim sonntag',
];

/** A word as it is looked up: small letters without accents. */
function plain(word: string): string {
  return word.toLowerCase().normalize('NFD').replaceAll(/\p{M}/gu, '');
}

function numbered(rows: readonly string[]): ReadonlyMap<string, number> {
  return new Map(
    rows.flatMap((row, index) => row.split(' ').map((word) => [plain(word), index + 1] as const)),
  );
}

const MONTH_NUMBERS = numbered(MONTHS);
const WEEKDAY_NUMBERS = numbered(WEEKDAYS);

/** The longest first, each with and without its accents. */
function either(rows: readonly string[]): string {
  const words = rows.flatMap((row) => row.split(' ')).flatMap((word) => [word, plain(word)]);
  return [...new Set(words)].toSorted((a, b) => b.length - a.length).join('|');
}

/** What matches a month's name, for a pattern that is not case-sensitive. */
export const MONTH_WORDS = either(MONTHS);

/** What matches a weekday's name, for a pattern that is not case-sensitive. */
export const WEEKDAY_WORDS = either(WEEKDAYS);

/**
 * A month by its name, from 1; null for another word.
 *
 * @example
 * monthOf('Août'); // 8
 */
export function monthOf(word: string): number | null {
  return MONTH_NUMBERS.get(plain(word)) ?? null;
}

/**
 * A weekday by its name, from 1 for Monday; null for another word.
 *
 * @example
 * weekdayOf('mié'); // 3
 */
export function weekdayOf(word: string): number | null {
  return WEEKDAY_NUMBERS.get(plain(word)) ?? null;
}
