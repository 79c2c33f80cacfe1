import type { Transformer } from 'grammy';

/** Tries for an answer to a tap: people are waiting, so few and short. */
const TRIES = 3;
const LONGEST_WAIT_SECONDS = 10;

/**
 * Repeats a call that the service surely did not carry out because it had too many (429): after the time it asks for, if
 * that is short. Time-outs and broken connections are not repeated here, since the call may have been carried out.
 */
export function retryRefused(sleep: (milliseconds: number) => Promise<void>): Transformer {
  return async (previous, method, payload, signal) => {
    for (let tried = 1; ; tried += 1) {
      const result = await previous(method, payload, signal);
      if (result.ok || result.error_code !== 429 || tried >= TRIES) return result;
      const seconds = result.parameters?.retry_after ?? 1;
      if (seconds > LONGEST_WAIT_SECONDS) return result;
      await sleep(seconds * 1_000);
    }
  };
}
