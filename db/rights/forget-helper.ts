import { and, eq, notExists, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import {
  chatRate,
  codeMiss,
  consent,
  dataUsed,
  erasure,
  expectation,
  helper,
  helperChild,
  inbox,
  ledger,
  mark,
  runResult,
  slip,
  teacher,
  unreachable,
} from '../schema/index.ts';

/**
 * Deletes those helpers who sit beside no child and never gave a mark that is still kept, with the chat account and all that
 * the account left behind. What belongs to the same account as a teacher stays.
 */
export async function forgetHelpers(
  inner: Store,
  helperIds: readonly string[],
  now: Date,
): Promise<number> {
  let forgotten = 0;
  for (const id of helperIds) forgotten += (await forgetHelper(inner, id, now)) ? 1 : 0;
  return forgotten;
}

async function forgetHelper({ db }: Store, id: string, now: Date): Promise<boolean> {
  const one = { one: sql`1` };
  const [gone] = await db
    .select({ chatId: helper.chatId, teacherId: teacher.id })
    .from(helper)
    .leftJoin(teacher, eq(teacher.chatId, helper.chatId))
    .where(
      and(
        eq(helper.id, id),
        notExists(db.select(one).from(helperChild).where(eq(helperChild.helperId, id))),
        notExists(db.select(one).from(mark).where(eq(mark.helperId, id))),
        notExists(db.select(one).from(runResult).where(eq(runResult.helperId, id))),
      ),
    );
  if (!gone) return false;
  await db.delete(consent).where(eq(consent.helperId, id));
  await db.delete(ledger).where(eq(ledger.recipientId, id));
  await db.delete(dataUsed).where(eq(dataUsed.helperId, id));
  await db.delete(slip).where(eq(slip.sharedBy, id));
  await db.delete(helper).where(eq(helper.id, id));
  await db.delete(chatRate).where(eq(chatRate.chatId, gone.chatId));
  if (gone.teacherId === null) {
    await db.delete(expectation).where(eq(expectation.chatId, gone.chatId));
    await db.delete(codeMiss).where(eq(codeMiss.chatId, gone.chatId));
    await db.delete(unreachable).where(eq(unreachable.chatId, gone.chatId));
    const isOver = sql`${inbox.status} in ('done', 'failed')`;
    await db.delete(inbox).where(and(eq(inbox.actorId, gone.chatId), isOver));
  }
  await db
    .insert(erasure)
    .values({ id: newId(now), subjectKind: 'helper', subjectId: id, erasedAt: now });
  return true;
}
