import type { ChildPace } from '../../db/index.ts';
import { drillWeekdays, isPaused, LONGEST_PAUSE_DAYS, type SchoolDay } from '../../drills/index.ts';
import type { PauseDayProblem } from '../input/pause-text.ts';
import { say } from '../language/index.ts';
import { quote } from './quote.ts';
import {
  bold,
  dayAndMonth,
  dayName,
  lines,
  listOf,
  name,
  shortDate,
  type Text,
  weekdayRange,
} from './words.ts';

/** Children with a line of their own; a helper of more sees how many others there are. */
const MOST_CHILDREN = 5;

/** Before and during a pause: what it means, or until when it is. */
export function pauseText(children: readonly ChildPace[]): Text {
  const names = listOf(children.map(({ child }) => name(child.nickname)));
  if (!children.some(({ pace, today }) => isPaused(pace, today))) {
    return lines(bold(say('pace-pause-title', { children: names })), say('pace-pause-how'));
  }
  return lines(
    bold(say('pace-paused-title', { children: names })),
    ...childLines(children, pauseLine),
  );
}

function pauseLine({ child, pace, today }: ChildPace): string {
  const who = { child: name(child.nickname) };
  const { pausedUntil } = pace;
  if (pausedUntil === null || !isPaused(pace, today)) return say('pace-running-line', who);
  return say('pace-paused-line', { ...who, day: shortDate(pausedUntil) });
}

function childLines(
  children: readonly ChildPace[],
  line: (each: ChildPace) => string,
): readonly string[] {
  const more = children.length - MOST_CHILDREN;
  return [
    ...children.slice(0, MOST_CHILDREN).map(line),
    ...(more > 0 ? [say('pace-more', { count: more })] : []),
  ];
}

/** The line that answers a pause. */
export function pausedUntil(day: SchoolDay): string {
  return say('pace-paused-until', { day: shortDate(day) });
}

/** The line that answers the end of a pause. */
export function startedAgain(): string {
  return say('pace-started-again');
}

/** The question until when. */
export function askPauseDay(): Text {
  return lines(say('pace-ask-day'));
}

/** A typed day that cannot end a pause. `first` and `last` are the days it may end on. */
export function badPauseDay(
  found: PauseDayProblem,
  { first, last }: { readonly first: SchoolDay; readonly last: SchoolDay },
): Text {
  if ('value' in found) {
    return lines(say(`pace-bad-${found.problem}`, { typed: quote(found.value) }));
  }
  const day = dated(found.day);
  const range = { day, first: dated(first), last: dated(last) };
  switch (found.problem) {
    case 'weekday':
      return lines(say('pace-bad-weekday', { day, weekday: dayName(found.day) }));
    case 'past':
      return lines(say('pace-bad-past', range));
    case 'far':
      return lines(say('pace-bad-far', { ...range, most: LONGEST_PAUSE_DAYS }));
  }
}

function dated(day: SchoolDay): string {
  return `${dayAndMonth(day)} ${day.slice(0, 4)}`;
}

/** Choosing the days on which the drill comes. */
export function drillDaysText(children: readonly ChildPace[]): Text {
  return lines(
    bold(say('pace-days-title')),
    ...childLines(children, daysLine),
    say('pace-days-how'),
  );
}

function daysLine({ child, pace, today }: ChildPace): string {
  const who = { child: name(child.nickname) };
  if (pace.pausedUntil !== null && isPaused(pace, today)) {
    return say('pace-days-paused', { ...who, day: shortDate(pace.pausedUntil) });
  }
  if (pace.rate !== 'daily') return say(`pace-days-${pace.rate}`, who);
  const days = drillWeekdays(pace, child.schoolClass.weekdays);
  return say('pace-days-line', { ...who, days: weekdayRange(days) });
}

/** The last day of a child cannot be taken out. */
export function lastDrillDay(): string {
  return say('pace-days-last');
}

/** The line that answers "Every school day". */
export function everyDayAgain(): string {
  return say('pace-every-day');
}

/** With an evening, while it comes less often because nobody answered for long. */
export function fewerLine(rate: 'three' | 'one'): string {
  return say(`pace-fewer-${rate}`);
}

/** When "/today" finds nothing because of a pause. */
export function pausedToday(nickname: string, until: SchoolDay): Text {
  return lines(say('pace-today-paused', { child: name(nickname), day: shortDate(until) }));
}
