import { eq } from 'drizzle-orm';
import type { GreetingTimes } from '../../drills/index.ts';
import { keepAct } from '../acts/keep-act.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { note } from '../schema/index.ts';
import { GREETING_LIMITS, type GreetingWords, greetingOf } from './greeting.ts';

/**
 * Puts a greeting in use. `actId` takes back that an earlier one was replaced; null when there was none, and when this very
 * greeting was in use already: then nothing is changed.
 *
 * An empty text and one that is too long are `invalid` (`greeting text`), and so are days in the wrong order (`greeting days`).
 */
export async function setGreeting(
  store: Store,
  scope: TeacherScope,
  input: { words: GreetingWords; times: GreetingTimes; now: Date },
): Promise<{ id: string; actId: string | null }> {
  const { words, times, now } = input;
  check(words, times);
  return inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    await lockClass(inner, scope.classId);
    const before = await greetingOf(inner, scope.classId);
    if (before?.words.kind === words.kind && before.words.body === words.body) {
      return { id: before.id, actId: null };
    }
    const id = newId(now);
    if (before) {
      await inner.db.update(note).set({ removedAt: now }).where(eq(note.id, before.id));
    }
    await inner.db.insert(note).values({
      ...{ id, ...scope, ...words, createdAt: now },
      ...{ evenings: times.evenings, firstDay: times.first, lastDay: times.last },
    });
    if (!before) return { id, actId: null };
    const act = { noteId: before.id, nextId: id };
    return { id, actId: await keepAct(inner, scope, { kind: 'greetingEnded', before: act, now }) };
  });
}

function check({ kind, body }: GreetingWords, { first, last }: GreetingTimes): void {
  const { length } = [...body];
  const most = kind === 'text' ? GREETING_LIMITS.textLength : Number.POSITIVE_INFINITY;
  if (body.trim() === '' || length > most) throw new AppError('invalid', 'greeting text');
  if (first > last) throw new AppError('invalid', 'greeting days');
}
