import { and, eq, inArray, isNull, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { callOff } from '../ledger/call-off.ts';
import { child, consent, helperChild, ledger } from '../schema/index.ts';
import { revokeShared } from '../slips/share-slip.ts';

/**
 * Ends a helper's part with all children at once and records the agreement as withdrawn. What is still waiting to be sent to
 * the helper is called off, and links it passed on stop working. Returns how many children.
 */
export async function leaveAll(
  store: Store,
  input: { helperId: string; now: Date },
): Promise<number> {
  return (await leave(store, input)).length;
}

/**
 * Ends a helper's part with one of its children as {@link leaveAll} does; the others go on. Returns the child's nickname. A
 * child the helper has left, or that is not its own, is `not_found`.
 *
 * @example
 * await leaveChild(store, { helperId, childId, now }); // 'Wren'
 */
export async function leaveChild(
  store: Store,
  input: { helperId: string; childId: string; now: Date },
): Promise<string> {
  const [left] = await leave(store, input);
  if (!left) throw new AppError('not_found', 'child');
  const [row] = await store.db
    .select({ nickname: child.nickname })
    .from(child)
    .where(eq(child.id, left));
  return row?.nickname ?? '';
}

async function leave(
  store: Store,
  { helperId, childId, now }: { helperId: string; childId?: string; now: Date },
): Promise<string[]> {
  return inTransaction(store, async (inner) => {
    const { db } = inner;
    const left = await db
      .update(helperChild)
      .set({ leftAt: now })
      .where(
        and(
          eq(helperChild.helperId, helperId),
          childId === undefined ? undefined : eq(helperChild.childId, childId),
          isNull(helperChild.leftAt),
        ),
      )
      .returning({ childId: helperChild.childId });
    const children = left.map((row) => row.childId);
    await db
      .update(consent)
      .set({ withdrawnAt: now })
      .where(
        and(
          eq(consent.helperId, helperId),
          inArray(consent.childId, children),
          isNull(consent.withdrawnAt),
        ),
      );
    const about = inArray(ledger.subjectId, [...children, ...(await classesLeft(inner, helperId))]);
    const which = [eq(ledger.recipientId, helperId), about] as const;
    await callOff(inner, { which, because: 'left', now });
    await revokeShared(inner, { helperId, childIds: children, now });
    return children;
  });
}

/** The classes in which a helper sits beside no child any more: what is owed about them concerns it no longer. */
async function classesLeft(inner: Store, helperId: string): Promise<string[]> {
  const rows = await inner.db
    .select({ classId: child.classId })
    .from(helperChild)
    .innerJoin(child, eq(child.id, helperChild.childId))
    .where(eq(helperChild.helperId, helperId))
    .groupBy(child.classId)
    .having(sql`bool_and(${helperChild.leftAt} is not null)`);
  return rows.map(({ classId }) => classId);
}
