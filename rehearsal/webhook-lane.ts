import { z } from 'zod';

/** Updates that wait for each other. `notBefore` is milliseconds of the app's clock. */
export interface Lane {
  isBusy: boolean;
  failures: number;
  notBefore: number;
}

export function newLane(): Lane {
  return { isBusy: false, failures: 0, notBefore: 0 };
}

const someone = z.object({ id: z.int() });
const tapped = z.object({ callback_query: z.object({ from: someone }) });
const inChat = z.object({ chat: someone });

/**
 * The lane of an update: a person's taps are one, a chat's messages another (tdlib/telegram-bot-api Client.cpp: the chat for
 * messages, the user plus 3<<33 for taps), so a tap and a message of one person may overtake each other. That a block goes
 * with the chat's messages is from memory. What cannot be read goes its own way.
 *
 * @example
 * laneOf({ update_id: 1, callback_query: { from: { id: 4101 } } }); // => 'taps of 4101'
 */
export function laneOf(update: Record<string, unknown>): string {
  const tap = tapped.safeParse(update);
  if (tap.success) return `taps of ${tap.data.callback_query.from.id}`;
  const about = Object.values(update).map((value) => inChat.safeParse(value));
  const chat = about.find(({ success }) => success)?.data?.chat.id;
  return chat === undefined ? `update ${update.update_id}` : `chat ${chat}`;
}

/** The longest a `Retry-After` is honoured, in seconds (WebhookActor.cpp). */
const LONGEST_WAIT_S = 3600;

/**
 * Seconds before an update is sent again after its `failures`-th failure in a row: at once, then 2, 4, 8 and so on up to a
 * value between 60 and 120 (WebhookActor.cpp). The service draws that value; here `salt` chooses it, so that runs repeat.
 *
 * @example
 * [1, 2, 3, 4].map((failures) => retryDelay(failures, 0)); // => [0, 2, 4, 8]
 */
export function retryDelay(failures: number, salt: number): number {
  return failures <= 1 ? 0 : Math.min(2 ** (failures - 1), 60 + (Math.abs(salt) % 61));
}

/** Makes the lane wait; `retryAfter` is what the webhook asked for, in seconds. */
export function noteFailure(
  lane: Lane,
  now: number,
  retryAfter: number | undefined,
  salt: number,
): void {
  lane.failures += 1;
  const asked = Math.min(retryAfter ?? 0, LONGEST_WAIT_S);
  lane.notBefore = now + Math.max(asked, retryDelay(lane.failures, salt)) * 1000;
}

export function noteSuccess(lane: Lane): void {
  lane.failures = 0;
  lane.notBefore = 0;
}
