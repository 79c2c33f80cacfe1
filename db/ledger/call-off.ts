import { and, eq, gt, isNull, type SQL } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { ledger } from '../schema/index.ts';
import { priorityOf } from './priority.ts';

/** Which messages are called off: all conditions hold. `because` is what the ledger says of them. */
export interface CallOff {
  readonly which: readonly [SQL, ...SQL[]];
  readonly because: string;
  readonly now: Date;
}

/** Keeps what is still waiting from being sent. Inside the caller's transaction. */
export async function callOff(inner: Store, { which, because, now }: CallOff): Promise<void> {
  await inner.db
    .update(ledger)
    .set({ status: 'failed', problem: because, settledAt: now })
    .where(and(...which, eq(ledger.status, 'planned')));
}

/** Puts back in line what was called off for the same reason and is not too late yet. Inside the caller's transaction. */
export async function callBack(inner: Store, { which, because, now }: CallOff): Promise<void> {
  const woken = await inner.db
    .update(ledger)
    .set({ status: 'planned', problem: null, settledAt: null, enqueuedAt: now })
    .where(
      and(
        ...which,
        eq(ledger.status, 'failed'),
        eq(ledger.problem, because),
        isNull(ledger.messageId),
        gt(ledger.expiresAt, now),
      ),
    )
    .returning({ ledgerId: ledger.id, botId: ledger.botId, kind: ledger.kind });
  await inner.queue.enqueue(
    inner.db,
    woken.map(({ kind, ...job }) => ({ ...job, priority: priorityOf(kind) })),
  );
}
