import { and, asc, eq, isNull, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { child, evening, helperChild, partScore, schoolClass } from '../schema/index.ts';
import type { HelperScope } from './get-evening.ts';
import { isOwn } from './own-evening.ts';

/** One child's turn on an evening: not begun, under way, or over: marked, put off, or stopped for today. */
export interface ChildTurn {
  readonly eveningId: string;
  readonly nickname: string;
  readonly state: 'waiting' | 'under_way' | 'over';
}

/**
 * The evenings that a helper has on the day of this one, this one too, in turn: as they were planned, and those of one moment
 * by the numbers of the class list; only those of the same bot, which alone can lead from one to the other. An evening that is not the helper's is `not_found`.
 */
export async function listTurns(store: Store, scope: HelperScope): Promise<ChildTurn[]> {
  const [own] = await store.db
    .select({ day: evening.day, botId: schoolClass.botId })
    .from(evening)
    .innerJoin(schoolClass, eq(schoolClass.id, evening.classId))
    .innerJoin(helperChild, eq(helperChild.childId, evening.childId))
    .where(isOwn(scope));
  if (!own) throw new AppError('not_found', 'evening');
  const marked = sql`(select count(*) from ${partScore} where ${partScore.eveningId} = ${evening.id})`;
  const parts = sql`jsonb_array_length(${evening.drill} -> 'parts')`;
  return store.db
    .select({
      eveningId: evening.id,
      nickname: child.nickname,
      state: sql<ChildTurn['state']>`case
        when ${evening.declinedAt} is not null or ${evening.stoppedAt} is not null or ${marked} >= ${parts} then 'over'
        when ${evening.startedAt} is not null then 'under_way'
        else 'waiting' end`,
    })
    .from(evening)
    .innerJoin(helperChild, eq(helperChild.childId, evening.childId))
    .innerJoin(child, eq(child.id, evening.childId))
    .innerJoin(schoolClass, eq(schoolClass.id, evening.classId))
    .where(
      and(
        eq(helperChild.helperId, scope.helperId),
        isNull(helperChild.leftAt),
        isNull(child.archivedAt),
        isNull(schoolClass.archivedAt),
        eq(evening.day, own.day),
        eq(schoolClass.botId, own.botId),
      ),
    )
    .orderBy(asc(evening.createdAt), asc(child.number), asc(evening.id));
}
