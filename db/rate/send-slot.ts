import { and, eq, isNull, lte, or, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { tell } from '../connection/peers.ts';
import { inTransaction } from '../connection/transaction.ts';
import { rate } from '../schema/index.ts';
import { LONG_AGO } from './claim-store.ts';

/** New messages a second for one bot, all senders together. The service's own advice is about 30. */
export const SENDS_A_SECOND = 29.5;

/**
 * How many messages may leave at once beyond the steady rate. Bulk leaves room that only answers use, so that an answer does
 * not wait behind bulk; both together stay well below what the service is known to take at once.
 */
export const BURST = { bulk: 5, answer: 15 } as const;

/** Bulk is what we send by ourselves; an answer is what somebody waits for who has just tapped or typed. */
export type Haste = keyof typeof BURST;

/** Whose line, how fast it moves, and what time it is there. */
export interface Turn {
  readonly botId: number;
  readonly haste: Haste;
  readonly at: Date;
  readonly perSecond: number;
}

/**
 * Takes a place in the line that all senders of a bot share, if one is free: returns 0 then, or else in how many milliseconds
 * to ask again. Nothing is booked ahead, so that an answer never waits for bulk that waits itself. The generic cell rate
 * algorithm (ITU-T I.371, virtual scheduling), as one atomic statement.
 */
export async function takeSendSlot(store: Store, turn: Turn): Promise<number> {
  const stepMs = 1_000 / turn.perSecond;
  const at = sql`${turn.at.toISOString()}::timestamptz`;
  const early = new Date(turn.at.getTime() + stepMs * BURST[turn.haste]);
  const taken = await store.db
    .update(rate)
    .set({ nextAt: sql`greatest(${rate.nextAt}, ${at}) + interval '1 millisecond' * ${stepMs}` })
    .where(
      and(
        eq(rate.botId, turn.botId),
        lte(rate.nextAt, early),
        or(isNull(rate.pausedUntil), lte(rate.pausedUntil, turn.at)),
      ),
    )
    .returning({ botId: rate.botId });
  return taken.length > 0 ? 0 : waitFor(store, turn, early);
}

/** How long it takes until a place is free, as things stand; at least a millisecond. */
async function waitFor(store: Store, { botId, at }: Turn, early: Date): Promise<number> {
  const [row] = await store.db.select().from(rate).where(eq(rate.botId, botId));
  if (!row) {
    await store.db.insert(rate).values({ botId, nextAt: LONG_AGO }).onConflictDoNothing();
    return 1;
  }
  const inLine = row.nextAt.getTime() - early.getTime();
  const paused = (row.pausedUntil?.getTime() ?? 0) - at.getTime();
  return Math.max(1, inLine, paused);
}

/**
 * Makes every sender of the bot wait: the service has said "too many". The longest pause wins. The line begins anew behind it,
 * so that its end is no stampede. Every process hears of it.
 */
export async function pauseSending(store: Store, botId: number, until: Date): Promise<void> {
  const end = sql`${until.toISOString()}::timestamptz`;
  await inTransaction(store, async (inner) => {
    await inner.db
      .insert(rate)
      .values({ botId, nextAt: until, pausedUntil: until })
      .onConflictDoUpdate({
        target: rate.botId,
        set: {
          nextAt: sql`greatest(${rate.nextAt}, ${end})`,
          pausedUntil: sql`greatest(${rate.pausedUntil}, ${end})`,
        },
      });
    await tell(inner, 'paused', `${botId} ${until.getTime()}`);
  });
}
