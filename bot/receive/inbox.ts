import type { Update } from 'grammy/types';
import {
  type ClaimedUpdate,
  type Clock,
  claimUpdates,
  finishUpdate,
  HANDLER_TRIES,
  inRequest,
  type Log,
  nextTryAt,
  problemOf,
  retryUpdate,
  returnAbandoned,
  returnUpdates,
  type Store,
  setAsideUpdate,
} from '../../db/index.ts';
import { apiProblem } from '../chat/api-error.ts';
import { LostSend } from '../chat/lost-send.ts';
import type { UpdateHandler } from '../create-bot.ts';

/** Updates in hand at the same time, each of another person: one person's are handled in order. */
const IN_HAND = 16;
/** With fewer than this free no more are taken: to take them costs about as much for many as for one. */
const WORTH_TAKING = 4;
/** A handler that has not ended by then has died with its process. */
const ABANDONED_MS = 60_000;
/** Until the next try after the first failure, the second, and every later one: trouble with a network or a database lasts. */
const WAITS_MS: readonly number[] = [5_000, 30_000];
const LONGEST_WAIT_MS = 120_000;

/** What the inbox worker needs. */
export interface InboxDeps {
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
  readonly botId: number;
  readonly handler: UpdateHandler;
  /** Called at each look into the inbox that the database has answered. */
  readonly looked?: (() => void) | undefined;
}

/** What a look into the inbox came to: how many updates were taken, and when the next try of a failed one is due, if any is. */
export interface Drained {
  readonly handled: number;
  readonly nextAt: Date | null;
}

/**
 * Counts this process among those that handle a bot's updates, and takes up at once what an earlier one left in the middle,
 * unless another one is still at work. Once, before the first drain.
 */
export async function resumeInbox({ store, log, botId }: InboxDeps): Promise<void> {
  await store.peers.join(`work ${botId}`, async () => {
    const updates = await returnAbandoned(store, botId);
    if (updates > 0) log.info({ updates }, 'inbox_resumed');
  });
}

/** What may happen while the inbox is worked off: something comes in, or it is to stop. */
export interface Meanwhile {
  /** Resolves when something has come in since. */
  news(): Promise<void>;
  readonly stopping: AbortSignal;
}

/**
 * Handles everything in the inbox that is due. It takes no more than it can begin with at once, so that nobody's tap lies
 * behind another person's slow one, and other processes find something to do.
 */
export async function drainInbox(deps: InboxDeps, meanwhile?: Meanwhile): Promise<Drained> {
  const { store, botId } = deps;
  const inHand = new Set<Promise<void>>();
  let handled = 0;
  for (;;) {
    const news = meanwhile?.news();
    const claimed = meanwhile?.stopping.aborted ? [] : await claim(deps, inHand);
    handled += claimed.length;
    for (const own of byPerson(claimed)) {
      const work: Promise<void> = handleInOrder(deps, own).finally(() => inHand.delete(work));
      inHand.add(work);
    }
    if (inHand.size === 0) {
      const after = deps.clock.now();
      return { handled, nextAt: await nextTryAt(store, { botId, after }) };
    }
    // Something was taken: there may be more. Otherwise more can come by news, or by the end of what holds it up.
    const isFull = IN_HAND - inHand.size < WORTH_TAKING;
    if (claimed.length > 0 && !isFull) continue;
    await Promise.race(isFull || !news ? inHand : [...inHand, news]);
    while (IN_HAND - inHand.size < WORTH_TAKING) await Promise.race(inHand);
  }
}

/** Takes as many as fit in the hand. When that fails, what is in it is handled to its end first. */
async function claim(
  { store, clock, botId, looked }: InboxDeps,
  inHand: ReadonlySet<Promise<void>>,
): Promise<ClaimedUpdate[]> {
  const now = clock.now();
  const abandonedBefore = new Date(now.getTime() - ABANDONED_MS);
  try {
    const limit = IN_HAND - inHand.size;
    const claimed = await claimUpdates(store, { botId, abandonedBefore, limit, now });
    looked?.();
    return claimed;
  } catch (error) {
    await Promise.all(inHand);
    throw error;
  }
}

/** Updates of the same person together, in order; those of nobody are each their own. */
function byPerson(updates: readonly ClaimedUpdate[]): ClaimedUpdate[][] {
  const people = new Map<string, ClaimedUpdate[]>();
  for (const update of updates) {
    const key = String(update.actorId ?? `update ${update.updateId}`);
    people.set(key, [...(people.get(key) ?? []), update]);
  }
  return [...people.values()];
}

/** One person's updates, until one has to wait: a later tap must not overtake it. */
async function handleInOrder(deps: InboxDeps, own: readonly ClaimedUpdate[]): Promise<void> {
  try {
    for (const [place, update] of own.entries()) {
      const request = { id: `update ${deps.botId}/${update.updateId}`, since: update.receivedAt };
      if (await inRequest(request, () => handleOne(deps, update))) continue;
      const updateIds = own.slice(place + 1).map((later) => later.updateId);
      return await returnUpdates(deps.store, { botId: deps.botId, updateIds });
    }
  } catch (error) {
    // The store did not take how it ended. It counts as abandoned in a while; the other people go on.
    deps.log.error({ problem: problemOf(error) }, 'inbox_failed');
  }
}

/** Handles an update. False when it has to be tried again, and what follows has to wait for it. */
async function handleOne(deps: InboxDeps, claimed: ClaimedUpdate): Promise<boolean> {
  const { store, clock, log, handler } = deps;
  const { updateId, tries } = claimed;
  const key = { botId: deps.botId, updateId, tries };
  // Stored as it came from the service; grammY itself treats every update so.
  const update = claimed.payload as Update;
  if (claimed.shed) {
    await tellLeftOut(deps, claimed);
    return true;
  }
  if (tries > HANDLER_TRIES) {
    await apologise(deps, claimed, update);
    return true;
  }
  try {
    await handler.handle(update);
  } catch (error) {
    if (!(error instanceof LostSend)) {
      log.error({ updateId, tries, problem: problemOf(error) }, 'update_failed');
      if (tries < HANDLER_TRIES) {
        await retryLater(deps, claimed);
        return false;
      }
      await apologise(deps, claimed, update);
      return true;
    }
    log.warn({ updateId, problem: apiProblem(error).kind }, 'reply_lost');
  }
  await finishUpdate(store, key, clock.now());
  return true;
}

/** Somebody who sends more than is kept hears it once. When that fails it is not tried again: it would only be one more. */
async function tellLeftOut(deps: InboxDeps, claimed: ClaimedUpdate): Promise<void> {
  const { updateId, actorId, tries } = claimed;
  deps.log.warn({ updateId }, 'updates_left_out');
  try {
    if (actorId !== null) await deps.handler.leftOut(actorId);
  } catch (error) {
    deps.log.warn({ updateId, problem: apiProblem(error).kind }, 'reply_lost');
  }
  await finishUpdate(deps.store, { botId: deps.botId, updateId, tries }, deps.clock.now());
}

/** The person hears that it is our fault, later if it cannot be now. */
async function apologise(deps: InboxDeps, claimed: ClaimedUpdate, update: Update): Promise<void> {
  const { updateId, tries } = claimed;
  try {
    await deps.handler.apologise(update);
  } catch (error) {
    const { kind } = apiProblem(error);
    deps.log.error({ updateId, problem: kind }, 'apology_failed');
    // Whoever is gone will not hear it later either, and one that may have arrived is not repeated.
    if (kind === 'too_many' || kind === 'service_error' || kind === 'not_connected') {
      return retryLater(deps, claimed);
    }
  }
  await setAsideUpdate(deps.store, { botId: deps.botId, updateId, tries }, deps.clock.now());
}

async function retryLater(deps: InboxDeps, { updateId, tries }: ClaimedUpdate): Promise<void> {
  const now = deps.clock.now();
  const notBefore = new Date(now.getTime() + (WAITS_MS[tries - 1] ?? LONGEST_WAIT_MS));
  await retryUpdate(deps.store, { botId: deps.botId, updateId, tries }, { notBefore, now });
}
