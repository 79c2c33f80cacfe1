import type { Update } from 'grammy/types';
import type { Hono } from 'hono';
import {
  type Clock,
  type Log,
  type Meter,
  noMeter,
  type Pace,
  type Store,
} from '../../db/index.ts';
import type { Drill, Language } from '../../drills/index.ts';
import { createRenderAhead, type RenderAhead, type TickReport, tick } from '../../jobs/index.ts';
import type { Clips } from '../clip/index.ts';
import type { TeachersWanted } from '../deps.ts';
import { createPainter, type Painter } from '../media/index.ts';
import { drainInbox } from '../receive/inbox.ts';
import { takeIn } from '../receive/take-in.ts';
import { createWebhook } from '../receive/webhook.ts';
import { clipOf } from '../screens/clips.ts';
import type { Pulse } from '../watch/pulse.ts';
import { type ConnectDeps, type ConnectedBot, connectBot } from './connect-bot.ts';
import { ROLES, type Role } from './roles.ts';
import { type Running, runRoles } from './run-roles.ts';
import { timedPainter } from './timed.ts';

/** What an app is made of. */
export interface AppDeps {
  readonly store: Store;
  readonly clock: Clock;
  readonly pace: Pace;
  readonly log: Log;
  /** One for each bot. A process that only plans needs none. */
  readonly tokens: readonly string[];
  readonly apiRoot: string;
  /** What this process does; everything, unless said otherwise. */
  readonly roles?: ReadonlySet<Role>;
  /** For bots that are allowed other rates than most. */
  readonly sendsASecond?: number | undefined;
  readonly sendsASecondInChat?: number | undefined;
  readonly painter?: Painter;
  /** Who may become a teacher; by invitation only, unless said otherwise. */
  readonly teachers?: TeachersWanted;
  /** Left out, families see picture sheets. Closing them is the caller's. */
  readonly clips?: Clips;
  /** Where the service reaches us; left out, we ask it for updates. */
  readonly webhookUrl?: string | undefined;
  /** Left out, nothing is counted. */
  readonly meter?: Meter;
  readonly pulse?: Pulse;
}

/** One process of the bot, with some or all of its roles. */
export interface App extends Running {
  /** The bots by the names that people see. */
  readonly usernames: readonly string[];
  /** A link that opens the first bot. */
  linkOf(payload: string): string;
  /** Where updates come in by webhook, to be put on a port. */
  readonly webhook: Hono;
  /** The clock and the senders, by hand: for scripts, tests and a rehearsal's moved clock. */
  readonly engine: {
    /** Plans what is due now. */
    tick(): Promise<TickReport>;
    /** Sends everything that is waiting now. Returns how many jobs that were. */
    drain(): Promise<number>;
  };
  /** Draws what is due to be drawn ahead; a started app does so by itself. */
  readonly ahead: RenderAhead;
  /** Receives and sends until nothing is left to do; for scripts and tests, while the app is not started. */
  settle(): Promise<void>;
}

/** Puts everything together. Asks the service who the bots are, and so fails early when a token is wrong. */
export async function createApp(deps: AppDeps): Promise<App> {
  const { store, clock, log, pace, clips, pulse, webhookUrl } = deps;
  const { roles = new Set(ROLES), meter = noMeter } = deps;
  const shared: ConnectDeps = {
    ...{ store, clock, pace, log, clips, apiRoot: deps.apiRoot },
    ...{ sendsASecond: deps.sendsASecond, sendsASecondInChat: deps.sendsASecondInChat },
    teachers: deps.teachers ?? 'invite',
    ...{ meter, pulse, painter: timedPainter(deps.painter ?? createPainter(), meter) },
    apis: new Map(),
  };
  const bots: ConnectedBot[] = [];
  for (const token of deps.tokens) bots.push(await connectBot(shared, token));
  const ahead = createRenderAhead({
    ...{ store, clock, log },
    prepare: (drill, language) => drawClips(clips, drill, language),
  });
  const plan = async () => {
    const report = await tick({ store, clock, log });
    meter.abandoned(report.abandoned);
    return report;
  };
  const doors = bots.map(({ key, polling }) => ({
    key,
    take: (update: Update) => takeIn(polling, [update]),
  }));
  const drain = () => sum(bots, ({ sender }) => sender.drain());
  return {
    usernames: bots.map(({ username }) => username),
    linkOf: (payload) => bots[0]?.linkOf(payload) ?? '',
    engine: { tick: plan, drain },
    ahead,
    webhook: createWebhook({ doors, pace, log, meter }),
    settle: async () => {
      for (;;) {
        const received = await sum(bots, ({ poller }) => poller.poll(0));
        const handled = await sum(bots, async ({ inbox }) => (await drainInbox(inbox)).handled);
        if (received + handled + (await drain()) === 0) return;
      }
    },
    ...runRoles({ store, log, pace, pulse, roles, bots, ahead, webhookUrl, tick: plan }),
  };
}

async function sum(
  bots: readonly ConnectedBot[],
  count: (bot: ConnectedBot) => Promise<number>,
): Promise<number> {
  let total = 0;
  for (const bot of bots) total += await count(bot);
  return total;
}

/** One clip after the other, so that a family that taps meanwhile waits for one at most. An untimed drill has none. */
async function drawClips(
  clips: Clips | undefined,
  drill: Drill,
  language: Language,
): Promise<void> {
  if (drill.adjusted?.untimed) return;
  for (const part of drill.parts) {
    if (clips && part.kind === 'facts') await clips.ahead(clipOf(part, language));
  }
}
