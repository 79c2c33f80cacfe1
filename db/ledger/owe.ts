import { and, eq, isNull } from 'drizzle-orm';
import type { SchoolDay } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { classTeacher, helper, helperChild, ledger, teacher } from '../schema/index.ts';

/** A kind of message the engine sends by itself. */
export type LedgerKind = (typeof ledger.$inferSelect)['kind'];

/** A message owed to each recipient of a subject. */
export interface Owed {
  readonly kind: LedgerKind;
  /** The child an evening is for, or the class a digest is about. */
  readonly subjectId: string;
  readonly classId: string;
  readonly day: SchoolDay;
  readonly eveningId: string | null;
  /** Sent after another message to the same person (see {@link findFollower}); it gets no job of its own. */
  readonly follows?: boolean;
  readonly notBefore: Date;
  readonly expiresAt: Date;
}

/** Owes a message to every helper of a child that the chat service reaches. Inside the caller's transaction. */
export async function oweHelpers(store: Store, owed: Owed, now: Date): Promise<number> {
  const rows = await store.db
    .select({ id: helper.id })
    .from(helperChild)
    .innerJoin(helper, eq(helper.id, helperChild.helperId))
    .where(
      and(
        eq(helperChild.childId, owed.subjectId),
        isNull(helperChild.leftAt),
        isNull(helper.unreachableAt),
      ),
    );
  return owe(store, owed, 'helper', rows, now);
}

/** Owes a message to every teacher of a class that the chat service reaches. Inside the caller's transaction. */
export async function oweTeachers(store: Store, owed: Owed, now: Date): Promise<number> {
  const rows = await store.db
    .select({ id: teacher.id })
    .from(classTeacher)
    .innerJoin(teacher, eq(teacher.id, classTeacher.teacherId))
    .where(and(eq(classTeacher.classId, owed.classId), isNull(teacher.unreachableAt)));
  return owe(store, owed, 'teacher', rows, now);
}

/** Writes the rows and their jobs together. The unique key makes a second call owe nothing. */
async function owe(
  store: Store,
  { follows = false, ...owed }: Owed,
  recipientKind: 'helper' | 'teacher',
  recipients: readonly { id: string }[],
  now: Date,
): Promise<number> {
  if (recipients.length === 0) return 0;
  const written = await store.db
    .insert(ledger)
    .values(
      recipients.map((recipient) => ({
        ...owed,
        id: newId(now),
        recipientKind,
        recipientId: recipient.id,
        status: 'planned' as const,
        enqueuedAt: now,
      })),
    )
    .onConflictDoNothing()
    .returning({ id: ledger.id });
  const ids = written.map((row) => row.id);
  if (!follows) await store.queue.enqueue(store.db, ids);
  return written.length;
}
