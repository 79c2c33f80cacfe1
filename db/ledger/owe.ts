import { and, eq, isNull } from 'drizzle-orm';
import type { SchoolDay } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { AppError } from '../errors.ts';
import { isReached } from '../helpers/reachability.ts';
import {
  child,
  classTeacher,
  helper,
  helperChild,
  ledger,
  schoolClass,
  teacher,
} from '../schema/index.ts';
import { priorityOf } from './priority.ts';

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
  /** Which recipients get it after another message (see {@link findFollowers}), all or these: it gets no job of its own there. */
  readonly follows?: 'all' | ReadonlySet<string>;
  readonly notBefore: Date;
  readonly expiresAt: Date;
}

/** Owes a message to every helper of a child that the chat service reaches. Inside the caller's transaction. */
export async function oweHelpers(store: Store, owed: Owed, now: Date): Promise<number> {
  const helpers = await reachableHelpers(store, owed.subjectId);
  return oweRecipients(store, owed, { kind: 'helper', ids: helpers.map(({ id }) => id) }, now);
}

/** The helpers of a child that the chat service reaches, always in the same order. */
export async function reachableHelpers(store: Store, childId: string): Promise<{ id: string }[]> {
  return store.db
    .select({ id: helper.id })
    .from(helperChild)
    .innerJoin(helper, eq(helper.id, helperChild.helperId))
    .innerJoin(child, eq(child.id, helperChild.childId))
    .innerJoin(schoolClass, eq(schoolClass.id, child.classId))
    .where(
      and(
        eq(helperChild.childId, childId),
        isNull(helperChild.leftAt),
        isReached(store, helper.chatId, schoolClass.botId),
      ),
    )
    .orderBy(helper.id);
}

/** Owes a message to every teacher of a class that the chat service reaches. Inside the caller's transaction. */
export async function oweTeachers(store: Store, owed: Owed, now: Date): Promise<number> {
  const ids = await reachableTeachers(store, owed.classId);
  return oweRecipients(store, owed, { kind: 'teacher', ids }, now);
}

/** The teachers of a class that the chat service reaches. */
export async function reachableTeachers(store: Store, classId: string): Promise<string[]> {
  const rows = await store.db
    .select({ id: teacher.id })
    .from(classTeacher)
    .innerJoin(teacher, eq(teacher.id, classTeacher.teacherId))
    .innerJoin(schoolClass, eq(schoolClass.id, classTeacher.classId))
    .where(
      and(eq(classTeacher.classId, classId), isReached(store, teacher.chatId, schoolClass.botId)),
    );
  return rows.map(({ id }) => id);
}

/** Writes the rows and their jobs together, for the class's bot. The unique key makes a second call owe nothing. Inside the caller's transaction. */
export async function oweRecipients(
  store: Store,
  { follows = new Set(), ...owed }: Owed,
  to: { readonly kind: 'helper' | 'teacher'; readonly ids: readonly string[] },
  now: Date,
): Promise<number> {
  if (to.ids.length === 0) return 0;
  const botId = await botOf(store, owed.classId);
  const written = await store.db
    .insert(ledger)
    .values(
      to.ids.map((recipientId) => ({
        ...owed,
        botId,
        id: newId(now),
        recipientKind: to.kind,
        recipientId,
        status: 'planned' as const,
        enqueuedAt: now,
      })),
    )
    .onConflictDoNothing()
    .returning({ id: ledger.id, recipientId: ledger.recipientId });
  const ids = written.flatMap((row) =>
    follows === 'all' || follows.has(row.recipientId) ? [] : [row.id],
  );
  await store.queue.enqueue(
    store.db,
    ids.map((ledgerId) => ({ ledgerId, botId, priority: priorityOf(owed.kind) })),
  );
  return written.length;
}

async function botOf(store: Store, classId: string): Promise<number> {
  const [row] = await store.db
    .select({ botId: schoolClass.botId })
    .from(schoolClass)
    .where(eq(schoolClass.id, classId));
  if (!row) throw new AppError('not_found', 'class');
  return row.botId;
}
