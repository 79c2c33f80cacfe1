import { and, eq, isNotNull, isNull } from 'drizzle-orm';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { child } from '../schema/index.ts';
import { type ListedChild, listChildren } from './list-children.ts';

/** The child with this roster number, with how many helpers it has; `not_found` for one that is archived or not in the class. */
export async function getChild(
  store: Store,
  scope: TeacherScope,
  number: number,
): Promise<ListedChild> {
  const found = (await listChildren(store, scope)).find((row) => row.number === number);
  if (!found) throw new AppError('not_found', 'child');
  return found;
}

/** A child's own row, locked inside the caller's transaction, so that two changes to it wait for each other. */
export async function lockChild(
  inner: Store,
  scope: TeacherScope,
  which: { number: number; archived: boolean },
) {
  await getClass(inner, scope);
  const [row] = await inner.db
    .select()
    .from(child)
    .where(
      and(
        eq(child.classId, scope.classId),
        eq(child.number, which.number),
        which.archived ? isNotNull(child.archivedAt) : isNull(child.archivedAt),
        isNull(child.erasingSince),
      ),
    )
    .for('update');
  if (!row) throw new AppError('not_found', 'child');
  return row;
}
