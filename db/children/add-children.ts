import { and, eq, isNull } from 'drizzle-orm';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { child } from '../schema/index.ts';
import { nextNumber } from './class-places.ts';
import { MAX_CHILDREN } from './class-size.ts';

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
    await lockClass(inner, scope.classId);
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
    const first = await nextNumber(inner, scope.classId);
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
