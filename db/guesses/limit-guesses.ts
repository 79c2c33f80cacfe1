import { and, count, desc, eq, gt, lte } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { AppError } from '../errors.ts';
import { codeMiss } from '../schema/index.ts';
import { CodesPaused } from './codes-paused.ts';
import { GUESS_LIMITS } from './guess-limits.ts';

const WINDOW_MS = GUESS_LIMITS.minutes * 60_000;

/**
 * Does what a code asks for, and counts it against the account when the code opens nothing (`not_found`). An account with too
 * many such misses gets {@link CodesPaused}, whatever its code is, and nothing is looked up: a guesser learns nothing more.
 *
 * A code that is too old, spent, or taken already was no guess and is not counted. `work` runs outside any transaction of the
 * caller: a miss has to be stored although the work failed.
 */
export async function limitGuesses<T>(
  store: Store,
  { chatId, now }: { chatId: number; now: Date },
  work: () => Promise<T>,
): Promise<T> {
  const pausedUntil = await nextTry(store, chatId, now);
  if (pausedUntil) {
    throw new CodesPaused(Math.max(1, Math.ceil((pausedUntil.getTime() - now.getTime()) / 60_000)));
  }
  try {
    return await work();
  } catch (error) {
    if (error instanceof AppError && error.code === 'not_found') {
      await store.db.insert(codeMiss).values({ id: newId(now), chatId, at: now });
    }
    throw error;
  }
}

/** Deletes misses that no longer count. */
export async function purgeCodeMisses(store: Store, now: Date): Promise<void> {
  await store.db.delete(codeMiss).where(lte(codeMiss.at, new Date(now.getTime() - WINDOW_MS)));
}

/** When the account may try again; null when it may now. That is once its miss that filled the limit is forgotten. */
async function nextTry(store: Store, chatId: number, now: Date): Promise<Date | null> {
  const since = gt(codeMiss.at, new Date(now.getTime() - WINDOW_MS));
  const own = await store.db
    .select({ at: codeMiss.at })
    .from(codeMiss)
    .where(and(eq(codeMiss.chatId, chatId), since))
    .orderBy(desc(codeMiss.at))
    .limit(GUESS_LIMITS.ofOne);
  // Who has missed less than that is never asked to wait, however busy it is.
  if (own.length < GUESS_LIMITS.ofOneWhenBusy) return null;
  const [all] = await store.db.select({ misses: count() }).from(codeMiss).where(since);
  const allowed =
    (all?.misses ?? 0) >= GUESS_LIMITS.ofAll ? GUESS_LIMITS.ofOneWhenBusy : GUESS_LIMITS.ofOne;
  const filling = own[allowed - 1];
  return filling ? new Date(filling.at.getTime() + WINDOW_MS) : null;
}
