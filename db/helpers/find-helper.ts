import { and, asc, eq, isNull } from 'drizzle-orm';
import type { TimeOfDay } from '../../drills/index.ts';
import { type SchoolClass, storedTime, toSchoolClass } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { child, helper, helperChild, schoolClass } from '../schema/index.ts';

/** A helper as the bot needs it. */
export interface Helper {
  readonly id: string;
  readonly chatId: number;
}

/** A child as its own helper sees it. */
export interface FamilyChild {
  readonly id: string;
  readonly nickname: string;
  readonly eveningTime: TimeOfDay;
  readonly schoolClass: SchoolClass;
}

/** The helper behind a chat account, or null. */
export async function findHelperByChat(store: Store, chatId: number): Promise<Helper | null> {
  const [row] = await store.db
    .select({ id: helper.id, chatId: helper.chatId })
    .from(helper)
    .where(eq(helper.chatId, chatId));
  return row ?? null;
}

/** The children a helper sits beside now, in the order joined. */
export async function listFamilyChildren(store: Store, helperId: string): Promise<FamilyChild[]> {
  const rows = await store.db
    .select({ child, schoolClass })
    .from(helperChild)
    .innerJoin(child, eq(child.id, helperChild.childId))
    .innerJoin(schoolClass, eq(schoolClass.id, child.classId))
    .where(
      and(
        eq(helperChild.helperId, helperId),
        isNull(helperChild.leftAt),
        isNull(child.archivedAt),
        isNull(schoolClass.archivedAt),
      ),
    )
    .orderBy(asc(helperChild.joinedAt), asc(child.number));
  return rows.map((row) => ({
    id: row.child.id,
    nickname: row.child.nickname,
    eveningTime: storedTime(row.child.eveningTime ?? row.schoolClass.eveningTime),
    schoolClass: toSchoolClass(row.schoolClass),
  }));
}
