import { and, eq, gt, isNull } from 'drizzle-orm';
import { hashCode, newCode } from '../codes.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { teacher, teacherInvite } from '../schema/index.ts';
import { findTeacherByChat, type Teacher } from './find-teacher.ts';

/** Days until an unused invitation dies. */
export const INVITE_DAYS = 7;

/** Issues a one-time invitation and returns its code, which is stored hashed only. */
export async function issueTeacherInvite(store: Store, now: Date): Promise<string> {
  const code = newCode();
  await store.db.insert(teacherInvite).values({
    id: newId(now),
    codeHash: hashCode(code),
    expiresAt: new Date(now.getTime() + INVITE_DAYS * 86_400_000),
    createdAt: now,
  });
  return code;
}

/**
 * Makes the account a teacher. Used, expired and unknown codes are all `not_found`: a guesser learns nothing. An account that is
 * a teacher already stays one and the code is not used up.
 */
export async function acceptTeacherInvite(
  store: Store,
  input: { code: string; chatId: number; now: Date },
): Promise<Teacher> {
  return inTransaction(store, async (inner) => {
    const known = await findTeacherByChat(inner, input.chatId);
    if (known) return known;
    const [invite] = await inner.db
      .update(teacherInvite)
      .set({ usedAt: input.now })
      .where(
        and(
          eq(teacherInvite.codeHash, hashCode(input.code)),
          isNull(teacherInvite.usedAt),
          gt(teacherInvite.expiresAt, input.now),
        ),
      )
      .returning({ id: teacherInvite.id });
    if (!invite) throw new AppError('not_found', 'teacher invitation');
    const created = { id: newId(input.now), chatId: input.chatId };
    await inner.db.insert(teacher).values({ ...created, createdAt: input.now });
    await inner.db
      .update(teacherInvite)
      .set({ usedBy: created.id })
      .where(eq(teacherInvite.id, invite.id));
    return created;
  });
}
