import type { FamilyChild } from '../../db/index.ts';
import { say } from '../language/index.ts';
import { bold, lines, name, type Text, weekdayRange } from './words.ts';

/** To a helper whose child is in another class from now on. Without a plan in use there nothing comes yet. */
export function movedToClass(
  { nickname, eveningTime, schoolClass }: FamilyChild,
  hasPlan: boolean,
): Text {
  const title = name(schoolClass.title);
  const when = { days: weekdayRange(schoolClass.weekdays), time: eveningTime };
  return lines(
    bold(say('moved-heading', { child: name(nickname), class: title })),
    hasPlan ? say('moved-practises', { class: title, ...when }) : say('moved-no-plan', when),
    say('moved-kept'),
  );
}
