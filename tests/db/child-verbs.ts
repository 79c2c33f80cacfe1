import {
  addRoster,
  archiveChild,
  bringBackChild,
  getChild,
  listArchived,
  moveChild,
  renameChild,
  type Store,
  type TeacherScope,
  undoAct,
} from '../../db/index.ts';
import { aSecondClass, type Classroom } from '../support/people.ts';
import { MORNING as now } from '../support/term.ts';

/** What the verbs about a class's list may be pointed at. */
export interface ListThings {
  /** Another class of the same teacher. */
  readonly otherClassId: string;
  /** The number of an archived child, and the act of archiving it. */
  readonly archived: number;
  readonly actId: string;
}

/** A second class of the teacher and an archived child, for a class that has one child. */
export async function listThings(store: Store, classroom: Classroom): Promise<ListThings> {
  const { scope } = classroom;
  const other = await aSecondClass(store, classroom);
  await addRoster(store, scope, { nicknames: ['Sorrel'], now });
  const actId = await archiveChild(store, scope, { number: 2, now });
  return { otherClassId: other.schoolClass.id, archived: 2, actId };
}

type Verb = (store: Store, scope: TeacherScope, things: ListThings) => Promise<unknown>;

/** A call of every verb about a class's list and what can be taken back. */
export const LIST_VERBS: Readonly<Record<string, Verb>> = {
  addRoster: (store, scope) => addRoster(store, scope, { nicknames: ['Juniper'], now }),
  archiveChild: (store, scope) => archiveChild(store, scope, { number: 1, now }),
  bringBackChild: (store, scope, { archived }) =>
    bringBackChild(store, scope, { number: archived, now }),
  getChild: (store, scope) => getChild(store, scope, 1),
  listArchived: (store, scope) => listArchived(store, scope),
  moveChild: (store, scope, { otherClassId }) =>
    moveChild(store, scope, { number: 1, toClassId: otherClassId, now }),
  renameChild: (store, scope) => renameChild(store, scope, { number: 1, nickname: 'Juniper' }),
  undoAct: (store, { teacherId }, { actId }) => undoAct(store, { teacherId, actId, now }),
};
