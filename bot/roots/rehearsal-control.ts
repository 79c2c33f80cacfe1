import { readFile, rename, writeFile } from 'node:fs/promises';
import {
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
  type SchoolDay,
  type TimeOfDay,
  weekdayOf,
} from '../../drills/index.ts';
import type { RehearsalControl, Stop } from '../../rehearsal/options.ts';
import { weekdayName } from '../texts/words.ts';
import type { MovableClock } from './clocks.ts';

/** When the clock is moved, the minutes between are not skipped but walked in steps, so that everything happens in order. */
const STEP_MS = 5 * 60_000;

/** The rehearsal's hand on the clock. `work` lets the app do what is due; `saved` is called after each move. */
export function rehearsalControl(
  store: Store,
  clock: MovableClock,
  work: () => Promise<void>,
  saved: () => Promise<void>,
): RehearsalControl {
  return {
    now: () => clock.now(),
    moveTo: async (target) => {
      while (clock.now() < target) {
        clock.moveTo(new Date(Math.min(nextStep(clock.now()), target.getTime())));
        await work();
      }
      await saved();
    },
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

/** The next whole five minutes. */
function nextStep(now: Date): number {
  return Math.floor(now.getTime() / STEP_MS) * STEP_MS + STEP_MS;
}

async function stopsOf(store: Store, schoolClass: SchoolClass, now: Date): Promise<Stop[]> {
  const { day, time } = localTimeAt(now, schoolClass.zone);
  const breaks = await listBreaks(store, schoolClass.id, day);
  const calendar = { weekdays: schoolClass.weekdays, breaks };
  const nextDay = (wanted: TimeOfDay): SchoolDay | null =>
    nextSchoolDay(minutesOf(time) < minutesOf(wanted) ? addDays(day, -1) : day, calendar);
  const stop = (id: string, words: string, on: SchoolDay | null, time: TimeOfDay): Stop[] => {
    if (!on) return [];
    const label = `${words} (${weekdayName(weekdayOf(on), 'short')} ${time})`;
    return [{ id: `${id} ${schoolClass.id}`, label, at: instantAt(on, time, schoolClass.zone) }];
  };
  return [
    ...stop(
      'evening',
      'the next evening',
      nextDay(schoolClass.eveningTime),
      schoolClass.eveningTime,
    ),
    ...stop('nudge', 'the next nudge time', nextDay(schoolClass.nudgeTime), schoolClass.nudgeTime),
    ...stop('digest', 'the next digest', digestDay(schoolClass, day, time), schoolClass.digestTime),
  ];
}

function digestDay(schoolClass: SchoolClass, day: SchoolDay, time: TimeOfDay): SchoolDay {
  const first = minutesOf(time) < minutesOf(schoolClass.digestTime) ? 0 : 1;
  let candidate = addDays(day, first);
  while (weekdayOf(candidate) !== schoolClass.digestWeekday) candidate = addDays(candidate, 1);
  return candidate;
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
