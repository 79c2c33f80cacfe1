import { AFRIKAANS_CLOCK } from './clocks/af.ts';
import type { ClockTime, ClockWords } from './clocks/clock-words.ts';
import { GERMAN_CLOCK } from './clocks/de.ts';
import { ENGLISH_CLOCK } from './clocks/en.ts';
import { SPANISH_CLOCK } from './clocks/es.ts';
import { FRENCH_CLOCK } from './clocks/fr.ts';
import { entry } from './entry.ts';
import { fold } from './fold.ts';
import type { Language } from './language.ts';
import { numberWord } from './number-word.ts';

const CLOCKS: Readonly<Record<Language, ClockWords>> = {
  en: ENGLISH_CLOCK,
  af: AFRIKAANS_CLOCK,
  es: SPANISH_CLOCK,
  de: GERMAN_CLOCK,
  fr: FRENCH_CLOCK,
};

/**
 * A five-minute time of a dial as a child usually says it. None of the five tables was checked by a teacher of its language.
 * Throws RangeError unless `hour` is whole, 1 to 12, and `minute` is 0, 5, ... 55.
 *
 * @example
 * clockPhrase(3, 30, 'de'); // 'halb vier'
 */
export function clockPhrase(hour: number, minute: number, language: Language = 'en'): string {
  return entry(clockPhraseVariants(hour, minute, language), 0);
}

/**
 * Every way to say a time that counts as equal, the usual one first. Throws RangeError as {@link clockPhrase} does.
 *
 * @example
 * clockPhraseVariants(3, 30, 'af'); // ['halfvier', 'half vier', 'drie-uur dertig']
 */
export function clockPhraseVariants(
  hour: number,
  minute: number,
  language: Language = 'en',
): readonly string[] {
  if (!Number.isInteger(hour) || hour < 1 || hour > 12) {
    throw new RangeError(`${hour} is not on a clock face: its hours are 1 to 12`);
  }
  if (minute % 5 !== 0 || minute < 0 || minute > 55) {
    throw new RangeError(`no spoken time for ${minute} minutes: only for 0, 5 and so on to 55`);
  }
  return CLOCKS[language].phrases(hour, minute, (hour % 12) + 1);
}

/**
 * The time a text names in words; null for anything else. Numbers inside may be figures ("half past 3"), and "it is" may
 * stand before. {@link fold} says which slips of spelling are forgiven. A bare hour ("three") is a number, not a time; a
 * time in figures alone ("3:30") is read elsewhere.
 *
 * @example
 * parseClockPhrase('Fünf vor halb vier', 'de'); // { hour: 3, minute: 25 }
 */
export function parseClockPhrase(text: string, language: Language): ClockTime | null {
  const worded = text.replace(/(?<!\d)\d{1,2}(?!\d)/g, (n) => numberWord(Number(n), language));
  const key = fold(worded, language);
  if (key === null) return null;
  const { leadIn, mend } = CLOCKS[language];
  return timesOf(language).get(mend(key.replace(leadIn, ''))) ?? null;
}

const byLanguage = new Map<Language, ReadonlyMap<string, ClockTime>>();

function timesOf(language: Language): ReadonlyMap<string, ClockTime> {
  const known = byLanguage.get(language);
  if (known) return known;
  const times = new Map<string, ClockTime>();
  for (let at = 0; at < 720; at += 5) {
    const time = { hour: Math.floor(at / 60) || 12, minute: at % 60 };
    for (const phrase of clockPhraseVariants(time.hour, time.minute, language)) {
      const key = fold(phrase, language);
      if (key !== null) times.set(CLOCKS[language].mend(key), time);
    }
  }
  byLanguage.set(language, times);
  return times;
}
