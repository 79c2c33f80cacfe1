import { and, eq, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import type { Delivery } from '../ledger/read-delivery.ts';
import { ledger } from '../schema/index.ts';
import { type Greeting, greetingOf } from './greeting.ts';

/**
 * The greeting to send for a row of the ledger; null when it is not wanted any more: it was removed, given other days, or no
 * evening waits for it (the family left, the child was moved).
 */
export async function greetingToSend(store: Store, delivery: Delivery): Promise<Greeting | null> {
  const { classId, day } = delivery;
  const greeting = await greetingOf(store, classId);
  if (!greeting || day < greeting.first || day > greeting.last) return null;
  return (await isAwaited(store, delivery)) ? greeting : null;
}

async function isAwaited({ db }: Store, { id, classId, day }: Delivery): Promise<boolean> {
  const recipient = db.select({ id: ledger.recipientId }).from(ledger).where(eq(ledger.id, id));
  const rows = await db
    .select({ id: ledger.id })
    .from(ledger)
    .where(
      and(
        eq(ledger.kind, 'evening'),
        eq(ledger.classId, classId),
        eq(ledger.day, day),
        eq(ledger.status, 'planned'),
        sql`${ledger.recipientId} in ${recipient}`,
      ),
    )
    .limit(1);
  return rows.length > 0;
}
