import { eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { teacher } from '../schema/index.ts';

/** A teacher as the bot needs it. */
export interface Teacher {
  readonly id: string;
  readonly chatId: number;
}

/** The teacher behind a chat account, or null. */
export async function findTeacherByChat(store: Store, chatId: number): Promise<Teacher | null> {
  const [row] = await store.db
    .select({ id: teacher.id, chatId: teacher.chatId })
    .from(teacher)
    .where(eq(teacher.chatId, chatId));
  return row ?? null;
}

/** Whether anybody is a teacher yet; if not, the operator is shown an invitation at start. */
export async function hasTeachers(store: Store): Promise<boolean> {
  const rows = await store.db.select({ id: teacher.id }).from(teacher).limit(1);
  return rows.length > 0;
}
