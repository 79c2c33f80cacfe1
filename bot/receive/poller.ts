import type { Api } from 'grammy';
import type { Log } from '../../db/index.ts';
import { apiProblem } from '../chat/api-error.ts';
import { ALLOWED_UPDATES, type IntakeDeps, takeIn } from './take-in.ts';

/** What the receiver needs. `api` allows for long polls. */
export interface PollerDeps extends IntakeDeps {
  readonly api: Api;
  readonly log: Log;
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
        { offset, timeout, limit: 100, allowed_updates: ALLOWED_UPDATES },
        // grammY asks for its own AbortSignal type; the platform's is the same thing.
        signal as Parameters<Api['getUpdates']>[1],
      );
      const last = updates.at(-1);
      if (!last) return 0;
      await takeIn(deps, updates);
      offset = last.update_id + 1;
      return updates.length;
    },
  };
}

/** How a poller goes on by itself. `isOurs`: whether this process is the one that receives; the service takes one at a time. */
export interface Keeping {
  isOurs(): Promise<boolean>;
  sleep(milliseconds: number, signal: AbortSignal): Promise<void>;
}

/** After trouble, and while another process receives. */
const PAUSE_MS = 3_000;

/** Keeps polling until the signal; trouble is logged and waited out. Rejects when the token is not accepted. */
export async function keepPolling(
  poller: Poller,
  deps: PollerDeps & Keeping,
  signal: AbortSignal,
): Promise<void> {
  while (!signal.aborted) {
    try {
      if (await deps.isOurs()) await poller.poll(25, signal);
      else await deps.sleep(PAUSE_MS, signal);
    } catch (error) {
      if (signal.aborted) return;
      const problem = apiProblem(error);
      if (problem.kind === 'rejected' && problem.code === '401') throw error;
      deps.log.warn(
        { problem: problem.kind, code: 'code' in problem ? problem.code : '' },
        'poll_failed',
      );
      await deps.sleep(PAUSE_MS, signal);
    }
  }
}
