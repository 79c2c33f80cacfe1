import type { Transformer } from 'grammy';

/** Tries for an answer to a tap: people are waiting, so few and short. */
const TRIES = 3;
const LONGEST_WAIT_SECONDS = 10;

/**
 * Repeats a call that the service answered without carrying it out: it had too many (429), then after the time it asks for,
 * if that is short; or it failed itself (5xx), then after a second and after two. Time-outs and broken connections are not
 * repeated here, since the call may have been carried out.
 */
export function retryRefused(sleep: (milliseconds: number) => Promise<void>): Transformer {
  return async (previous, method, payload, signal) => {
    for (let tried = 1; ; tried += 1) {
      const result = await previous(method, payload, signal);
      if (result.ok || tried >= TRIES) return result;
      const isTooMany = result.error_code === 429;
      if (!isTooMany && result.error_code < 500) return result;
      const seconds = isTooMany ? (result.parameters?.retry_after ?? 1) : tried;
      if (seconds > LONGEST_WAIT_SECONDS) return result;
      await sleep(seconds * 1_000);
    }
  };
}
