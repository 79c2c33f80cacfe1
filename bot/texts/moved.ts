import type { FamilyChild } from '../../db/index.ts';
import { bold, lines, name, type Text, weekdayRange } from './words.ts';

/** To a helper whose child is in another class from now on. */
export function movedToClass({ nickname, eveningTime, schoolClass }: FamilyChild): Text {
  const title = name(schoolClass.title);
  return lines(
    bold(`${name(nickname)} is in ${title} now.`),
    `From the next evening on, the drill is what ${title} practises. It comes ${weekdayRange(schoolClass.weekdays)} at ${eveningTime}.`,
    'You need to do nothing. What was marked so far is kept, and the class teacher there sees it now.',
  );
}
