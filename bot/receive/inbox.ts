import type { Update } from 'grammy/types';
import {
  type ClaimedUpdate,
  type Clock,
  claimUpdates,
  finishUpdate,
  type Log,
  MAX_TRIES,
  retryUpdate,
  type Store,
} from '../../db/index.ts';
import type { UpdateHandler } from '../create-bot.ts';

/** People whose updates are handled at the same time. One person's are handled in order. */
const LANES = 8;
const BATCH = 100;
/** A handler that has not ended by then has died with its process. */
const ABANDONED_MS = 60_000;

/** What the inbox worker needs. */
export interface InboxDeps {
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
  readonly botId: number;
  readonly handler: UpdateHandler;
}

/** Handles everything that waits in the inbox and returns how many updates that were. */
export async function drainInbox(deps: InboxDeps): Promise<number> {
  let handled = 0;
  for (;;) {
    const now = deps.clock.now();
    const claimed = await claimUpdates(deps.store, {
      botId: deps.botId,
      abandonedBefore: new Date(now.getTime() - ABANDONED_MS),
      limit: BATCH,
      now,
    });
    if (claimed.length === 0) return handled;
    await handleByPerson(deps, claimed);
    handled += claimed.length;
  }
}

async function handleByPerson(deps: InboxDeps, updates: readonly ClaimedUpdate[]): Promise<void> {
  const people = new Map<string, ClaimedUpdate[]>();
  for (const update of updates) {
    const key = String(update.actorId ?? `update ${update.updateId}`);
    people.set(key, [...(people.get(key) ?? []), update]);
  }
  const waiting = [...people.values()];
  const lane = async () => {
    for (let own = waiting.shift(); own; own = waiting.shift()) {
      for (const update of own) await handleOne(deps, update);
    }
  };
  await Promise.all(Array.from({ length: LANES }, lane));
}

async function handleOne(deps: InboxDeps, claimed: ClaimedUpdate): Promise<void> {
  const key = { botId: deps.botId, updateId: claimed.updateId };
  // Stored as it came from the service; grammY itself treats every update so.
  const update = claimed.payload as Update;
  try {
    await deps.handler.handle(update);
    await finishUpdate(deps.store, key, deps.clock.now());
  } catch (error) {
    const last = claimed.tries >= MAX_TRIES;
    const problem = error instanceof Error ? error.name : typeof error;
    deps.log.error({ updateId: claimed.updateId, tries: claimed.tries, problem }, 'update_failed');
    if (last) await apologise(deps, update);
    await retryUpdate(deps.store, key, deps.clock.now());
  }
}

async function apologise(deps: InboxDeps, update: Update): Promise<void> {
  try {
    await deps.handler.apologise(update);
  } catch {
    deps.log.error({ updateId: update.update_id }, 'apology_failed');
  }
}
