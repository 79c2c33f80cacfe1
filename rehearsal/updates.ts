import { ApiError } from './bot-api/envelope.ts';
import type { PendingUpdate, State } from './state.ts';

/** Taps the bot does not take within this time are gone (tdlib/telegram-bot-api Client.cpp, 150 s). */
export const TAP_LIFETIME_MS = 150_000;
/** All other updates wait this long. */
export const UPDATE_LIFETIME_MS = 86_400_000;

const OTHER_POLLER =
  'Conflict: terminated by other getUpdates request; make sure that only one bot instance is running';
const WEBHOOK_IS_SET =
  "Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first";

const OPT_IN_ONLY = ['chat_member', 'message_reaction', 'message_reaction_count'];

export interface Poll {
  readonly offset?: number | undefined;
  readonly limit?: number | undefined;
  /** Seconds, of the machine's clock: a poll is a held connection. */
  readonly timeout?: number | undefined;
  readonly allowedUpdates?: readonly string[] | undefined;
  /** Aborted when the poller hangs up. */
  readonly signal: AbortSignal;
}

export type UpdateBody = Record<string, unknown>;

interface Waiting {
  wake(): void;
  conflict(description: string): void;
}

export interface UpdateQueue {
  /** Adds an update unless the bot asked for other kinds only. Returns its id, or undefined when left out. */
  push(body: UpdateBody, lifetimeMs: number): number | undefined;
  /** Adds a ready-made update as it stands; an `update_id` in it is kept, even a repeated one. */
  inject(update: UpdateBody): number;
  pending(): number;
  /** Updates the bot has not taken, oldest first. */
  waiting(): readonly PendingUpdate[];
  /** Forgets one update, because a webhook took it. */
  remove(update: PendingUpdate): void;
  /** Calls back after each update that comes. */
  onAdded(listener: () => void): void;
  /** Ends a waiting poll with a 409. */
  interrupt(description: string): void;
  /** Answers at once when something waits, otherwise when something comes or time is up. A 409 while there is a webhook. */
  poll(poll: Poll): Promise<readonly unknown[]>;
  forgetAll(): void;
  close(): void;
}

interface QueueParts {
  readonly state: State;
  /** What joins the queue when an update comes. */
  arrivals(update: PendingUpdate): readonly PendingUpdate[];
  now(): number;
  changed(): void;
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}

/** Forgets what the offset confirms. Says whether anything was forgotten. */
function confirm(state: State, offset: number): boolean {
  const before = state.pending.length;
  if (offset < 0) state.pending = state.pending.slice(offset);
  else if (offset > 0)
    state.pending = state.pending.filter(({ update }) => update.update_id >= offset);
  return state.pending.length !== before;
}

function isWanted(state: State, body: UpdateBody): boolean {
  const kind = Object.keys(body).find((key) => key !== 'update_id') ?? '';
  const wanted = state.allowedUpdates;
  if (wanted === undefined || wanted.length === 0) return !OPT_IN_ONLY.includes(kind);
  return wanted.includes(kind);
}

/** Waits for the next update, the end of the time, a hang-up or another poller. */
function waitForUpdate(
  poll: Poll,
  seconds: number,
  announce: (waiting: Waiting) => void,
): Promise<void> {
  return new Promise((resolve, reject) => {
    const finish = (settle: () => void) => (): void => {
      clearTimeout(timer);
      poll.signal.removeEventListener('abort', wake);
      settle();
    };
    const wake = finish(resolve);
    const conflict = (description: string): void =>
      finish(() => reject(new ApiError(409, description)))();
    const timer = setTimeout(wake, seconds * 1000);
    poll.signal.addEventListener('abort', wake);
    announce({ wake, conflict });
  });
}

/** The bot's queue of updates: ids in sequence, confirmed by offset, one poller at a time. */
export function createUpdateQueue(parts: QueueParts): UpdateQueue {
  const { state } = parts;
  let waiting: Waiting | undefined;
  let closed = false;
  let added = (): void => {};

  const alive = (): PendingUpdate[] => {
    const now = parts.now();
    state.pending = state.pending.filter(({ expiresAt }) => expiresAt > now);
    return state.pending;
  };
  const add = (update: PendingUpdate['update'], lifetimeMs: number): number => {
    state.pending.push(...parts.arrivals({ update, expiresAt: parts.now() + lifetimeMs }));
    parts.changed();
    waiting?.wake();
    added();
    return update.update_id;
  };
  const nextId = (): number => state.nextUpdateId++;

  return {
    push: (body, lifetimeMs) =>
      isWanted(state, body) ? add({ update_id: nextId(), ...body }, lifetimeMs) : undefined,
    inject: (update) => {
      const given = update.update_id;
      return add(
        { ...update, update_id: typeof given === 'number' ? given : nextId() },
        UPDATE_LIFETIME_MS,
      );
    },
    pending: () => alive().length,
    waiting: alive,
    remove: (update) => {
      state.pending = state.pending.filter((it) => it !== update);
      parts.changed();
    },
    onAdded: (listener) => {
      added = listener;
    },
    interrupt: (description) => waiting?.conflict(description),
    forgetAll: () => {
      state.pending = [];
      parts.changed();
    },
    close: () => {
      closed = true;
      waiting?.wake();
    },
    poll: async (poll) => {
      if (state.webhook !== undefined) throw new ApiError(409, WEBHOOK_IS_SET);
      waiting?.conflict(OTHER_POLLER);
      if (poll.allowedUpdates !== undefined) state.allowedUpdates = [...poll.allowedUpdates];
      if (confirm(state, poll.offset ?? 0)) parts.changed();
      const seconds = clamp(poll.timeout ?? 0, 0, 50);
      if (alive().length === 0 && seconds > 0 && !closed && !poll.signal.aborted) {
        let mine: Waiting | undefined;
        await waitForUpdate(poll, seconds, (announced) => {
          mine = announced;
          waiting = announced;
        }).finally(() => {
          if (waiting === mine) waiting = undefined;
        });
      }
      return alive()
        .slice(0, clamp(poll.limit ?? 100, 1, 100))
        .map(({ update }) => update);
    },
  };
}
