import { and, asc, eq, exists, isNull, notExists, sql } from 'drizzle-orm';
import type { SchoolDay, TimeOfDay } from '../../drills/index.ts';
import { storedTime } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { child, evening, helper, helperChild, schoolClass } from '../schema/index.ts';

/** A child whose evening is due. `eveningTime` is the family's own, or the class's. */
export interface DueChild {
  readonly id: string;
  readonly eveningTime: TimeOfDay;
}

/**
 * Children of a class with no evening on `day` yet, whose time lies in (`after`, `until`] and who have a helper the chat
 * service reaches. `HH:MM` compares as text.
 */
export async function listDueChildren(
  store: Store,
  input: { classId: string; day: SchoolDay; after: TimeOfDay | null; until: TimeOfDay },
): Promise<DueChild[]> {
  const time = sql<string>`coalesce(${child.eveningTime}, ${schoolClass.eveningTime})`;
  const helpers = store.db
    .select({ one: sql`1` })
    .from(helperChild)
    .innerJoin(helper, eq(helper.id, helperChild.helperId))
    .where(
      and(
        eq(helperChild.childId, child.id),
        isNull(helperChild.leftAt),
        isNull(helper.unreachableAt),
      ),
    );
  const planned = store.db
    .select({ one: sql`1` })
    .from(evening)
    .where(and(eq(evening.childId, child.id), eq(evening.day, input.day)));
  const rows = await store.db
    .select({ id: child.id, eveningTime: time })
    .from(child)
    .innerJoin(schoolClass, eq(schoolClass.id, child.classId))
    .where(
      and(
        eq(child.classId, input.classId),
        isNull(child.archivedAt),
        sql`${time} <= ${input.until}`,
        input.after === null ? undefined : sql`${time} > ${input.after}`,
        exists(helpers),
        notExists(planned),
      ),
    )
    .orderBy(asc(child.number));
  return rows.map((row) => ({ id: row.id, eveningTime: storedTime(row.eveningTime) }));
}
