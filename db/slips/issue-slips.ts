import { and, asc, eq, inArray, isNull } from 'drizzle-orm';
import type { RosterChild } from '../children/add-children.ts';
import { listChildren } from '../children/list-children.ts';
import type { TeacherScope } from '../classes/get-class.ts';
import { hashCode, newCode } from '../codes.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { child, slip } from '../schema/index.ts';

/** How often a slip may be used (two parents, an older sister and one to spare) and how long. */
export const SLIP_LIMITS = { uses: 4, days: 60 } as const;

/** A child with the code of its fresh slip. The code exists here and on paper; the database keeps a hash. */
export interface IssuedSlip {
  readonly child: RosterChild;
  readonly code: string;
}

/**
 * Writes a code for each child named, and stores nothing: the codes open nothing yet, and the children's earlier slips still
 * do. {@link keepSlips} puts them in force, once they are in somebody's hands.
 */
export async function writeSlips(
  store: Store,
  scope: TeacherScope,
  childIds: readonly string[],
): Promise<IssuedSlip[]> {
  const children = await listChildren(store, scope);
  return [...new Set(childIds)].map((childId) => {
    const found = children.find((row) => row.id === childId);
    if (!found) throw new AppError('not_found', 'child');
    const { id, number, nickname } = found;
    return { child: { id, number, nickname }, code: newCode() };
  });
}

/** Puts written slips in force. The children's earlier slips die at once. */
export async function keepSlips(
  store: Store,
  scope: TeacherScope,
  input: { slips: readonly IssuedSlip[]; now: Date },
): Promise<void> {
  const childIds = input.slips.map((written) => written.child.id);
  await inTransaction(store, async (inner) => {
    // Locked, so that slips issued twice at once die like any earlier ones.
    await inner.db
      .select({ id: child.id })
      .from(child)
      .where(and(eq(child.classId, scope.classId), inArray(child.id, childIds)))
      .orderBy(asc(child.id))
      .for('update');
    const children = await listChildren(inner, scope);
    if (!childIds.every((id) => children.some((row) => row.id === id))) {
      throw new AppError('not_found', 'child');
    }
    if (childIds.length === 0) return;
    await inner.db
      .update(slip)
      .set({ revokedAt: input.now })
      .where(and(inArray(slip.childId, childIds), isNull(slip.revokedAt)));
    await inner.db.insert(slip).values(
      input.slips.map(({ child: { id }, code }) => ({
        id: newId(input.now),
        childId: id,
        classId: scope.classId,
        codeHash: hashCode(code),
        usesLeft: SLIP_LIMITS.uses,
        expiresAt: new Date(input.now.getTime() + SLIP_LIMITS.days * 86_400_000),
        createdAt: input.now,
      })),
    );
  });
}

/** Writes one slip for each child named and puts it in force. A child's earlier slips die at once. */
export async function issueSlips(
  store: Store,
  scope: TeacherScope,
  input: { childIds: readonly string[]; now: Date },
): Promise<IssuedSlip[]> {
  const slips = await writeSlips(store, scope, input.childIds);
  await keepSlips(store, scope, { slips, now: input.now });
  return slips;
}
