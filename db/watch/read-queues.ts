import { and, count, eq, gt, inArray, isNotNull, lte, min, or, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import type { LedgerKind } from '../ledger/owe.ts';
import { inbox, ledger } from '../schema/index.ts';

/** Something that waits, and since when its oldest part has; null when nothing does. */
export interface Queue {
  readonly waiting: number;
  readonly oldest: Date | null;
}

/** What waits at an instant: messages that are due, by kind, and updates that have not been handled. */
export interface Queues {
  readonly due: ReadonlyMap<LedgerKind, Queue>;
  readonly inbox: Queue;
}

/**
 * Looks at both queues. A message waits from when it is due until it leaves or is too late, also while it is put back because
 * it was refused or everybody pauses; one on its way waits no more. An update waits from when it came in until it is handled. By
 * the two indexes of what is open: what has ended costs nothing.
 */
export async function readQueues({ db }: Store, now: Date): Promise<Queues> {
  // Putting back moves the one instant, a lost job the other: the earlier is nearer to when it was due.
  const since = sql`min(least(${ledger.notBefore}, ${ledger.enqueuedAt}))`;
  const isDue = or(lte(ledger.notBefore, now), isNotNull(ledger.problem));
  const due = await db
    .select({ kind: ledger.kind, waiting: count(), oldest: since.mapWith(ledger.notBefore) })
    .from(ledger)
    .where(and(eq(ledger.status, 'planned'), isDue, gt(ledger.expiresAt, now)))
    .groupBy(ledger.kind);
  const [open] = await db
    .select({ waiting: count(), oldest: min(inbox.receivedAt) })
    .from(inbox)
    .where(inArray(inbox.status, ['pending', 'handling']));
  return {
    due: new Map(due.map(({ kind, waiting, oldest }) => [kind, { waiting, oldest }])),
    inbox: { waiting: open?.waiting ?? 0, oldest: open?.oldest ?? null },
  };
}
