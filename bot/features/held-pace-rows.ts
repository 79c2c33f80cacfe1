import type { HeldData } from '../../db/index.ts';
import { DRILL_RATES, WEEKDAYS } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { clauses } from '../texts/clauses.ts';
import { weekdayRange } from '../texts/words.ts';
import type { HeldRow } from './held-row.ts';

/** How often the drill came to a child's family, a row for each time it changed. */
export function paceRows({ pace }: HeldData['child']): HeldRow[] {
  return pace.map((each) => {
    const rate = DRILL_RATES.find((known) => known === each.rate);
    const more = clauses(moreOf(each));
    return [say('pace-held'), each.day, '', rate ? say(`pace-held-${rate}`) : each.rate, more];
  });
}

function moreOf({
  announcedFrom,
  keptByTeacher,
  pausedUntil,
  weekdays,
}: HeldData['child']['pace'][number]): string[] {
  const days = weekdayRange(WEEKDAYS.filter((weekday) => weekdays?.includes(weekday)));
  return [
    ...(announcedFrom === null ? [] : [say('pace-held-announced', { day: announcedFrom })]),
    ...(keptByTeacher ? [say('pace-held-kept')] : []),
    ...(pausedUntil === null ? [] : [say('pace-held-paused', { day: pausedUntil })]),
    ...(weekdays === null ? [] : [say('pace-held-days', { days })]),
  ];
}
