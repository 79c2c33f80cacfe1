import { and, eq, isNotNull, isNull, ne } from 'drizzle-orm';
import type { ActToUndo } from '../acts/act-kinds.ts';
import { keepAct } from '../acts/keep-act.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { note } from '../schema/index.ts';
import { greetingOf } from './greeting.ts';

/**
 * Takes the greeting out of use at once; what is still waiting to be sent does not go out any more. Returns the act that takes
 * it back. A greeting that is not in use any more is `not_found`.
 */
export async function removeGreeting(
  store: Store,
  scope: TeacherScope,
  input: { greetingId: string; now: Date },
): Promise<string> {
  const { greetingId: noteId, now } = input;
  return inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    await lockClass(inner, scope.classId);
    const removed = await inner.db
      .update(note)
      .set({ removedAt: now })
      .where(and(eq(note.id, noteId), eq(note.classId, scope.classId), isNull(note.removedAt)))
      .returning({ id: note.id });
    if (removed.length === 0) throw new AppError('not_found', 'greeting');
    return keepAct(inner, scope, { kind: 'greetingEnded', before: { noteId, nextId: null }, now });
  });
}

/**
 * Puts a greeting that was removed or replaced back in use, with the days it had; the one that took its place gives way. A
 * `conflict` when yet another is in use, or when its words have been deleted.
 */
export async function undoGreeting(
  inner: Store,
  { classId, before }: ActToUndo<'greetingEnded'>,
  now: Date,
): Promise<void> {
  await lockClass(inner, classId);
  const inUse = await greetingOf(inner, classId);
  if (inUse && inUse.id !== before.nextId) throw new AppError('conflict', 'undo');
  if (inUse) await inner.db.update(note).set({ removedAt: now }).where(eq(note.id, inUse.id));
  const back = await inner.db
    .update(note)
    .set({ removedAt: null })
    .where(
      and(
        eq(note.id, before.noteId),
        eq(note.classId, classId),
        isNotNull(note.removedAt),
        ne(note.body, ''),
      ),
    )
    .returning({ id: note.id });
  if (back.length === 0) throw new AppError('conflict', 'undo');
}
