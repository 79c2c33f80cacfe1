import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { rate } from '../schema/index.ts';

/** The rehearsal's bot. No real bot has this id. */
export const REHEARSAL_BOT = 0;

/** The sending rate runs on real time, the caller on the school's clock: a line that is free has no instant of either. */
export const LONG_AGO = new Date(0);

/**
 * Notes that a bot works with this database. A rehearsal and a real bot never share one: the rehearsal would call every
 * family unreachable, and the real bot would write to invented people. That is a `conflict`.
 */
export async function claimStore(store: Store, botId: number): Promise<void> {
  const bots = await store.db.select({ botId: rate.botId }).from(rate);
  const isRehearsal = botId === REHEARSAL_BOT;
  if (bots.some((row) => (row.botId === REHEARSAL_BOT) !== isRehearsal)) {
    throw new AppError('conflict', isRehearsal ? 'a real bot’s data' : 'a rehearsal’s data');
  }
  await store.db.insert(rate).values({ botId, nextAt: LONG_AGO }).onConflictDoNothing();
}
