import {
  type FamilyPace,
  keepDaily,
  letGo,
  type PaceStand,
  paceStand,
  type SchoolDay,
} from '../../drills/index.ts';
import { localTimeAt } from '../calendar/zone.ts';
import type { RosterChild } from '../children/add-children.ts';
import { childrenOfClass } from '../children/list-children.ts';
import { lockChild } from '../children/own-child.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import type { SchoolClass } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { changePace } from './change-pace.ts';
import { classPaces } from './read-pace.ts';

/** A child whose drill does not simply come every school day. */
export interface ChildStand extends RosterChild {
  readonly stand: PaceStand;
}

/** The children of a class whose drill does not simply come every school day, by number, for its teachers. */
export async function listPaceStands(
  store: Store,
  scope: TeacherScope,
  now: Date,
): Promise<ChildStand[]> {
  const schoolClass = await getClass(store, scope);
  return paceStandsOf(store, schoolClass, localTimeAt(now, schoolClass.zone).day);
}

/** The same list on a day, for the engine's own work. A child that nobody helps is not in it. */
export async function paceStandsOf(
  store: Store,
  { id: classId, weekdays }: SchoolClass,
  today: SchoolDay,
): Promise<ChildStand[]> {
  const paceOf = await classPaces(store, { classId });
  return (await childrenOfClass(store, classId)).flatMap(({ id, number, nickname, helpers }) => {
    const stand = helpers > 0 ? paceStand(paceOf(id).pace, today, weekdays) : null;
    return stand ? [{ id, number, nickname, stand }] : [];
  });
}

/**
 * Has the drill come every school day all the same, or takes that back. What the family chose itself stays as it is. Returns
 * the pace as it stands then.
 */
export async function setKeptDaily(
  store: Store,
  scope: TeacherScope,
  { number, on, now }: { number: number; on: boolean; now: Date },
): Promise<FamilyPace> {
  return inTransaction(store, async (inner) => {
    const { zone } = await getClass(inner, scope);
    const { id: childId } = await lockChild(inner, scope, { number, archived: false });
    const { day } = localTimeAt(now, zone);
    return changePace(inner, { childId, day, now, isWord: true }, (pace) =>
      on ? keepDaily(pace, day) : letGo(pace, day),
    );
  });
}
