import { eq } from 'drizzle-orm';
import type { Language } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { helper, teacher } from '../schema/index.ts';
import { storedLanguage } from './stored-language.ts';

/**
 * The language the bot speaks with an account, or null for somebody we do not know. One who is both a helper and a teacher has
 * one language; see `chooseLanguage`.
 *
 * @example
 * await readLanguage(store, chatId); // 'es'
 */
export async function readLanguage(store: Store, chatId: number): Promise<Language | null> {
  const [row] = await store.db
    .select({ language: helper.language })
    .from(helper)
    .where(eq(helper.chatId, chatId))
    .unionAll(
      store.db
        .select({ language: teacher.language })
        .from(teacher)
        .where(eq(teacher.chatId, chatId)),
    )
    .limit(1);
  return row ? storedLanguage(row.language) : null;
}
