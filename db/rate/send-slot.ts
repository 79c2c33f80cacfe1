import { sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { rate } from '../schema/index.ts';

/** Messages a second for one bot. The service's own advice is about 30; we keep a margin for answers to taps. */
export const SENDS_A_SECOND = 25;

const INTERVAL_MS = 1_000 / SENDS_A_SECOND;
/** A pause of the line lets this much be caught up at once. */
const BURST_MS = 1_000;

/**
 * Books the next place in the line that all senders of a bot share, and returns how many milliseconds to wait for it.
 * The generic cell rate algorithm (ITU-T I.371, virtual scheduling), as one atomic statement.
 */
export async function takeSendSlot(store: Store, botId: number, at: Date): Promise<number> {
  const step = sql`interval '1 millisecond' * ${INTERVAL_MS}`;
  const [row] = await store.db
    .insert(rate)
    .values({ botId, nextAt: new Date(at.getTime() + INTERVAL_MS) })
    .onConflictDoUpdate({
      target: rate.botId,
      set: { nextAt: sql`greatest(${rate.nextAt}, ${at.toISOString()}::timestamptz) + ${step}` },
    })
    .returning({ nextAt: rate.nextAt, pausedUntil: rate.pausedUntil });
  if (!row) return 0;
  const own = row.nextAt.getTime() - INTERVAL_MS - BURST_MS;
  const start = Math.max(own, row.pausedUntil?.getTime() ?? 0);
  return Math.max(0, start - at.getTime());
}

/**
 * Makes every sender of the bot wait: the service has said "too many". The longest pause wins. Places booked during the pause
 * lie behind it, one after the other, so that its end is no stampede.
 */
export async function pauseSending(store: Store, botId: number, until: Date): Promise<void> {
  const end = sql`${until.toISOString()}::timestamptz`;
  await store.db
    .insert(rate)
    .values({ botId, nextAt: until, pausedUntil: until })
    .onConflictDoUpdate({
      target: rate.botId,
      set: {
        nextAt: sql`greatest(${rate.nextAt}, ${end})`,
        pausedUntil: sql`greatest(${rate.pausedUntil}, ${end})`,
      },
    });
}
