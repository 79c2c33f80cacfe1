import { claimDelivery, type Store, settleDelivery } from '../../db/index.ts';
import { type RawRow, readTable } from './raw-rows.ts';

/** The ledger rows of an evening, oldest first. */
export async function ledgerOf(store: Store, eveningId: string): Promise<RawRow[]> {
  const rows = await readTable(store, 'ledger');
  return rows
    .filter((row) => row.evening_id === eveningId)
    .sort((a, b) => (String(a.id) < String(b.id) ? -1 : 1));
}

/** Takes each message of an evening and settles it: as arrived with message ids counting from `firstMessageId`, or not. */
export async function settleEvening(
  store: Store,
  eveningId: string,
  status: 'sent' | 'failed' | 'unknown',
  now: Date,
  firstMessageId = 500,
): Promise<void> {
  for (const [index, row] of (await ledgerOf(store, eveningId)).entries()) {
    const id = String(row.id);
    await claimDelivery(store, id, now);
    const settlement =
      status === 'sent'
        ? { status, messageId: firstMessageId + index }
        : { status, problem: 'test' };
    await settleDelivery(store, id, settlement, now);
  }
}
