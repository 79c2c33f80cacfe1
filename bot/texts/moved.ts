import type { FamilyChild } from '../../db/index.ts';
import { bold, lines, name, type Text, weekdayRange } from './words.ts';

/** To a helper whose child is in another class from now on. Without a plan in use there nothing comes yet. */
export function movedToClass(
  { nickname, eveningTime, schoolClass }: FamilyChild,
  hasPlan: boolean,
): Text {
  const title = name(schoolClass.title);
  const when = `${weekdayRange(schoolClass.weekdays)} at ${eveningTime}`;
  return lines(
    bold(`${name(nickname)} is in ${title} now.`),
    hasPlan
      ? `From the next evening on, the drill is what ${title} practises. It comes ${when}.`
      : `The drill comes as soon as the teacher has made a plan, then ${when}.`,
    'You need to do nothing. What was marked so far is kept, and the teachers there see it now.',
  );
}
