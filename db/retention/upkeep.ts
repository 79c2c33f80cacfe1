import { and, eq, gt } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { upkeep } from '../schema/index.ts';

/** The pieces of upkeep that rest for a day once they found nothing more to do. */
export type UpkeepKind = 'retention';

const DAY_MS = 24 * 60 * 60_000;

/** Whether a piece of upkeep has not been finished within the last day. */
export async function isUpkeepDue(store: Store, kind: UpkeepKind, now: Date): Promise<boolean> {
  const rows = await store.db
    .select({ kind: upkeep.kind })
    .from(upkeep)
    .where(and(eq(upkeep.kind, kind), gt(upkeep.doneAt, new Date(now.getTime() - DAY_MS))));
  return rows.length === 0;
}

/** Notes that a piece of upkeep found nothing more to do. */
export async function noteUpkeepDone(store: Store, kind: UpkeepKind, now: Date): Promise<void> {
  await store.db
    .insert(upkeep)
    .values({ kind, doneAt: now })
    .onConflictDoUpdate({ target: upkeep.kind, set: { doneAt: now } });
}
