import { Temporal } from 'temporal-polyfill';
import {
  parseSchoolDay,
  parseTimeOfDay,
  type SchoolDay,
  type TimeOfDay,
} from '../../drills/index.ts';

/**
 * The IANA spelling of a time zone, or null when there is no such zone. A name stays the name that was given: the host's own
 * choice among old and new names (Kiev, Kyiv) is not put into anybody's mouth. Offsets such as `+02:00` are refused: they
 * would not follow daylight saving.
 *
 * @example
 * parseZone('africa/johannesburg'); // 'Africa/Johannesburg'
 * parseZone('Mars/Base'); // null
 */
export function parseZone(text: string): string | null {
  const wanted = text.trim();
  if (!/^[A-Za-z]+(?:[/_+-][A-Za-z0-9_+-]+)*$/.test(wanted)) return null;
  try {
    return Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(wanted).timeZoneId;
  } catch {
    return null;
  }
}

/** A wall clock reading in a zone. */
export interface LocalTime {
  readonly day: SchoolDay;
  readonly time: TimeOfDay;
}

/**
 * What the wall clock and calendar of a zone show at an instant, to the minute.
 *
 * @example
 * localTimeAt(new Date('2026-10-25T17:30:00Z'), 'Europe/London'); // { day: '2026-10-25', time: '17:30' }
 */
export function localTimeAt(instant: Date, zone: string): LocalTime {
  const local = Temporal.Instant.fromEpochMilliseconds(instant.getTime()).toZonedDateTimeISO(zone);
  const day = parseSchoolDay(local.toPlainDate().toString());
  const time = parseTimeOfDay(local.toPlainTime().toString({ smallestUnit: 'minute' }));
  if (!day || !time) throw new RangeError(`no local time at ${instant.toISOString()} in ${zone}`);
  return { day, time };
}

/**
 * The instant at which a zone's wall clock shows `time` on `day`. A time that daylight saving skips moves to just after the
 * gap; a time that comes twice means the first of the two.
 *
 * @example
 * instantAt('2026-03-29', '17:30', 'Europe/London'); // 2026-03-29T16:30:00Z
 */
export function instantAt(day: SchoolDay, time: TimeOfDay, zone: string): Date {
  const local = Temporal.PlainDateTime.from(`${day}T${time}`);
  return new Date(local.toZonedDateTime(zone).epochMilliseconds);
}
