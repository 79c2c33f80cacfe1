import type { PendingUpdate, State } from './state.ts';
import type { UpdateQueue } from './updates.ts';
import { type Delivery, deliverUpdate, type WebhookReply } from './webhook-delivery.ts';
import { type Lane, laneOf, newLane, noteFailure, noteSuccess } from './webhook-lane.ts';

/** A webhook that answers 410 for this long is dropped (tdlib/telegram-bot-api WebhookActor.cpp). */
const GONE_LIMIT_MS = 23 * 3_600_000;
/** The app's clock may stand still or jump, so a wait is looked at again after this much of the machine's time. */
const LOOK_AGAIN_MS = 1000;

export interface WebhookSender {
  /** Sends what is due by the app's clock. Called when an update comes, when the clock moved and when a webhook is set. */
  look(): void;
  /** Forgets failures and waits and hangs up on calls under way, as a new webhook begins afresh. */
  reset(): void;
  close(): void;
}

type Failure = Extract<Delivery, { kind: 'failed' }>;

interface SenderParts {
  readonly state: State;
  readonly updates: UpdateQueue;
  now(): number;
  changed(): void;
  /** Waits by the machine's clock. */
  machineSleep(ms: number): Promise<void>;
  /** Makes the call a webhook wrote into its answer. */
  reply(call: WebhookReply): Promise<void>;
}

/** Keeps what `getWebhookInfo` tells, and drops a webhook that has been gone for too long. */
function noteTrouble(state: State, { message, status }: Failure, now: number): void {
  const { webhook } = state;
  if (webhook === undefined) return;
  webhook.lastError = { at: now, message };
  if (status === 410) webhook.goneSince ??= now;
  else delete webhook.goneSince;
  if (now - (webhook.goneSince ?? now) > GONE_LIMIT_MS) delete state.webhook;
}

/**
 * Sends updates to the bot's webhook: one at a time a lane, so each lane keeps its order while lanes overtake one another,
 * and at most `max_connections` at once. A failed update is sent again until it expires; its lane waits for it.
 */
export function createWebhookSender(parts: SenderParts): WebhookSender {
  const { state, updates } = parts;
  const lanes = new Map<string, Lane>();
  let calls = new AbortController();
  const closing = new AbortController();
  let inFlight = 0;
  let isWaiting = false;

  const settle = (pending: PendingUpdate, lane: Lane, delivery: Delivery): void => {
    const { webhook } = state;
    if (delivery.kind === 'taken') {
      updates.remove(pending);
      noteSuccess(lane);
      if (webhook !== undefined) delete webhook.goneSince;
      if (delivery.reply !== undefined) void parts.reply(delivery.reply);
      return;
    }
    noteFailure(lane, parts.now(), delivery.retryAfter, pending.update.update_id);
    noteTrouble(state, delivery, parts.now());
    parts.changed();
  };
  const send = async (pending: PendingUpdate, lane: Lane): Promise<void> => {
    const { webhook } = state;
    if (webhook === undefined) return;
    lane.isBusy = true;
    inFlight += 1;
    const delivery = await deliverUpdate(
      webhook,
      pending.update,
      AbortSignal.any([closing.signal, calls.signal]),
    );
    lane.isBusy = false;
    inFlight -= 1;
    if (closing.signal.aborted) return;
    // What an older webhook answered says nothing of the one that took its place.
    if (state.webhook === webhook) settle(pending, lane, delivery);
    look();
  };
  const look = (): void => {
    if (closing.signal.aborted || state.webhook === undefined) return;
    let waitMs = Number.POSITIVE_INFINITY;
    for (const pending of updates.waiting()) {
      const key = laneOf(pending.update);
      const lane = lanes.get(key) ?? newLane();
      lanes.set(key, lane);
      if (lane.isBusy) continue;
      const early = lane.notBefore - parts.now();
      if (early > 0) waitMs = Math.min(waitMs, early);
      else if (inFlight < state.webhook.maxConnections) void send(pending, lane);
    }
    if (Number.isFinite(waitMs)) void lookLater(Math.min(waitMs, LOOK_AGAIN_MS));
  };
  const lookLater = async (ms: number): Promise<void> => {
    if (isWaiting) return;
    isWaiting = true;
    await parts.machineSleep(ms);
    isWaiting = false;
    look();
  };
  updates.onAdded(look);
  return {
    look,
    reset: () => {
      calls.abort();
      calls = new AbortController();
      lanes.clear();
    },
    close: () => closing.abort(),
  };
}
