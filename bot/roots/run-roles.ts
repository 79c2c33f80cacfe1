import { type Log, type Pace, problemOf, type Store } from '../../db/index.ts';
import { type RenderAhead, startCron, type TickReport, tickOnce } from '../../jobs/index.ts';
import { announceWebhook } from '../receive/announce-webhook.ts';
import { resumeInbox } from '../receive/inbox.ts';
import { type InboxLoop, keepDraining } from '../receive/keep-draining.ts';
import { keepPolling } from '../receive/poller.ts';
import type { Pulse } from '../watch/pulse.ts';
import type { ConnectedBot } from './connect-bot.ts';
import { repeat } from './repeat.ts';
import type { Role } from './roles.ts';
import { setCommands } from './set-commands.ts';

/**
 * How often the inbox is looked at without being told. News of an update comes by the database at once; this finds what was
 * not told because a connection was broken.
 */
const LOOK_MS = 5_000;
/** How often it is looked what is due to be drawn ahead. */
const AHEAD_MS = 60_000;

/** The parts of a process that run by themselves. */
export interface RoleDeps {
  readonly store: Store;
  readonly log: Log;
  readonly pace: Pace;
  readonly roles: ReadonlySet<Role>;
  readonly bots: readonly ConnectedBot[];
  readonly ahead: RenderAhead;
  readonly pulse?: Pulse | undefined;
  /** Where the service reaches us, if it is to bring the updates. */
  readonly webhookUrl?: string | undefined;
  tick(): Promise<TickReport>;
}

/** Starting and stopping in order: what takes work in stops first. */
export interface Running {
  /** `onFatal` hears when the service refuses a token. */
  start(onFatal: (error: unknown) => void): Promise<void>;
  stop(): Promise<void>;
  /** Whether everything has been started, and nothing been asked to stop. */
  isRunning(): boolean;
}

/** Puts what a process is to do in motion. */
export function runRoles(deps: RoleDeps): Running {
  const { store, log, roles, bots, pace, ahead, pulse } = deps;
  const stopping = new AbortController();
  const { signal } = stopping;
  const inboxes = bots.map(({ inbox }) => keepDraining({ ...inbox, sleep: pace.sleep }));
  const lookAhead = () => {
    ahead.look().catch((error) => log.warn({ problem: problemOf(error) }, 'not_drawn_ahead'));
  };
  const loops: Promise<void>[] = [];
  let cron: { stop(): Promise<void> } | undefined;
  let isStarted = false;
  const begin = async (onFatal: (error: unknown) => void) => {
    await store.peers.listen('paused', (news) => {
      for (const { turnstile } of bots) turnstile.hear(news);
    });
    if (roles.has('receive')) for (const { api } of bots) await setCommands(api);
    if (roles.has('send')) for (const { sender } of bots) await sender.start();
    if (roles.has('tick')) {
      pulse?.begin('tick');
      const ticking = { store, log, looked: () => pulse?.beat('tick') };
      await tickOnce(ticking, deps.tick);
      cron = startCron(ticking, deps.tick);
    }
    if (roles.has('work')) {
      pulse?.begin('work');
      await startWork(deps, inboxes);
      loops.push(repeat(pace, LOOK_MS, signal, () => wakeAll(inboxes)));
      loops.push(repeat(pace, AHEAD_MS, signal, lookAhead));
      lookAhead();
    }
    if (roles.has('receive')) loops.push(...(await startReceiving(deps, signal, onFatal)));
  };
  return {
    start: async (onFatal) => {
      await begin(onFatal);
      isStarted = true;
    },
    stop: async () => {
      stopping.abort();
      await cron?.stop();
      // Side by side, since there is little time: what each holds ends by itself.
      await Promise.all([
        ...loops,
        ...inboxes.map((inbox) => inbox.stop()),
        ...(roles.has('send') ? bots.map(({ sender }) => sender.stop()) : []),
        ahead.stop(),
      ]);
    },
    isRunning: () => isStarted && !signal.aborted,
  };
}

/** Has the service bring the updates, or keeps asking for them. Returns what goes on until the signal. */
async function startReceiving(
  { store, bots, pace, pulse, webhookUrl }: RoleDeps,
  signal: AbortSignal,
  onFatal: (error: unknown) => void,
): Promise<Promise<void>[]> {
  if (webhookUrl !== undefined) {
    for (const { api, key } of bots) await announceWebhook(api, webhookUrl, key);
    return [];
  }
  for (const { api } of bots) await api.deleteWebhook();
  pulse?.begin('receive');
  return bots.map(({ poller, polling }) => {
    const isOurs = () => {
      pulse?.beat('receive');
      return store.peers.leads(`receive ${polling.botId}`);
    };
    return keepPolling(poller, { ...polling, isOurs, sleep: pace.sleep }, signal).catch(onFatal);
  });
}

/** Handles what comes into the inboxes, when told and at the beginning. */
async function startWork({ store, bots }: RoleDeps, inboxes: readonly InboxLoop[]): Promise<void> {
  for (const { inbox } of bots) await resumeInbox(inbox);
  await store.peers.listen('inbox', (news) => {
    for (const [place, { botId }] of bots.entries()) {
      if (news === '' || news === String(botId)) inboxes[place]?.wake();
    }
  });
}

function wakeAll(inboxes: readonly InboxLoop[]): void {
  for (const inbox of inboxes) inbox.wake();
}
