import {
  giveUpAttempts,
  purgeCodeMisses,
  purgeGreetings,
  purgeUpdates,
  wakeWaiting,
} from '../db/index.ts';
import type { PlanDeps } from './ports.ts';

/** After this long an attempt without an end has lost its process, and a waiting row its job. Far above a send's time-out. */
const STALE_MS = 2 * 60_000;
/** The chat service repeats an update for a day; we remember ids for two. */
const INBOX_MS = 2 * 24 * 60 * 60_000;

/** What a sweep found. */
export interface SweepReport {
  readonly abandoned: number;
  readonly woken: number;
}

/**
 * Puts right what a crash left behind: attempts without an end become `unknown`, rows without a job get one. Deletes what was
 * kept long enough: updates, codes tried in vain, and greetings that are out of use.
 */
export async function sweep(deps: PlanDeps): Promise<SweepReport> {
  const now = deps.clock.now();
  const stale = new Date(now.getTime() - STALE_MS);
  const abandoned = await giveUpAttempts(deps.store, stale, now);
  const woken = await wakeWaiting(deps.store, { now, enqueuedBefore: stale });
  await purgeUpdates(deps.store, new Date(now.getTime() - INBOX_MS));
  await purgeGreetings(deps.store, now);
  await purgeCodeMisses(deps.store, now);
  return { abandoned, woken };
}

/** At start nothing of ours is in flight: every waiting row gets a job at once. */
export async function recover(deps: PlanDeps): Promise<number> {
  const now = deps.clock.now();
  return wakeWaiting(deps.store, { now, enqueuedBefore: new Date(now.getTime() + 1) });
}
