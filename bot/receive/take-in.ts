import type { Update } from 'grammy/types';
import { type Clock, type Meter, type Store, storeUpdates } from '../../db/index.ts';

/** Where updates of which bot are kept. */
export interface IntakeDeps {
  readonly store: Store;
  readonly clock: Clock;
  readonly botId: number;
  readonly meter?: Meter | undefined;
}

/** What we ask the service for; all else it keeps to itself. */
export const ALLOWED_UPDATES = ['message', 'callback_query', 'my_chat_member'] as const;

/**
 * Keeps updates, however they came, so that they may be acknowledged; the processes that handle them are told. An update that
 * came before is left as it is.
 */
export async function takeIn(
  { store, clock, botId, meter }: IntakeDeps,
  updates: readonly Update[],
): Promise<void> {
  const counts = await storeUpdates(store, {
    botId,
    updates: updates.map((update) => ({
      updateId: update.update_id,
      actorId: actorOf(update),
      payload: update,
    })),
    now: clock.now(),
  });
  meter?.received(counts);
}

function actorOf(update: Update): number | null {
  const from = update.callback_query?.from ?? update.message?.from ?? update.my_chat_member?.from;
  return Number.isSafeInteger(from?.id) ? (from?.id ?? null) : null;
}
