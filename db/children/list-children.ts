import { and, asc, eq, isNull, sql } from 'drizzle-orm';
import type { TimeOfDay } from '../../drills/index.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { storedTime } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { isReached } from '../helpers/reachability.ts';
import { child, helper, helperChild, schoolClass } from '../schema/index.ts';
import type { RosterChild } from './add-children.ts';

/** A child with how many helpers it has now, and how many of them the chat service still reaches. Never who they are. */
export interface ListedChild extends RosterChild {
  readonly helpers: number;
  readonly reachable: number;
  /** Whether it had a helper and has none any more: that is another thing than a family that never joined. */
  readonly left: boolean;
  readonly eveningTime: TimeOfDay | null;
}

/** The children of a class by roster number. */
export async function listChildren(store: Store, scope: TeacherScope): Promise<ListedChild[]> {
  await getClass(store, scope);
  return childrenOfClass(store, scope.classId);
}

/** The same list for the engine's own work. */
export async function childrenOfClass(store: Store, classId: string): Promise<ListedChild[]> {
  const present = isNull(helperChild.leftAt);
  const rows = await store.db
    .select({
      id: child.id,
      number: child.number,
      nickname: child.nickname,
      eveningTime: child.eveningTime,
      helpers: sql<number>`(count(${helper.id}) filter (where ${present}))::int`,
      reachable: sql<number>`(count(${helper.id}) filter (where ${and(present, isReached(store, helper.chatId, schoolClass.botId))}))::int`,
      ever: sql<number>`count(${helper.id})::int`,
    })
    .from(child)
    .innerJoin(schoolClass, eq(schoolClass.id, child.classId))
    .leftJoin(helperChild, eq(helperChild.childId, child.id))
    .leftJoin(helper, eq(helper.id, helperChild.helperId))
    .where(and(eq(child.classId, classId), isNull(child.archivedAt)))
    .groupBy(child.id)
    .orderBy(asc(child.number));
  return rows.map(({ ever, ...row }) => ({
    ...row,
    left: row.helpers === 0 && ever > 0,
    eveningTime: row.eveningTime === null ? null : storedTime(row.eveningTime),
  }));
}
