import { readFile, rename, writeFile } from 'node:fs/promises';
import {
  digestDays,
  instantAt,
  listBreaks,
  listRunningClasses,
  localTimeAt,
  type SchoolClass,
  type Store,
} from '../../db/index.ts';
import {
  addDays,
  minutesOf,
  nextSchoolDay,
  parseTimeOfDay,
  type SchoolDay,
  type TimeOfDay,
  weekdayOf,
} from '../../drills/index.ts';
import type { RehearsalControl, Stop } from '../../rehearsal/options.ts';
import { type ClockWalk, createClockWalk } from './clock-walk.ts';
import type { MovableClock } from './clocks.ts';

/** The rehearsal's hand on the clock. `work` lets the app do what is due; `saved` is called after each step of a move. */
export function rehearsalControl(
  store: Store,
  clock: MovableClock,
  work: () => Promise<void>,
  saved: () => Promise<void>,
): RehearsalControl & ClockWalk {
  return {
    now: () => clock.now(),
    ...createClockWalk(clock, work, saved),
    stops: async () => {
      const classes = await listRunningClasses(store);
      const stops = await Promise.all(
        classes.map((schoolClass) => stopsOf(store, schoolClass, clock.now())),
      );
      // Two classes with the same times need one button, not two that look alike.
      const distinct = new Map(stops.flat().map((stop) => [`${stop.label} ${stop.at}`, stop]));
      return [...distinct.values()].sort((a, b) => a.at.getTime() - b.at.getTime());
    },
  };
}

async function stopsOf(store: Store, schoolClass: SchoolClass, now: Date): Promise<Stop[]> {
  const { day, time } = localTimeAt(now, schoolClass.zone);
  const breaks = await listBreaks(store, schoolClass.id, day);
  const calendar = { weekdays: schoolClass.weekdays, breaks };
  const nextDay = (wanted: TimeOfDay): SchoolDay | null =>
    nextSchoolDay(minutesOf(time) < minutesOf(wanted) ? addDays(day, -1) : day, calendar);
  const stop = (id: string, label: string, on: SchoolDay | null, at: TimeOfDay): Stop[] =>
    on ? [{ id: `${id} ${schoolClass.id}`, label, at: instantAt(on, at, schoolClass.zone) }] : [];
  const { eveningTime, nudgeTime, digestTime } = schoolClass;
  const digest = stop(
    'digest',
    'the next digest',
    await digestDay(store, schoolClass, now),
    digestTime,
  );
  return [
    ...stop('evening', 'the next evening', nextDay(eveningTime), eveningTime),
    ...stop('nudge', 'the next nudge time', nextDay(nudgeTime), nudgeTime),
    ...digest.map((it) => ({ ...it, endsWeek: true })),
    ...(MORNING ? stop('school-day', 'the next school day', nextDay(MORNING), MORNING) : []),
  ];
}

/** A school day begins for the rehearsal when nothing was sent on it yet. */
const MORNING = parseTimeOfDay('08:00');

/** Holidays are shorter than this. */
const MOST_WEEKS = 26;

/** The next day with a digest; a week without school days has none. */
async function digestDay(
  store: Store,
  schoolClass: SchoolClass,
  now: Date,
): Promise<SchoolDay | null> {
  const { day, time } = localTimeAt(now, schoolClass.zone);
  let candidate = minutesOf(time) < minutesOf(schoolClass.digestTime) ? day : addDays(day, 1);
  while (weekdayOf(candidate) !== schoolClass.digestWeekday) candidate = addDays(candidate, 1);
  for (let week = 0; week < MOST_WEEKS; week += 1) {
    if ((await digestDays(store, schoolClass, candidate)).length > 0) return candidate;
    candidate = addDays(candidate, 7);
  }
  return null;
}

/** Keeps how far the rehearsal's clock is ahead, so that a second start goes on where the first ended. */
export async function saveLead(file: string, leadMs: number): Promise<void> {
  await writeFile(`${file}.new`, JSON.stringify({ leadMs }));
  await rename(`${file}.new`, file);
}

/** How far the clock was ahead when it was last saved; 0 when it never was, or when the file cannot be read. */
export async function readLead(file: string): Promise<number> {
  try {
    const saved: unknown = JSON.parse(await readFile(file, 'utf8'));
    if (typeof saved === 'object' && saved !== null && 'leadMs' in saved) {
      return Math.max(0, Number(saved.leadMs) || 0);
    }
  } catch {
    // No file yet, or one that was cut short: the machine's own time is a good start.
  }
  return 0;
}
