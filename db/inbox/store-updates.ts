import { and, count, eq, gt, inArray, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { tell } from '../connection/peers.ts';
import { inTransaction } from '../connection/transaction.ts';
import { inbox } from '../schema/index.ts';
import { shareOut } from './share-out.ts';
import { storableJson } from './storable-json.ts';

/** An update as it came in. `actorId` is the person, so that one person's updates are handled in order. */
export interface IncomingUpdate {
  readonly updateId: number;
  readonly actorId: number | null;
  readonly payload: unknown;
}

/** What became of updates that came in: rows that are new, and updates of which nothing is kept. */
export interface Stored {
  readonly stored: number;
  readonly leftOut: number;
}

/** How long a person who was told that something was left out is not told again. */
const TOLD_MS = 10 * 60_000;

/**
 * Stores updates before they are acknowledged. One that was stored before is left as it is. Of a person of whom
 * `MOST_WAITING` wait already nothing more is kept; the first one left out becomes a row without payload (`shed`), by which
 * the person is told, once in ten minutes.
 */
export async function storeUpdates(
  store: Store,
  input: { botId: number; updates: readonly IncomingUpdate[]; now: Date },
): Promise<Stored> {
  if (input.updates.length === 0) return { stored: 0, leftOut: 0 };
  return inTransaction(store, async (inner) => {
    const isNew = await newOnes(inner, input);
    const { kept, told } = shareOut(isNew, await waitingOf(inner, input));
    const leftOut = isNew.length - kept.length;
    const rows = [
      ...kept.map((update) => ({ ...update, payload: storableJson(update.payload), shed: false })),
      ...told.map((update) => ({ ...update, payload: null, shed: true })),
    ];
    if (rows.length === 0) return { stored: 0, leftOut };
    await tell(inner, 'inbox', String(input.botId));
    return { stored: await insert(inner, rows, input), leftOut };
  });
}

type Row = IncomingUpdate & { readonly shed: boolean };

async function insert(
  inner: Store,
  rows: readonly Row[],
  { botId, now }: { botId: number; now: Date },
): Promise<number> {
  const stored = await inner.db
    .insert(inbox)
    .values(
      rows.map((row) => ({
        ...row,
        botId,
        status: 'pending' as const,
        receivedAt: now,
        // Due at once, whatever the clock of whoever handles it says.
        notBefore: new Date(0),
      })),
    )
    .onConflictDoNothing()
    .returning({ updateId: inbox.updateId });
  return stored.length;
}

/** A repeated update takes nobody's place. */
async function newOnes(
  inner: Store,
  { botId, updates }: { botId: number; updates: readonly IncomingUpdate[] },
): Promise<IncomingUpdate[]> {
  const ids = updates.map((update) => update.updateId);
  const known = await inner.db
    .select({ updateId: inbox.updateId })
    .from(inbox)
    .where(and(eq(inbox.botId, botId), inArray(inbox.updateId, ids)));
  const stored = new Set(known.map((row) => row.updateId));
  return updates.filter((update) => !stored.has(update.updateId));
}

/** How many updates of each sender wait, and who was told lately that something was left out. */
async function waitingOf(
  inner: Store,
  { botId, updates, now }: { botId: number; updates: readonly IncomingUpdate[]; now: Date },
) {
  const actors = [
    ...new Set(updates.flatMap(({ actorId }) => (actorId === null ? [] : [actorId]))),
  ];
  const ofBot = and(eq(inbox.botId, botId), inArray(inbox.actorId, actors));
  const waiting = await inner.db
    .select({ actorId: inbox.actorId, waiting: count() })
    .from(inbox)
    .where(and(ofBot, sql`${inbox.status} in ('pending', 'handling')`))
    .groupBy(inbox.actorId);
  const told = await inner.db
    .selectDistinct({ actorId: inbox.actorId })
    .from(inbox)
    .where(and(ofBot, sql`${inbox.shed}`, gt(inbox.receivedAt, new Date(now.getTime() - TOLD_MS))));
  return {
    waiting: new Map(waiting.map((row) => [row.actorId, row.waiting])),
    told: new Set(told.map((row) => row.actorId)),
  };
}
