import { desc, eq } from 'drizzle-orm';
import { BOOK_LIMITS } from '../books/book-settings.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { AppError } from '../errors.ts';
import { evening, pageLog } from '../schema/index.ts';
import type { HelperScope } from './get-evening.ts';
import { changeEvening } from './lock-evening.ts';

/** Most pages one evening may report. */
export const MAX_PAGES_AN_EVENING = BOOK_LIMITS.pagesADay * 2;

/** Stores how many workbook pages were done. The same number again changes nothing; another one is a correction. */
export async function recordPages(
  store: Store,
  scope: HelperScope,
  input: { pages: number; now: Date },
): Promise<void> {
  const { pages, now } = input;
  if (!Number.isInteger(pages) || pages < 0 || pages > MAX_PAGES_AN_EVENING) {
    throw new AppError('invalid', 'pages');
  }
  await changeEvening(store, scope, now, async ({ db }, view) => {
    if (view.pages === pages) return;
    const [row] = await db
      .select({ bookId: evening.bookId })
      .from(evening)
      .where(eq(evening.id, view.id));
    if (!row?.bookId) return;
    const [last] = await db
      .select({ revision: pageLog.revision })
      .from(pageLog)
      .where(eq(pageLog.eveningId, view.id))
      .orderBy(desc(pageLog.revision))
      .limit(1);
    await db.insert(pageLog).values({
      id: newId(now),
      eveningId: view.id,
      childId: view.childId,
      bookId: row.bookId,
      pages,
      revision: (last?.revision ?? 0) + 1,
      loggedAt: now,
    });
  });
}
