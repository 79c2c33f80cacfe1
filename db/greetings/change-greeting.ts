import { eq } from 'drizzle-orm';
import type { GreetingTimes } from '../../drills/index.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { note } from '../schema/index.ts';
import { greetingOf } from './greeting.ts';

/**
 * Changes when the greeting in use goes out; what is not named stays. A greeting that is not in use any more is `not_found`:
 * the button is from before another was sent. Days in the wrong order are `invalid` (`greeting days`).
 */
export async function changeGreeting(
  store: Store,
  scope: TeacherScope,
  input: { greetingId: string; change: Partial<GreetingTimes> },
): Promise<void> {
  await inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    await lockClass(inner, scope.classId);
    const inUse = await greetingOf(inner, scope.classId);
    if (inUse?.id !== input.greetingId) throw new AppError('not_found', 'greeting');
    const { evenings, first, last } = { ...inUse, ...input.change };
    if (first > last) throw new AppError('invalid', 'greeting days');
    await inner.db
      .update(note)
      .set({ evenings, firstDay: first, lastDay: last })
      .where(eq(note.id, inUse.id));
  });
}
