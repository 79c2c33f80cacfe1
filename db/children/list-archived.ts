import { and, asc, eq, isNotNull, isNull } from 'drizzle-orm';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { child } from '../schema/index.ts';
import type { RosterChild } from './add-children.ts';

/** The archived children of a class by roster number, but those that are being erased. */
export async function listArchived(store: Store, scope: TeacherScope): Promise<RosterChild[]> {
  await getClass(store, scope);
  return store.db
    .select({ id: child.id, number: child.number, nickname: child.nickname })
    .from(child)
    .where(
      and(
        eq(child.classId, scope.classId),
        isNotNull(child.archivedAt),
        isNull(child.erasingSince),
      ),
    )
    .orderBy(asc(child.number));
}
