import { and, eq, inArray, isNull, notExists, or, type SQL, sql } from 'drizzle-orm';
import type { AnyPgColumn } from 'drizzle-orm/pg-core';
import { lookAgain } from '../classes/look-again.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import {
  child,
  classTeacher,
  helper,
  helperChild,
  schoolClass,
  teacher,
  unreachable,
} from '../schema/index.ts';

/** A person's private chat with one of our bots. */
export interface BotChat {
  readonly botId: number;
  readonly chatId: number;
}

/** Notes that a bot cannot write to a chat (blocked, deleted, never opened); planners pass it over until it comes back. */
export async function markUnreachable(store: Store, chat: BotChat, now: Date): Promise<void> {
  const { botId, chatId } = chat;
  await store.db.insert(unreachable).values({ botId, chatId, since: now }).onConflictDoNothing();
}

/** Notes that a bot can write to a chat again: what its owner's classes owe it is looked at anew. */
export async function markReachable(store: Store, { botId, chatId }: BotChat): Promise<void> {
  const chat = and(eq(unreachable.botId, botId), eq(unreachable.chatId, chatId));
  const [known] = await store.db.select({ one: sql`1` }).from(unreachable).where(chat);
  if (!known) return;
  await inTransaction(store, async (inner) => {
    await lookAgain(
      inner,
      or(
        inArray(schoolClass.id, helped(inner, chatId)),
        inArray(schoolClass.id, taught(inner, chatId)),
      ),
    );
    await inner.db.delete(unreachable).where(chat);
  });
}

function helped({ db }: Store, chatId: number) {
  return db
    .select({ id: child.classId })
    .from(child)
    .innerJoin(helperChild, and(eq(helperChild.childId, child.id), isNull(helperChild.leftAt)))
    .innerJoin(helper, eq(helper.id, helperChild.helperId))
    .where(eq(helper.chatId, chatId));
}

function taught({ db }: Store, chatId: number) {
  return db
    .select({ id: classTeacher.classId })
    .from(classTeacher)
    .innerJoin(teacher, eq(teacher.id, classTeacher.teacherId))
    .where(eq(teacher.chatId, chatId));
}

/** Inside a query: that the bot reaches the chat, as far as we know. */
export function isReached({ db }: Store, chatId: AnyPgColumn, botId: AnyPgColumn): SQL {
  return notExists(
    db
      .select({ one: sql`1` })
      .from(unreachable)
      .where(and(eq(unreachable.chatId, chatId), eq(unreachable.botId, botId))),
  );
}
