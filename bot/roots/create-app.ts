import { Api } from 'grammy';
import { type Clock, type Log, problemOf, type Store } from '../../db/index.ts';
import type { Drill } from '../../drills/index.ts';
import {
  createEngine,
  createRenderAhead,
  type Engine,
  type Pace,
  type RenderAhead,
  startCron,
} from '../../jobs/index.ts';
import { createDownload } from '../chat/download.ts';
import { nameLostSends } from '../chat/lost-send.ts';
import { retryRefused } from '../chat/retry-refused.ts';
import type { Clips } from '../clip/index.ts';
import { createBot } from '../create-bot.ts';
import type { BotDeps, TeachersWanted } from '../deps.ts';
import { createPainter, type Painter } from '../media/index.ts';
import { drainInbox, type InboxDeps, resumeInbox } from '../receive/inbox.ts';
import { keepDraining } from '../receive/keep-draining.ts';
import { createPoller, keepPolling } from '../receive/poller.ts';
import { clipOf } from '../screens/clips.ts';
import { createCourier } from '../send/courier.ts';
import { COMMANDS } from '../texts/commands.ts';

/** Seconds until a call without an answer is given up; a long poll may take longer. */
const CALL_SECONDS = 20;
const POLL_SECONDS = 60;
/** Messages in flight at a time; the service's framework advises about three. */
const LANES = 3;

/** What an app is made of. */
export interface AppDeps {
  readonly store: Store;
  readonly clock: Clock;
  readonly pace: Pace;
  readonly log: Log;
  readonly token: string;
  readonly apiRoot: string;
  readonly painter?: Painter;
  /** Who may become a teacher; by invitation only, unless said otherwise. */
  readonly teachers?: TeachersWanted;
  /** Left out, families see picture sheets. Closing them is the caller's. */
  readonly clips?: Clips;
}

/** A whole bot in one process. */
export interface App {
  readonly username: string;
  readonly engine: Engine;
  linkOf(payload: string): string;
  /** Draws what is due to be drawn ahead; the clock job does so by itself. */
  readonly ahead: RenderAhead;
  /** Receives and sends until nothing is left to do; for scripts and tests, while the app is not started. */
  settle(): Promise<void>;
  /** Runs by itself: clock, receiver, sender. `onFatal` hears when the service refuses the token. */
  start(onFatal: (error: unknown) => void): Promise<void>;
  stop(): Promise<void>;
}

/** Puts everything together. Asks the service who the bot is, and so fails early when the token is wrong. */
export async function createApp(deps: AppDeps): Promise<App> {
  const { store, clock, pace, log, token, apiRoot } = deps;
  const bulk = new Api(token, { apiRoot, timeoutSeconds: CALL_SECONDS });
  const direct = new Api(token, { apiRoot, timeoutSeconds: CALL_SECONDS });
  direct.config.use(retryRefused(pace.sleep), nameLostSends);
  const polling = new Api(token, { apiRoot, timeoutSeconds: POLL_SECONDS });
  const botInfo = await direct.getMe();
  const botId = botInfo.id;
  const linkOf = (payload: string) => `https://t.me/${botInfo.username}?start=${payload}`;
  const painter = deps.painter ?? createPainter();
  const { clips, teachers = 'invite' } = deps;
  const download = createDownload(direct, { apiRoot, token });
  const bot: BotDeps = {
    api: direct,
    store,
    clock,
    log,
    botId,
    painter,
    clips,
    download,
    teachers,
    linkOf,
  };
  const handler = createBot(bot, { token, botInfo });
  const courier = createCourier({ ...bot, api: bulk });
  const engine = createEngine({ store, clock, log, pace, courier, botId, lanes: LANES });
  const ahead = createRenderAhead({
    store,
    clock,
    log,
    prepare: (drill) => drawClips(clips, drill),
  });
  const inbox: InboxDeps = { store, clock, log, botId, handler };
  const pollerDeps = { api: polling, store, clock, log, botId };
  const poller = createPoller(pollerDeps);
  return {
    username: botInfo.username,
    engine,
    linkOf,
    ahead,
    settle: async () => {
      for (;;) {
        const received = await poller.poll(0);
        const { handled } = await drainInbox(inbox);
        const sent = await engine.drain();
        if (received + handled + sent === 0) return;
      }
    },
    ...running({ engine, ahead, log, api: direct, inbox, pace }, (signal, onUpdates) =>
      keepPolling(poller, { ...pollerDeps, sleep: pace.sleep, onUpdates }, signal),
    ),
  };
}

/** One clip after the other, so that a family that taps meanwhile waits for one at most. An untimed drill has none. */
async function drawClips(clips: Clips | undefined, drill: Drill): Promise<void> {
  if (drill.adjusted?.untimed) return;
  for (const part of drill.parts) {
    if (clips && part.kind === 'facts') await clips.ahead(clipOf(part));
  }
}

interface Running {
  readonly engine: Engine;
  readonly ahead: RenderAhead;
  readonly log: Log;
  readonly api: Api;
  readonly inbox: InboxDeps;
  readonly pace: Pace;
}

/** Starting and stopping in order: what takes work in stops first. */
function running(
  { engine, ahead, log, api, inbox, pace }: Running,
  poll: (signal: AbortSignal, onUpdates: () => void) => Promise<void>,
): Pick<App, 'start' | 'stop'> {
  const stopping = new AbortController();
  const draining = keepDraining({ ...inbox, sleep: pace.sleep });
  let polling: Promise<void> = Promise.resolve();
  let cron: { stop(): Promise<void> } | undefined;
  return {
    start: async (onFatal) => {
      await api.setMyCommands(COMMANDS);
      await api.deleteWebhook();
      await engine.start();
      await engine.tick();
      await resumeInbox(inbox);
      const lookAhead = () => {
        ahead.look().catch((error) => log.warn({ problem: problemOf(error) }, 'not_drawn_ahead'));
      };
      cron = startCron(engine, log, () => {
        draining.wake();
        lookAhead();
      });
      lookAhead();
      draining.wake();
      polling = poll(stopping.signal, draining.wake).catch(onFatal);
    },
    stop: async () => {
      stopping.abort();
      await cron?.stop();
      await polling;
      await draining.stop();
      await ahead.stop();
    },
  };
}
