import { and, desc, eq, gt, isNull, or, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { act, child, classTeacher, schoolClass } from '../schema/index.ts';
import { type StoredAct, storedAct } from './act-kinds.ts';

/** How long something can be taken back: a day. */
export const UNDO_MS = 24 * 60 * 60_000;

/** Something that a teacher did, in words a screen can be made of. */
export type KeptAct = StoredAct & {
  readonly id: string;
  readonly classId: string;
  readonly classTitle: string;
  readonly zone: string;
  /** The child it is about, by the nickname it has now; null when it is about no single child. */
  readonly nickname: string | null;
  readonly at: Date;
};

/** What may still be taken back in the classes that a teacher teaches now, newest first, whoever of their teachers did it. */
export async function listActs(
  store: Store,
  input: { teacherId: string; now: Date },
): Promise<KeptAct[]> {
  const rows = await store.db
    .select({
      id: act.id,
      classId: act.classId,
      classTitle: schoolClass.title,
      zone: schoolClass.zone,
      kind: act.kind,
      before: act.before,
      nickname: child.nickname,
      at: act.createdAt,
    })
    .from(act)
    .innerJoin(
      classTeacher,
      and(eq(classTeacher.classId, act.classId), eq(classTeacher.teacherId, input.teacherId)),
    )
    .innerJoin(schoolClass, eq(schoolClass.id, act.classId))
    .leftJoin(child, sql`${child.id}::text = ${act.before}->>'childId'`)
    .where(
      and(
        isNull(act.undoneAt),
        gt(act.createdAt, new Date(input.now.getTime() - UNDO_MS)),
        // Of an archived class the archiving alone is taken back; the rest when the class is there again.
        or(isNull(schoolClass.archivedAt), eq(act.kind, 'classArchived')),
      ),
    )
    .orderBy(desc(act.createdAt), desc(act.id));
  return rows.flatMap(({ kind, before, ...row }) => {
    const stored = storedAct({ kind, before });
    return stored ? [{ ...row, ...stored }] : [];
  });
}
