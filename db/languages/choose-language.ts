import { eq } from 'drizzle-orm';
import { isLanguage, type Language } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { helper, teacher } from '../schema/index.ts';

/**
 * Has the bot speak another language with an account, from the next text on, as a helper and as a teacher alike. Returns the
 * language. Refuses one we do not have (`invalid`) and an account we do not know (`not_found`): nothing is kept about those.
 *
 * @example
 * await chooseLanguage(store, { chatId, language: 'es' }); // 'es'
 */
export async function chooseLanguage(
  store: Store,
  { chatId, language }: { chatId: number; language: string },
): Promise<Language> {
  if (!isLanguage(language)) throw new AppError('invalid', 'language');
  return inTransaction(store, async ({ db }) => {
    const helpers = await db
      .update(helper)
      .set({ language })
      .where(eq(helper.chatId, chatId))
      .returning({ id: helper.id });
    const teachers = await db
      .update(teacher)
      .set({ language })
      .where(eq(teacher.chatId, chatId))
      .returning({ id: teacher.id });
    if (helpers.length + teachers.length === 0) throw new AppError('not_found', 'account');
    return language;
  });
}
