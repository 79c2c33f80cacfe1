import {
  claimDelivery,
  type Delivery,
  findFollower,
  markUnreachable,
  pauseSending,
  postponeDelivery,
  readDelivery,
  settleDelivery,
  takeSendSlot,
} from '../db/index.ts';
import type { EngineDeps, Outcome } from './ports.ts';

/** How often a message that surely did not arrive is tried before it goes back in line. */
const TRIES = 5;
/** Then it waits this long. */
const POSTPONE_MS = 60_000;

/**
 * Sends one message that is owed, once. Safe to call twice for the same row: the second call finds it taken.
 *
 * Only what surely did not arrive is tried again (refused, too many, the service answered with its own error). A call that
 * left and was never answered becomes `unknown` and is not repeated: the nudge carries the same button, so nobody gets two
 * and nothing is lost. A message that follows this one in the same chat is sent next.
 */
export async function deliver(deps: EngineDeps, ledgerId: string): Promise<void> {
  const delivery = await readDelivery(deps.store, ledgerId);
  if (!delivery || delivery.notBefore > deps.clock.now()) return;
  await send(deps, delivery);
  const next = await findFollower(deps.store, ledgerId);
  if (next) await deliver(deps, next);
}

async function send(deps: EngineDeps, delivery: Delivery): Promise<void> {
  const { store, clock, courier } = deps;
  const isTooLate = () => clock.now() >= delivery.expiresAt;
  if (isTooLate()) return fail(deps, delivery, 'too_late');
  const parcel = await courier.prepare(delivery);
  if (!parcel) return fail(deps, delivery, 'not_wanted');
  await waitForSlot(deps);
  // The wait may have been long, when the service asked everybody to pause.
  if (isTooLate()) return fail(deps, delivery, 'too_late');
  // The attempt is written down before the call leaves, and after everything that can be done before it.
  if (!(await claimDelivery(store, delivery.id, clock.now()))) return;
  let outcome = await parcel.send();
  for (let tried = 1; outcome.kind === 'refused' && tried < TRIES; tried += 1) {
    await backOff(deps, outcome.retryAfterSeconds, tried);
    if (isTooLate()) return fail(deps, delivery, 'too_late');
    outcome = await parcel.send();
  }
  await settle(deps, delivery, outcome);
}

async function waitForSlot({ store, pace, botId }: EngineDeps): Promise<void> {
  const wait = await takeSendSlot(store, botId, pace.now());
  if (wait > 0) await pace.sleep(wait);
}

async function backOff(
  deps: EngineDeps,
  retryAfterSeconds: number | undefined,
  tried: number,
): Promise<void> {
  if (retryAfterSeconds === undefined) {
    await deps.pace.sleep(1_000 * 2 ** (tried - 1));
    return;
  }
  const until = new Date(deps.pace.now().getTime() + retryAfterSeconds * 1_000);
  await pauseSending(deps.store, deps.botId, until);
  deps.log.warn({ seconds: retryAfterSeconds }, 'sending_paused');
  await waitForSlot(deps);
}

async function settle(deps: EngineDeps, delivery: Delivery, outcome: Outcome): Promise<void> {
  const { store, log } = deps;
  const now = deps.clock.now();
  switch (outcome.kind) {
    case 'sent':
      return settleDelivery(
        store,
        delivery.id,
        { status: 'sent', messageId: outcome.messageId },
        now,
      );
    case 'refused':
      log.warn({ ledgerId: delivery.id, problem: outcome.problem }, 'delivery_postponed');
      return postponeDelivery(store, delivery.id, {
        notBefore: new Date(now.getTime() + POSTPONE_MS),
        problem: outcome.problem,
      });
    case 'gone':
      await markUnreachable(store, delivery.chatId, now);
      return fail(deps, delivery, outcome.problem);
    case 'rejected':
      return fail(deps, delivery, outcome.problem);
    case 'unknown':
      log.warn({ ledgerId: delivery.id, problem: outcome.problem }, 'delivery_unknown');
      return settleDelivery(
        store,
        delivery.id,
        { status: 'unknown', problem: outcome.problem },
        now,
      );
  }
}

async function fail(deps: EngineDeps, delivery: Delivery, problem: string): Promise<void> {
  if (problem !== 'not_wanted') {
    deps.log.warn({ ledgerId: delivery.id, kind: delivery.kind, problem }, 'delivery_failed');
  }
  await settleDelivery(deps.store, delivery.id, { status: 'failed', problem }, deps.clock.now());
}
