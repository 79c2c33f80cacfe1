import { and, asc, eq, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { dataUsed, helper } from '../schema/index.ts';

/** About how many bytes went to a helper in one month. */
export interface MonthOfData {
  /** `YYYY-MM`, in UTC. */
  readonly month: string;
  readonly bytes: number;
}

/**
 * The month of an instant, in UTC: a helper has no zone of its own, and an estimate need not know better.
 *
 * @example
 * monthOf(new Date('2026-11-30T23:30:00Z')); // '2026-11'
 */
export function monthOf(now: Date): string {
  return now.toISOString().slice(0, 7);
}

/**
 * Adds the bytes of something that was sent to an account to its month. An account that is no helper's is passed over. Bytes
 * that are no whole number above 0 are passed over, too: nothing hangs on an estimate.
 */
export async function addDataUsed(
  store: Store,
  { chatId, bytes, now }: { chatId: number; bytes: number; now: Date },
): Promise<void> {
  if (!Number.isSafeInteger(bytes) || bytes <= 0) return;
  const owner = store.db
    .select({
      helperId: helper.id,
      month: sql<string>`${monthOf(now)}`.as('month'),
      bytes: sql<number>`${bytes}::bigint`.as('bytes'),
    })
    .from(helper)
    .where(eq(helper.chatId, chatId));
  await store.db
    .insert(dataUsed)
    .select(owner)
    .onConflictDoUpdate({
      target: [dataUsed.helperId, dataUsed.month],
      set: { bytes: sql`${dataUsed.bytes} + excluded.bytes` },
    });
}

/** About how many bytes went to a helper in the month of `now`. */
export async function readDataUsed(
  store: Store,
  { helperId, now }: { helperId: string; now: Date },
): Promise<number> {
  const [row] = await store.db
    .select({ bytes: dataUsed.bytes })
    .from(dataUsed)
    .where(and(eq(dataUsed.helperId, helperId), eq(dataUsed.month, monthOf(now))));
  return row?.bytes ?? 0;
}

/** Every month that is kept of a helper, the oldest first. For what a helper may have of what is kept. */
export async function listDataUsed(store: Store, helperId: string): Promise<MonthOfData[]> {
  return store.db
    .select({ month: dataUsed.month, bytes: dataUsed.bytes })
    .from(dataUsed)
    .where(eq(dataUsed.helperId, helperId))
    .orderBy(asc(dataUsed.month));
}
