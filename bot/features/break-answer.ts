import { addBreak, getClass, localTimeAt, type TeacherScope } from '../../db/index.ts';
import { parseSchoolDay, schoolDaysIn } from '../../drills/index.ts';
import { parseBreak } from '../input/break-text.ts';
import { oneLine } from '../input/one-line.ts';
import { afterBreak } from '../screens/break-screens.ts';
import { badBreak, breakAdded } from '../texts/breaks.ts';
import type { Typed } from './say.ts';

/** Takes a break that a teacher typed and reads it back. False when it could not be read. */
export async function readBreakAnswer(message: Typed, scope: TeacherScope): Promise<boolean> {
  const { deps, reply } = message;
  const now = deps.clock.now();
  const { zone, weekdays } = await getClass(deps.store, scope);
  const { day: today } = localTimeAt(now, zone);
  const parsed = parseBreak(oneLine(message.text), today);
  if ('problem' in parsed) {
    const { problem, value } = parsed;
    await reply(badBreak(problem, value, parseSchoolDay(value)));
    return false;
  }
  const { actId, ...made } = await addBreak(deps.store, scope, { ...parsed, now });
  const days = schoolDaysIn(made.first, made.last, { weekdays, breaks: [] });
  const isToday = made.first <= today && today <= made.last;
  const stand = { isOver: made.last < today, isToday, isNew: actId !== null };
  await reply(breakAdded(made, days, stand), afterBreak(scope.classId, actId));
  return true;
}
