import { eq } from 'drizzle-orm';
import type { Language } from '../../drills/index.ts';
import { hashCode, newCode } from '../codes.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { limitGuesses } from '../guesses/limit-guesses.ts';
import { teacher, teacherInvite } from '../schema/index.ts';
import { findTeacherByChat, type Teacher } from './find-teacher.ts';
import { joinByInvite, joinedOf } from './join-class.ts';
import type { TeacherRole } from './list-teachers.ts';

/** Days until an unused invitation dies. */
export const INVITE_DAYS = 7;

/** Whoever took an invitation, and what they are to its class; null for one that names no class. */
export interface InvitedTeacher extends Teacher {
  readonly joined: { readonly classId: string; readonly role: TeacherRole } | null;
}

/** An account that becomes a teacher, and the language the bot goes on in with it: English, unless said otherwise. */
interface NewTeacher {
  readonly chatId: number;
  readonly language?: Language;
  readonly now: Date;
}

/** Issues the operator's one-time invitation and returns its code, which is stored hashed only. */
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
 * Makes the account a teacher, and a teacher of the invitation's class when it names one. Used, expired, revoked and unknown
 * codes are all `not_found`: a guesser learns nothing. A code that would change nothing, because the account is a teacher or
 * teaches the class already, is not used up; whoever has taken a code and opens it again is where it led.
 */
export async function acceptTeacherInvite(
  store: Store,
  input: NewTeacher & { code: string },
): Promise<InvitedTeacher> {
  return limitGuesses(store, input, () => takeInvite(store, input));
}

async function takeInvite(
  store: Store,
  input: NewTeacher & { code: string },
): Promise<InvitedTeacher> {
  return inTransaction(store, async (inner) => {
    const invite = await lockInvite(inner, input.code);
    const known = await findTeacherByChat(inner, input.chatId);
    if (!invite) throw new AppError('not_found', 'teacher invitation');
    if (known && invite.usedBy === known.id)
      return { ...known, joined: await joinedOf(inner, invite, known.id) };
    const isOpen = !invite.usedAt && !invite.revokedAt && invite.expiresAt > input.now;
    if (!isOpen) throw new AppError('not_found', 'teacher invitation');
    const taker = known ?? (await newTeacher(inner, input));
    const joined = await joinByInvite(inner, invite, taker.id, input.now);
    if (!known || joined?.isNew) {
      await inner.db
        .update(teacherInvite)
        .set({ usedAt: input.now, usedBy: taker.id })
        .where(eq(teacherInvite.id, invite.id));
    }
    return { ...taker, joined: joined && { classId: joined.classId, role: joined.role } };
  });
}

/** Makes the account a teacher without an invitation: for an operator who lets anybody be one. Twice is once. */
export async function becomeTeacher(store: Store, input: NewTeacher): Promise<Teacher> {
  return inTransaction(
    store,
    async (inner) => (await findTeacherByChat(inner, input.chatId)) ?? newTeacher(inner, input),
  );
}

/** The invitation of a code, locked: two people with one link wait for each other. */
async function lockInvite(inner: Store, code: string) {
  const [invite] = await inner.db
    .select()
    .from(teacherInvite)
    .where(eq(teacherInvite.codeHash, hashCode(code)))
    .for('update');
  return invite;
}

async function newTeacher(
  inner: Store,
  { chatId, language = 'en', now }: NewTeacher,
): Promise<Teacher> {
  const created = { id: newId(now), chatId };
  await inner.db.insert(teacher).values({ ...created, language, createdAt: now });
  return created;
}
