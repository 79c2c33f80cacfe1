import { and, eq, isNull, max } from 'drizzle-orm';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { child } from '../schema/index.ts';

/** Most children a class may have. */
export const MAX_CHILDREN = 60;

/** A child as a teacher names it. */
export interface RosterChild {
  readonly id: string;
  readonly number: number;
  readonly nickname: string;
}

/**
 * Adds children in the order given, numbered after those already there. All or none: a nickname that the class has
 * already, or that comes twice, is a `conflict`, and more than {@link MAX_CHILDREN} children are `invalid`.
 */
export async function addChildren(
  store: Store,
  scope: TeacherScope,
  input: { nicknames: readonly string[]; now: Date },
): Promise<RosterChild[]> {
  return inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    const [last] = await inner.db
      .select({ number: max(child.number) })
      .from(child)
      .where(eq(child.classId, scope.classId));
    const present = await inner.db
      .select({ nickname: child.nickname })
      .from(child)
      .where(and(eq(child.classId, scope.classId), isNull(child.archivedAt)));
    if (present.length + input.nicknames.length > MAX_CHILDREN) {
      throw new AppError('invalid', 'number of children');
    }
    const names = [...present.map((row) => row.nickname), ...input.nicknames];
    if (new Set(names.map((name) => name.toLowerCase())).size < names.length) {
      throw new AppError('conflict', 'nickname');
    }
    const first = (last?.number ?? 0) + 1;
    const added = input.nicknames.map((nickname, index) => ({
      id: newId(input.now),
      number: first + index,
      nickname,
    }));
    if (added.length > 0) {
      await inner.db
        .insert(child)
        .values(added.map((row) => ({ ...row, classId: scope.classId, createdAt: input.now })));
    }
    return added;
  });
}
