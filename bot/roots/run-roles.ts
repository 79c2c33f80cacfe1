import { type Log, type Pace, problemOf, type Store } from '../../db/index.ts';
import { type RenderAhead, startCron, type TickReport, tickOnce } from '../../jobs/index.ts';
import { resumeInbox } from '../receive/inbox.ts';
import { type InboxLoop, keepDraining } from '../receive/keep-draining.ts';
import { keepPolling } from '../receive/poller.ts';
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
  tick(): Promise<TickReport>;
}

/** Starting and stopping in order: what takes work in stops first. */
export interface Running {
  /** `onFatal` hears when the service refuses a token. */
  start(onFatal: (error: unknown) => void): Promise<void>;
  stop(): Promise<void>;
}

/** Puts what a process is to do in motion. */
export function runRoles(deps: RoleDeps): Running {
  const { store, log, roles, bots, pace, ahead } = deps;
  const stopping = new AbortController();
  const { signal } = stopping;
  const inboxes = bots.map(({ inbox }) => keepDraining({ ...inbox, sleep: pace.sleep }));
  const lookAhead = () => {
    ahead.look().catch((error) => log.warn({ problem: problemOf(error) }, 'not_drawn_ahead'));
  };
  const loops: Promise<void>[] = [];
  let cron: { stop(): Promise<void> } | undefined;
  return {
    start: async (onFatal) => {
      await store.peers.listen('paused', (news) => {
        for (const { turnstile } of bots) turnstile.hear(news);
      });
      if (roles.has('receive')) {
        for (const { api } of bots) {
          await setCommands(api);
          await api.deleteWebhook();
        }
      }
      if (roles.has('send')) for (const { sender } of bots) await sender.start();
      if (roles.has('tick')) {
        await tickOnce(deps, deps.tick);
        cron = startCron(deps, deps.tick);
      }
      if (roles.has('work')) {
        await startWork(deps, inboxes);
        loops.push(repeat(pace, LOOK_MS, signal, () => wakeAll(inboxes)));
        loops.push(repeat(pace, AHEAD_MS, signal, lookAhead));
        lookAhead();
      }
      if (!roles.has('receive')) return;
      for (const { poller, polling } of bots) {
        loops.push(keepPolling(poller, { ...polling, sleep: pace.sleep }, signal).catch(onFatal));
      }
    },
    stop: async () => {
      stopping.abort();
      await cron?.stop();
      await Promise.all(loops);
      await Promise.all(inboxes.map((inbox) => inbox.stop()));
      await ahead.stop();
    },
  };
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
