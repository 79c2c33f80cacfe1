import {
  claimDelivery,
  type Delivery,
  findFollowers,
  markUnreachable,
  type Outcome,
  postponeDelivery,
  readDelivery,
  settleDelivery,
} from '../db/index.ts';
import type { SendDeps } from './ports.ts';

/** How often a message that surely did not arrive is tried in a row before it goes back in line. */
const TRIES = 5;
/** Then it waits this long. */
const POSTPONE_MS = 60_000;
/** A wait longer than this is not sat out: the message goes back in line, and the sender is free. */
const LONGEST_WAIT_MS = 30_000;

/**
 * Sends one message that is owed, once. Safe to call twice for the same row: the second call finds it taken.
 *
 * Only what surely did not arrive is tried again (refused, too many, the service answered with its own error). A call that
 * left and was never answered becomes `unknown` and is not repeated: the nudge carries the same button, so nobody gets two
 * and nothing is lost. While a message waits for another try its row is `planned`; it is `attempting` for the length of a
 * call only. A message that follows this one in the same chat is sent next.
 */
export async function deliver(deps: SendDeps, ledgerId: string): Promise<void> {
  for (let tried = 1; tried <= TRIES; tried += 1) {
    const delivery = await readDelivery(deps.store, ledgerId);
    // A class that has moved to another bot took its messages along.
    if (!delivery || delivery.botId !== deps.botId) break;
    // Not due yet. By a little: another computer planned it for now, and its clock is ahead of ours.
    const early = delivery.notBefore.getTime() - deps.clock.now().getTime();
    if (early > LONGEST_WAIT_MS) break;
    if (early > 0) await deps.pace.sleep(early);
    const refused = await send(deps, delivery);
    if (!refused) break;
    await putBack(deps, delivery, refused, tried);
  }
  for (const next of await findFollowers(deps.store, ledgerId)) await deliver(deps, next);
}

type Refused = Extract<Outcome, { kind: 'refused' }>;

/** One attempt. Returns how it was refused, or null when there is nothing more to try. */
async function send(deps: SendDeps, delivery: Delivery): Promise<Refused | null> {
  const { store, clock, turnstile, courier } = deps;
  const isTooLate = () => clock.now() >= delivery.expiresAt;
  if (isTooLate()) return fail(deps, delivery, 'too_late', 'planned');
  const { chatId } = delivery;
  const wait = await turnstile.pass({ chatId, haste: 'bulk', most: LONGEST_WAIT_MS });
  if (wait > 0) {
    await postponeDelivery(store, delivery.id, {
      notBefore: new Date(clock.now().getTime() + wait),
      problem: 'paused',
      from: 'planned',
    });
    return null;
  }
  // After the wait: it may be too late by now, or a nudge no longer wanted.
  if (isTooLate()) return fail(deps, delivery, 'too_late', 'planned');
  const parcel = await courier.prepare(delivery);
  if (!parcel) return fail(deps, delivery, 'not_wanted', 'planned');
  // The attempt is written down before the call leaves, and after everything that can be done before it.
  if (!(await claimDelivery(store, delivery.id, clock.now()))) return null;
  const outcome = await parcel.send();
  if (outcome.kind === 'refused') return outcome;
  await settle(deps, delivery, outcome);
  return null;
}

/** Puts a refused message back in line: now after a short wait, or later when it was refused often or for long. */
async function putBack(
  deps: SendDeps,
  delivery: Delivery,
  { problem, retryAfterSeconds }: Refused,
  tried: number,
): Promise<void> {
  const { store, clock, pace, log, turnstile } = deps;
  const backOffMs = 1_000 * 2 ** (tried - 1);
  if (retryAfterSeconds !== undefined) {
    await turnstile.pause(retryAfterSeconds);
    log.warn({ seconds: retryAfterSeconds }, 'sending_paused');
  }
  const isLast = tried === TRIES;
  if (isLast) log.warn({ ledgerId: delivery.id, problem }, 'delivery_postponed');
  const notBefore = new Date(clock.now().getTime() + (isLast ? POSTPONE_MS : 0));
  await postponeDelivery(store, delivery.id, { notBefore, problem, from: 'attempting' });
  // A pause is waited out in the line that all senders share; only other refusals wait here.
  if (retryAfterSeconds === undefined && !isLast) await pace.sleep(backOffMs);
}

async function settle(
  deps: SendDeps,
  delivery: Delivery,
  outcome: Exclude<Outcome, Refused>,
): Promise<void> {
  const { store, log } = deps;
  const now = deps.clock.now();
  const { kind } = delivery;
  switch (outcome.kind) {
    case 'sent': {
      const { messageId } = outcome;
      deps.meter?.ended({ kind, outcome: 'sent' });
      return settleDelivery(store, delivery.id, { status: 'sent', messageId }, now);
    }
    case 'gone':
      await markUnreachable(store, delivery, now);
      await fail(deps, delivery, outcome.problem, 'attempting');
      return;
    case 'rejected':
      await fail(deps, delivery, outcome.problem, 'attempting');
      return;
    case 'unknown': {
      const { problem } = outcome;
      log.warn({ ledgerId: delivery.id, problem }, 'delivery_unknown');
      deps.meter?.ended({ kind, outcome: 'unknown', problem });
      return settleDelivery(store, delivery.id, { status: 'unknown', problem }, now);
    }
  }
}

/** Settles a message as failed; null, because nothing more is to be tried. */
async function fail(
  deps: SendDeps,
  delivery: Delivery,
  problem: string,
  from: 'planned' | 'attempting',
): Promise<null> {
  const { kind } = delivery;
  const outcome = problem === 'not_wanted' ? problem : 'failed';
  deps.meter?.ended({ kind, outcome, problem });
  if (outcome === 'failed') {
    deps.log.warn({ ledgerId: delivery.id, kind, problem }, 'delivery_failed');
  }
  const now = deps.clock.now();
  await settleDelivery(deps.store, delivery.id, { status: 'failed', problem }, now, [from]);
  return null;
}
