import { and, eq } from 'drizzle-orm';
import { undoBookChange } from '../books/change-book.ts';
import { undoPuttingAway } from '../books/put-away-book.ts';
import { undoPages } from '../books/set-page.ts';
import { undoArchive } from '../children/archive-child.ts';
import { undoMove } from '../children/move-child.ts';
import { undoAdding } from '../children/undo-adding.ts';
import { undoArchiving } from '../classes/archive-class.ts';
import { undoBreakRemoval, undoBreaks } from '../classes/breaks.ts';
import { getClass } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { undoGreeting } from '../greetings/remove-greeting.ts';
import { undoProposal } from '../plans/accept-proposal.ts';
import { undoActivation } from '../plans/activate-plan.ts';
import { undoLoading } from '../plans/load-draft.ts';
import { act, classTeacher } from '../schema/index.ts';
import { undoWeekRemoval } from '../schemes/change-scheme.ts';
import { undoTermChange } from '../schemes/start-scheme.ts';
import { undoRemoval } from '../teachers/leave-class.ts';
import { type ActKind, type ActToUndo, type StoredAct, storedAct } from './act-kinds.ts';
import { UNDO_MS } from './list-acts.ts';

/** Takes back an act of a kind, inside a transaction. Throws `conflict` when what has happened since is in the way. */
export type Inverse<K extends ActKind> = (
  inner: Store,
  act: ActToUndo<K>,
  now: Date,
) => Promise<void>;

/** How each kind is taken back; the compiler says where one is missing. */
const INVERSES: { readonly [K in ActKind]: Inverse<K> } = {
  greetingEnded: undoGreeting,
  childrenAdded: undoAdding,
  childArchived: undoArchive,
  childMoved: undoMove,
  bookChanged: undoBookChange,
  bookPutAway: undoPuttingAway,
  pagesSet: undoPages,
  proposalAccepted: undoProposal,
  planUsed: undoActivation,
  draftReplaced: undoLoading,
  termChanged: undoTermChange,
  termWeekRemoved: undoWeekRemoval,
  breaksAdded: undoBreaks,
  breakRemoved: undoBreakRemoval,
  classArchived: undoArchiving,
  teacherRemoved: undoRemoval,
};

/** What became of an Undo: `again` says that it had been taken back before, and nothing was changed now. */
export interface Undone {
  readonly classId: string;
  readonly act: StoredAct;
  readonly again: boolean;
}

/**
 * Takes back what a teacher did, once and for a day. Every teacher of its class may, as long as they teach it: a class is the
 * work of its teachers together. Another class's act is `not_found`, one older than a day `expired`, and where the world has
 * moved on the inverse says `conflict`; nothing is changed then.
 */
export async function undoAct(
  store: Store,
  input: { teacherId: string; actId: string; now: Date },
): Promise<Undone> {
  const { teacherId: by, actId, now } = input;
  return inTransaction(store, async (inner) => {
    // Locked, so that two taps take it back once.
    const [row] = await inner.db
      .select({ act })
      .from(act)
      .innerJoin(
        classTeacher,
        and(eq(classTeacher.classId, act.classId), eq(classTeacher.teacherId, by)),
      )
      .where(eq(act.id, actId))
      .for('update', { of: act });
    const stored = row && storedAct(row.act);
    if (!row || !stored) throw new AppError('not_found', 'act');
    const { classId, teacherId, createdAt, undoneAt } = row.act;
    if (undoneAt) return { classId, act: stored, again: true };
    // Nothing else of an archived class is changed before the class is back.
    if (stored.kind !== 'classArchived') await getClass(inner, { classId, teacherId: by });
    if (createdAt.getTime() + UNDO_MS <= now.getTime()) throw new AppError('expired', 'act');
    await invert(inner, stored, { classId, teacherId, by }, now);
    await inner.db.update(act).set({ undoneAt: now }).where(eq(act.id, actId));
    return { classId, act: stored, again: false };
  });
}

async function invert<K extends ActKind>(
  inner: Store,
  stored: Extract<StoredAct, { kind: K }>,
  who: Omit<ActToUndo<K>, 'before'>,
  now: Date,
): Promise<void> {
  const inverse: Inverse<K> = INVERSES[stored.kind as K];
  await inverse(inner, { ...who, before: stored.before } as ActToUndo<K>, now);
}
