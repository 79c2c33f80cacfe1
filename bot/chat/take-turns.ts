import type { Transformer } from 'grammy';
import type { Turnstile } from '../../db/index.ts';

/** Longer than this nobody waits for an answer; the update is handled again later. */
const LONGEST_WAIT_MS = 10_000;

/** New messages are what the service counts; changes to a message and answers to a tap only keep its pauses. */
const NEW_MESSAGE = /^(send(?!ChatAction)|copyMessage|forwardMessage)/;
const CHANGE = /^(edit|answer|delete(?!Webhook))/;

/**
 * Has the answers to people keep the rate that all senders of a bot share: they take their turn before everything that is sent
 * in bulk. A "too many" of the service pauses everybody. What would wait too long is not called and fails as the service would
 * have it.
 */
export function takeTurns(turnstile: Turnstile): Transformer {
  return async (previous, method, payload, signal) => {
    const wait = await waitFor(turnstile, method, payload);
    if (wait > 0) {
      const seconds = Math.ceil(wait / 1_000);
      return {
        ...{ ok: false, error_code: 429, parameters: { retry_after: seconds } },
        description: `Too Many Requests: retry after ${seconds}`,
      };
    }
    const result = await previous(method, payload, signal);
    if (!result.ok && result.error_code === 429) {
      await turnstile.pause(result.parameters?.retry_after ?? 1);
    }
    return result;
  };
}

function waitFor(turnstile: Turnstile, method: string, payload: object): Promise<number> {
  const most = LONGEST_WAIT_MS;
  const chatId = 'chat_id' in payload ? Number(payload.chat_id) : Number.NaN;
  if (NEW_MESSAGE.test(method) && Number.isSafeInteger(chatId)) {
    return turnstile.pass({ chatId, haste: 'answer', most });
  }
  return CHANGE.test(method) ? turnstile.passPause(most) : Promise.resolve(0);
}
