import type { Api } from 'grammy';
import type { Update } from 'grammy/types';
import { type Clock, type Log, type Store, storeUpdates } from '../../db/index.ts';
import { apiProblem } from '../chat/api-error.ts';

/** What we ask for; all else the service keeps to itself. */
const ALLOWED = ['message', 'callback_query', 'my_chat_member'] as const;

/** What the receiver needs. `api` allows for long polls. */
export interface PollerDeps {
  readonly api: Api;
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
  readonly botId: number;
}

/** Takes updates from the service: stored first, acknowledged by the next call's offset, handled later. */
export interface Poller {
  /** One poll. Returns how many updates came. */
  poll(timeoutSeconds: number, signal?: AbortSignal): Promise<number>;
}

/** A poller that starts where the service does. */
export function createPoller(deps: PollerDeps): Poller {
  let offset = 0;
  return {
    poll: async (timeout, signal) => {
      const updates = await deps.api.getUpdates(
        { offset, timeout, limit: 100, allowed_updates: ALLOWED },
        // grammY asks for its own AbortSignal type; the platform's is the same thing.
        signal as Parameters<Api['getUpdates']>[1],
      );
      const last = updates.at(-1);
      if (!last) return 0;
      await storeUpdates(deps.store, {
        botId: deps.botId,
        updates: updates.map((update) => ({
          updateId: update.update_id,
          actorId: actorOf(update),
          payload: update,
        })),
        now: deps.clock.now(),
      });
      offset = last.update_id + 1;
      return updates.length;
    },
  };
}

/** Keeps polling until the signal; trouble is logged and waited out. Rejects when the token is not accepted. */
export async function keepPolling(
  poller: Poller,
  deps: PollerDeps & { sleep(milliseconds: number): Promise<void>; onUpdates(): void },
  signal: AbortSignal,
): Promise<void> {
  while (!signal.aborted) {
    try {
      if ((await poller.poll(25, signal)) > 0) deps.onUpdates();
    } catch (error) {
      if (signal.aborted) return;
      const problem = apiProblem(error);
      if (problem.kind === 'rejected' && problem.code === '401') throw error;
      deps.log.warn(
        { problem: problem.kind, code: 'code' in problem ? problem.code : '' },
        'poll_failed',
      );
      await deps.sleep(3_000);
    }
  }
}

function actorOf(update: Update): number | null {
  const from = update.callback_query?.from ?? update.message?.from ?? update.my_chat_member?.from;
  return Number.isSafeInteger(from?.id) ? (from?.id ?? null) : null;
}
