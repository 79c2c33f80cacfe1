import { crashedBy, forgetChatSlots, inRequest, problemOf, settleDelivery } from '../db/index.ts';
import { deliver } from './deliver.ts';
import type { SendDeps } from './ports.ts';
import { recover } from './sweep.ts';

/** The sender of one bot in one process. Any number of processes may have one: they share the bot's line. */
export interface Sender {
  /** Sends everything that is waiting now; for scripts and tests. Returns how many jobs that were. */
  drain(): Promise<number>;
  /** Takes up what earlier processes left behind, if no other one sends, and keeps sending until the store closes. */
  start(): Promise<void>;
  /** Takes up no more; resolves once what is under way has ended. */
  stop(): Promise<void>;
}

/** Chats forgotten at a time, once nothing was sent to them for so long. */
const CHATS_AT_ONCE = 5_000;
const CHAT_MS = 60_000;

/** Puts ledger and courier together. */
export function createSender(deps: SendDeps): Sender {
  const { store, botId, lanes } = deps;
  const send = async (ledgerId: string, isLast: boolean) => {
    try {
      await deliver(deps, ledgerId);
    } catch (error) {
      deps.log.error({ ledgerId, problem: problemOf(error) }, 'delivery_crashed');
      if (isLast) await setAside(deps, ledgerId, error);
      // The engine retries the job and keeps it as a dead letter in the end.
      throw error;
    }
  };
  const handler = (ledgerId: string, isLast: boolean) =>
    inRequest({ id: `message ${ledgerId}` }, () => send(ledgerId, isLast));
  return {
    drain: () => store.queue.drain(botId, handler, lanes),
    start: async () => {
      await store.peers.join(`send ${botId}`, async () => {
        await recover(deps);
        const before = new Date(deps.pace.now().getTime() - CHAT_MS);
        await forgetChatSlots(store, { botId, before, limit: CHATS_AT_ONCE });
      });
      await store.queue.work(botId, handler, lanes);
    },
    stop: () => store.queue.rest(botId),
  };
}

/**
 * What fails whenever it is tried is a fault of ours: its message is kept for the operator, who can have it sent after all.
 * When even that cannot be stored the database is what fails, and the message goes on waiting.
 */
async function setAside({ store, clock, log }: SendDeps, ledgerId: string, error: unknown) {
  const problem = crashedBy(problemOf(error));
  try {
    const now = clock.now();
    await settleDelivery(store, ledgerId, { status: 'failed', problem }, now, ['planned']);
  } catch (failure) {
    log.error({ ledgerId, problem: problemOf(failure) }, 'dead_letter_not_kept');
  }
}
