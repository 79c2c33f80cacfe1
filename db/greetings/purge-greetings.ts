import { and, lt, ne, or, sql } from 'drizzle-orm';
import { UNDO_MS } from '../acts/list-acts.ts';
import type { Store } from '../connection/db.ts';
import { note } from '../schema/index.ts';

/** So long after its last day a greeting can still be given another week. */
const OVER_MS = 14 * 24 * 60 * 60_000;

/**
 * Deletes a teacher's words that are not needed any more: of greetings removed or replaced a day ago, when that cannot be taken
 * back, and of those that were over two weeks ago. The row stays, so that the ledger can be read. Returns how many.
 */
export async function purgeGreetings(store: Store, now: Date): Promise<number> {
  const over = new Date(now.getTime() - OVER_MS).toISOString().slice(0, 10);
  const removed = new Date(now.getTime() - UNDO_MS);
  const rows = await store.db
    .update(note)
    .set({
      body: '',
      removedAt: sql`coalesce(${note.removedAt}, ${sql.param(now, note.removedAt)})`,
    })
    .where(and(ne(note.body, ''), or(lt(note.removedAt, removed), lt(note.lastDay, over))))
    .returning({ id: note.id });
  return rows.length;
}
