import type { CallBody } from './bot-api/body.ts';
import { tooManyRequests } from './bot-api/envelope.ts';

/** One message a second in a chat; that bursts are tolerated is published, that they end after five is ours. */
const CHAT = { everyMs: 1000, burst: 5 };
/** About thirty messages a second to all chats together. */
const ALL = { everyMs: 1000 / 30, burst: 30 };

/** A thirtieth of a second is no exact number, and thirty of them may come out a little over a second. */
const ROUNDING_MS = 0.001;

/** Uploads over this many bytes wait for others of the very same size (tdlib/telegram-bot-api Client.cpp). */
const SMALL_UPLOAD = 100_000;
const UPLOAD_BURST_MS = 1000;
const LONGEST_QUEUE_MS = 5000;
const HELD_MS = 3000;
const HELD_RETRY_S = 60;

/** The machine's time: how fast a bot may send has nothing to do with the app's clock. */
export interface Pace {
  /** Milliseconds. */
  now(): number;
  sleep(ms: number): Promise<void>;
}

export interface RateLimits {
  isOn(): boolean;
  turn(on: boolean): void;
  /** Lets a call pass, at once or when an upload's turn comes. Throws a 429 with the seconds to wait. */
  admit(method: string, body: CallBody): Promise<void>;
}

interface Rate {
  readonly everyMs: number;
  readonly burst: number;
}

/** Takes new messages as what is counted; that edits and answers are not is mild, the service counts them too. */
function isCounted(method: string): boolean {
  return /^(send(?!chataction)|copymessage)/i.test(method);
}

/**
 * Milliseconds between uploads of one size.
 *
 * @example
 * uploadSpacing(4_000_000); // => 400
 */
export function uploadSpacing(bytes: number): number {
  return Math.min(Math.max(bytes / 10_000, 200), 900);
}

/**
 * The service's limits: per chat, for all chats, and per size of an upload. Rates are from its FAQ (about one message a
 * second in a chat, about thirty in all), which calls them approximate; the upload rule is from its source.
 */
export function createRateLimits(pace: Pace, startsOn: boolean): RateLimits {
  let isOn = startsOn;
  // When, at its own rate, what was let through would have been sent.
  const paidUntil = new Map<string, number>();
  const early = (key: string, { everyMs, burst }: Rate): number =>
    (paidUntil.get(key) ?? 0) - pace.now() - everyMs * (burst - 1);
  const pay = (key: string, ms: number): void => {
    paidUntil.set(key, Math.max(paidUntil.get(key) ?? 0, pace.now()) + ms);
  };
  const uploadTurn = async (bytes: number): Promise<void> => {
    if (bytes <= SMALL_UPLOAD) return;
    const key = `upload ${bytes}`;
    const waitMs = (paidUntil.get(key) ?? 0) - pace.now() - UPLOAD_BURST_MS;
    if (waitMs > LONGEST_QUEUE_MS) {
      await pace.sleep(HELD_MS);
      throw tooManyRequests(HELD_RETRY_S);
    }
    pay(key, uploadSpacing(bytes));
    if (waitMs > 0) await pace.sleep(waitMs);
  };
  return {
    isOn: () => isOn,
    turn: (on) => {
      isOn = on;
      paidUntil.clear();
    },
    admit: async (method, { params, uploads }) => {
      if (!isOn) return;
      if (isCounted(method)) {
        const chat = `chat ${params.chat_id}`;
        const waitMs = Math.max(early(chat, CHAT), early('all', ALL));
        if (waitMs > ROUNDING_MS) throw tooManyRequests(Math.ceil((waitMs - ROUNDING_MS) / 1000));
        pay(chat, CHAT.everyMs);
        pay('all', ALL.everyMs);
      }
      const sizes = [...uploads.values()].map(({ bytes }) => bytes.length);
      await uploadTurn(sizes.reduce((sum, size) => sum + size, 0));
    },
  };
}
