import { and, asc, eq, gt, gte, inArray, lt, lte, notExists, or, type SQL, sql } from 'drizzle-orm';
import { alias } from 'drizzle-orm/pg-core';
import type { Db, Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { inbox } from '../schema/index.ts';

/** How often an update is handed to its handler; after that only the apology for it is still tried. */
export const HANDLER_TRIES = 5;

/** How often an update is taken in all, apologies included, before it is set aside. */
export const MAX_TRIES = 8;

/** How many updates of one person are taken at a time: whoever sends a thousand takes up no more room than this. */
export const FAIR_SHARE = 3;

/** An update taken for handling. */
export interface ClaimedUpdate {
  readonly updateId: number;
  readonly actorId: number | null;
  readonly payload: unknown;
  readonly receivedAt: Date;
  /** How often it has been tried, this time included. */
  readonly tries: number;
  /** Stands for updates that were left out because too many came at once: it has no payload, the person is to be told. */
  readonly shed: boolean;
}

/** Whose updates to take, and when. */
export interface UpdateClaim {
  readonly botId: number;
  /** Handling that began before this and never ended has died with its process. */
  readonly abandonedBefore: Date;
  readonly limit: number;
  readonly now: Date;
}

/**
 * Takes due updates in the order they came, at most {@link FAIR_SHARE} of one person, and those whose handling was abandoned.
 * One whose last try never ended is set aside as `failed`.
 *
 * Two processes never take the same one, and a person's update is never taken past an older one of theirs that waits for its
 * next try or is being handled: what they tapped first has its effect first.
 */
export async function claimUpdates(store: Store, claim: UpdateClaim): Promise<ClaimedUpdate[]> {
  return inTransaction(store, async ({ db }) => {
    await claimAlone(db, claim.botId);
    const abandoned = and(eq(inbox.status, 'handling'), lt(inbox.claimedAt, claim.abandonedBefore));
    await db
      .update(inbox)
      .set({ status: 'failed', handledAt: claim.now })
      .where(and(eq(inbox.botId, claim.botId), gte(inbox.tries, MAX_TRIES), abandoned));
    const due = and(eq(inbox.status, 'pending'), lte(inbox.notBefore, claim.now));
    const open = db
      .select({ updateId: inbox.updateId, place: placeOfOwn().as('place') })
      .from(inbox)
      .where(and(eq(inbox.botId, claim.botId), or(due, abandoned), hasItsTurn(db, claim)))
      .as('open');
    const fair = db
      .select({ updateId: open.updateId })
      .from(open)
      .where(lte(open.place, FAIR_SHARE))
      .orderBy(asc(open.updateId))
      .limit(claim.limit);
    const rows = await db
      .update(inbox)
      .set({ status: 'handling', claimedAt: claim.now, tries: sql`${inbox.tries} + 1` })
      // Looked at again: another process may have ended what counted as abandoned.
      .where(and(eq(inbox.botId, claim.botId), inArray(inbox.updateId, fair), or(due, abandoned)))
      .returning({
        updateId: inbox.updateId,
        actorId: inbox.actorId,
        payload: inbox.payload,
        receivedAt: inbox.receivedAt,
        tries: inbox.tries,
        shed: inbox.shed,
      });
    return rows.sort((a, b) => a.updateId - b.updateId);
  });
}

/** Until this transaction ends nobody else takes this bot's updates: who cannot see our claim could go past it. */
async function claimAlone(db: Db, botId: number): Promise<void> {
  await db.execute(sql`select pg_advisory_xact_lock(hashtextextended(${`inbox ${botId}`}, 0))`);
}

/** The how manieth of its person's open updates one is, counted from 1. Updates of nobody are each their own. */
function placeOfOwn(): SQL<number> {
  return sql<number>`row_number() over (partition by coalesce(${inbox.actorId}, -${inbox.updateId}) order by ${inbox.updateId})`;
}

/** No older update of the same person waits for its next try or is being handled. An update of nobody waits for none. */
function hasItsTurn(db: Db, { abandonedBefore, now }: UpdateClaim): SQL {
  const older = alias(inbox, 'older');
  // One that only waits for its apology holds nothing up.
  const waits = and(
    eq(older.status, 'pending'),
    gt(older.notBefore, now),
    lt(older.tries, HANDLER_TRIES),
  );
  const isHandled = and(eq(older.status, 'handling'), gte(older.claimedAt, abandonedBefore));
  return notExists(
    db
      .select({ one: sql`1` })
      .from(older)
      .where(
        and(
          eq(older.botId, inbox.botId),
          eq(older.actorId, inbox.actorId),
          lt(older.updateId, inbox.updateId),
          // As the index of open updates has it; what ended is kept for days.
          sql`${older.status} in ('pending', 'handling')`,
          or(waits, isHandled),
        ),
      ),
  );
}
