import { and, asc, eq, isNull, min, notExists, sql } from 'drizzle-orm';
import type { SchoolDay, TimeOfDay } from '../../drills/index.ts';
import { storedTime } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { isReached } from '../helpers/reachability.ts';
import { keepDue } from '../pace/keep-due.ts';
import { child, evening, helper, helperChild, schoolClass } from '../schema/index.ts';

/** A child whose evening is due. `eveningTime` is the family's own, or the class's. */
export interface DueChild {
  readonly id: string;
  readonly eveningTime: TimeOfDay;
  /**
   * Since when this evening was to be expected: the latest of when the class's days and times and the family's own time were
   * last changed, when the first of its helpers joined, and when something was said about its pace. An evening whose time came
   * before was promised to nobody.
   */
  readonly since: Date;
}

/**
 * Children of a class with no evening on `day` yet, whose time lies in (`after`, `until`] and who have a helper the chat
 * service reaches, and to whom the drill comes that day at their family's pace. `HH:MM` compares as text.
 */
export async function listDueChildren(
  store: Store,
  input: { classId: string; day: SchoolDay; after: TimeOfDay | null; until: TimeOfDay },
): Promise<DueChild[]> {
  const time = sql<string>`coalesce(${child.eveningTime}, ${schoolClass.eveningTime})`;
  // A family without a time of its own has no instant for it; `greatest` passes over what is null.
  const since = sql`greatest(${schoolClass.timesSince}, ${child.timeSince}, ${min(helperChild.joinedAt)})`;
  const planned = store.db
    .select({ one: sql`1` })
    .from(evening)
    .where(and(eq(evening.childId, child.id), eq(evening.day, input.day)));
  const rows = await store.db
    .select({ id: child.id, eveningTime: time, since: since.mapWith(schoolClass.timesSince) })
    .from(child)
    .innerJoin(schoolClass, eq(schoolClass.id, child.classId))
    .innerJoin(helperChild, and(eq(helperChild.childId, child.id), isNull(helperChild.leftAt)))
    .innerJoin(helper, eq(helper.id, helperChild.helperId))
    .where(
      and(
        eq(child.classId, input.classId),
        isNull(child.archivedAt),
        isReached(store, helper.chatId, schoolClass.botId),
        sql`${time} <= ${input.until}`,
        input.after === null ? undefined : sql`${time} > ${input.after}`,
        notExists(planned),
      ),
    )
    .groupBy(child.id, schoolClass.id)
    .orderBy(asc(child.number));
  const due = rows.map((row) => ({ ...row, eveningTime: storedTime(row.eveningTime) }));
  return keepDue(store, due, input);
}
