import { AsyncLocalStorage } from 'node:async_hooks';
import type { Transformer } from 'grammy';

const quiet = new AsyncLocalStorage<true>();

/**
 * Does work during which every new message goes out without a sound, however deep in it the message is sent.
 *
 * @example
 * await quietly(() => postScreen(deps, chatId, screen));
 */
export function quietly<T>(work: () => T): T {
  return quiet.run(true, work);
}

/** Tells the service so. Edits never make a sound, and answers to taps have none. */
export const keepQuiet: Transformer = (previous, method, payload, signal) => {
  if (!quiet.getStore() || !method.startsWith('send')) return previous(method, payload, signal);
  return previous(method, { ...payload, disable_notification: true }, signal);
};
