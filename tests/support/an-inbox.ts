import {
  claimUpdates,
  finishUpdate,
  nextTryAt,
  retryUpdate,
  returnAbandoned,
  returnUpdates,
  type Store,
  setAsideUpdate,
  storeUpdates,
} from '../../db/index.ts';
import { readTable } from './raw-rows.ts';
import { MORNING } from './term.ts';

/** Before everything: nothing counts as abandoned. */
export const NEVER = new Date(0);

/** Seconds after the updates came. */
export const at = (seconds: number) => new Date(MORNING.getTime() + seconds * 1_000);

let lastBot = 100;

/** A bot of its own, so that tests do not see each other's updates. */
export function aBot(opened: () => Store, botId?: number) {
  lastBot += 1;
  const bot = botId ?? lastBot;
  /** The update as its latest taker names it, unless an earlier try is meant. */
  const key = async (updateId: number, tries?: number) => {
    const rows = await readTable(opened(), 'inbox');
    const row = rows.find((each) => each.bot_id === bot && each.update_id === updateId);
    return { botId: bot, updateId, tries: tries ?? Number(row?.tries) };
  };
  return {
    botId: bot,
    receive: (...ids: number[]) => receive(opened(), bot, 7, ids),
    receiveFrom: (actorId: number | null, ...ids: number[]) => receive(opened(), bot, actorId, ids),
    claim: (now = MORNING, abandonedBefore = NEVER, limit = 10) =>
      claimUpdates(opened(), { botId: bot, abandonedBefore, limit, now }),
    finish: async (updateId: number, now = MORNING, tries?: number) =>
      finishUpdate(opened(), await key(updateId, tries), now),
    retry: async (updateId: number, notBefore = MORNING, now = MORNING, tries?: number) =>
      retryUpdate(opened(), await key(updateId, tries), { notBefore, now }),
    setAside: async (updateId: number) => setAsideUpdate(opened(), await key(updateId), MORNING),
    putBack: (...updateIds: number[]) => returnUpdates(opened(), { botId: bot, updateIds }),
    resume: () => returnAbandoned(opened(), bot),
    nextTry: (after = MORNING) => nextTryAt(opened(), { botId: bot, after }),
    rows: async () =>
      (await readTable(opened(), 'inbox'))
        .filter((row) => row.bot_id === bot)
        .sort((a, b) => Number(a.update_id) - Number(b.update_id)),
  };
}

async function receive(
  store: Store,
  botId: number,
  actorId: number | null,
  ids: readonly number[],
) {
  const updates = ids.map((updateId) => ({
    updateId,
    actorId,
    payload: { text: `t${updateId}` },
  }));
  return (await storeUpdates(store, { botId, updates, now: MORNING })).stored;
}

/** Which updates these are. */
export const idsOf = (updates: readonly { updateId: number }[]) =>
  updates.map((row) => row.updateId);
