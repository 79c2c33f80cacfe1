import { and, eq, isNull } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { child, helper, helperChild, schoolClass } from '../schema/index.ts';

/** What a message about a whole class says to one chat: the class as it is now, and the children whom this chat helps there. */
export interface ClassNewsView {
  readonly title: string;
  readonly isArchived: boolean;
  readonly nicknames: readonly string[];
}

/** Reads what a message about a class says, archived or not: for the engine's own work on ledger rows. Null without a class. */
export async function readClassNews(
  store: Store,
  { classId, chatId }: { classId: string; chatId: number },
): Promise<ClassNewsView | null> {
  const [row] = await store.db
    .select({ title: schoolClass.title, archivedAt: schoolClass.archivedAt })
    .from(schoolClass)
    .where(eq(schoolClass.id, classId));
  if (!row) return null;
  const children = await store.db
    .select({ nickname: child.nickname })
    .from(helperChild)
    .innerJoin(helper, eq(helper.id, helperChild.helperId))
    .innerJoin(child, eq(child.id, helperChild.childId))
    .where(
      and(
        eq(helper.chatId, chatId),
        eq(child.classId, classId),
        isNull(helperChild.leftAt),
        isNull(child.archivedAt),
      ),
    )
    .orderBy(child.number);
  return {
    title: row.title,
    isArchived: row.archivedAt !== null,
    nicknames: children.map(({ nickname }) => nickname),
  };
}
