import type { Call, EveningFacts, Stall, Violation } from '../facts.ts';
import { isNewMessage } from '../traffic.ts';

const BUCKET = 'the rate is kept';
const PAUSE = 'nobody sends in a pause';

/** About thirty at once are known to be taken; five in a chat are ours (see the stand-in's limits). */
const BURST = 30;
const CHAT_BURST = 5;
const CHAT_EVERY_MS = 1_000;
/** What was on its way when the service asked for a pause may still arrive. */
const ON_ITS_WAY_MS = 2_000;
/** A heap after a stall may be followed by what waited in other processes. */
const AFTER_STALL_MS = 1_000;

/** The line of all senders together and each chat's kept their rate, by the times at which calls arrived. */
export function checkRate(facts: EveningFacts): Violation[] {
  const sends = facts.calls.filter(({ method }) => isNewMessage(method));
  const everyMs = 1_000 / facts.perSecond;
  const chats = new Map<number, Call[]>();
  for (const call of sends) {
    if (call.chatId === null) continue;
    chats.set(call.chatId, [...(chats.get(call.chatId) ?? []), call]);
  }
  const worst = excess(sends, { everyMs, burst: BURST, stalls: facts.stalls });
  const perChat = [...chats].flatMap(([chatId, calls]) => {
    const limit = { everyMs: CHAT_EVERY_MS, burst: CHAT_BURST, stalls: facts.stalls };
    const early = excess(calls, limit);
    return early > 0 ? [{ invariant: BUCKET, what: `chat ${chatId}: ${early} ms too early` }] : [];
  });
  const global = { invariant: BUCKET, what: `all chats: up to ${worst} ms too early` };
  return [...(worst > 0 ? [global] : []), ...perChat, ...checkLimiter(facts)];
}

/**
 * By how much the earliest call came too early, in ms; 0 when none did. The generic cell rate algorithm (ITU-T I.371, virtual
 * scheduling). A heap after a stall of the one who looks counts as having arrived over the stall.
 */
export function excess(
  calls: readonly Pick<Call, 'at'>[],
  { everyMs, burst, stalls }: { everyMs: number; burst: number; stalls: readonly Stall[] },
): number {
  let paidUntil = Number.NEGATIVE_INFINITY;
  let worst = 0;
  for (const { at } of calls) {
    const stalled = stalls
      .filter(({ from, to }) => from <= at && at <= to + AFTER_STALL_MS)
      .reduce((sum, { from, to }) => sum + (to - from), 0);
    const early = paidUntil - at - everyMs * (burst - 1) - stalled;
    worst = Math.max(worst, early);
    paidUntil = Math.max(paidUntil, at) + everyMs;
  }
  return Math.round(worst);
}

/** The stand-in keeps the service's limits itself. */
function checkLimiter({ calls }: EveningFacts): Violation[] {
  const refused = calls.filter(({ status, byFault }) => status === 429 && !byFault);
  if (refused.length === 0) return [];
  return [
    { invariant: BUCKET, what: `the service refused ${refused.length} calls by its own limits` },
  ];
}

/** From when the service has asked for a pause until it is over, no process sends anything new. */
export function checkPauses({ calls, outages }: EveningFacts): Violation[] {
  const sends = calls.filter(({ method }) => isNewMessage(method));
  return calls
    .filter(({ pauseSeconds }) => pauseSeconds !== null)
    .flatMap(({ at, pauseSeconds }) => {
      const end = at + (pauseSeconds ?? 0) * 1_000;
      // Without a database nobody can be told, and nobody can send either until it is back.
      if (outages.some(({ from, to }) => from <= end && at <= to)) return [];
      const early = sends.filter((send) => send.at > at + ON_ITS_WAY_MS && send.at < end);
      if (early.length === 0) return [];
      const what = `${early.length} sent in the pause of ${pauseSeconds} s at ${new Date(at).toISOString()}`;
      return [{ invariant: PAUSE, what }];
    });
}
