import { Api } from 'grammy';
import {
  type Clock,
  createTurnstile,
  knowBot,
  type Log,
  type Meter,
  type Pace,
  readClassBot,
  type Store,
  type Turnstile,
} from '../../db/index.ts';
import { createSender, type Sender } from '../../jobs/index.ts';
import { countCalls } from '../chat/count-calls.ts';
import { countData } from '../chat/count-data.ts';
import { createDownload } from '../chat/download.ts';
import { nameLostSends } from '../chat/lost-send.ts';
import { keepQuiet } from '../chat/quiet.ts';
import { retryRefused } from '../chat/retry-refused.ts';
import { takeTurns } from '../chat/take-turns.ts';
import type { Clips } from '../clip/index.ts';
import { createBot } from '../create-bot.ts';
import type { BotDeps, TeachersWanted } from '../deps.ts';
import type { Painter } from '../media/index.ts';
import type { InboxDeps } from '../receive/inbox.ts';
import { createPoller, type Poller, type PollerDeps } from '../receive/poller.ts';
import { type WebhookKey, webhookKey } from '../receive/webhook-key.ts';
import { createCourier } from '../send/courier.ts';
import type { Pulse } from '../watch/pulse.ts';

/** Seconds until a call without an answer is given up; a long poll may take longer. */
const CALL_SECONDS = 20;
const POLL_SECONDS = 60;
/** Messages in flight at a time: at a fifth of a second each this many keep the rate; more would only be lost together. */
export const LANES = 6;

/** What all bots of a process share. */
export interface ConnectDeps {
  readonly store: Store;
  readonly clock: Clock;
  readonly pace: Pace;
  readonly log: Log;
  readonly apiRoot: string;
  readonly painter: Painter;
  readonly teachers: TeachersWanted;
  readonly clips?: Clips | undefined;
  readonly sendsASecond?: number | undefined;
  readonly sendsASecondInChat?: number | undefined;
  readonly meter: Meter;
  readonly pulse?: Pulse | undefined;
  /** How the bots of this process call the service, by id; each adds itself. */
  readonly apis: Map<number, Api>;
}

/** One bot: everything that belongs to its token. */
export interface ConnectedBot {
  readonly botId: number;
  readonly username: string;
  readonly api: Api;
  readonly turnstile: Turnstile;
  readonly sender: Sender;
  readonly inbox: InboxDeps;
  readonly poller: Poller;
  readonly polling: PollerDeps;
  readonly key: WebhookKey;
  linkOf(payload: string): string;
}

/** Asks the service who the bot is, and so fails early when the token is wrong; then puts its parts together. */
export async function connectBot(deps: ConnectDeps, token: string): Promise<ConnectedBot> {
  const { store, clock, log, pace, apiRoot, meter } = deps;
  const callApi = (timeoutSeconds: number) => new Api(token, { apiRoot, timeoutSeconds });
  const api = callApi(CALL_SECONDS);
  const botInfo = await api.getMe();
  const { id: botId, username } = botInfo;
  await knowBot(store, { botId, username });
  const turnstile = createTurnstile({
    ...{ store, botId, pace },
    ...{ perSecond: deps.sendsASecond, perSecondInChat: deps.sendsASecondInChat },
  });
  const counted = countData(deps);
  const calls = countCalls(deps);
  api.config.use(calls, takeTurns(turnstile), retryRefused(pace.sleep), nameLostSends, counted);
  deps.apis.set(botId, api);
  const linkOf = linksTo(username);
  const own: BotDeps = {
    ...{ api, store, clock, log, botId, linkOf },
    ...{ painter: deps.painter, clips: deps.clips, teachers: deps.teachers },
    download: createDownload(api, { apiRoot, token }),
    linksOf: async (classId) => linksTo((await readClassBot(store, classId)).username),
    apiOf: (id) => deps.apis.get(id) ?? null,
  };
  const bulk = callApi(CALL_SECONDS);
  bulk.config.use(calls, keepQuiet, counted);
  const courier = createCourier({ ...own, api: bulk });
  const polling = { api: callApi(POLL_SECONDS), store, clock, log, botId, meter };
  const looked = () => deps.pulse?.beat('work');
  return {
    ...{ botId, username, api, turnstile, linkOf, polling, key: webhookKey(token) },
    sender: createSender({
      ...{ store, clock, log, pace, courier, botId, turnstile, meter },
      lanes: LANES,
    }),
    inbox: { store, clock, log, botId, looked, handler: createBot(own, { token, botInfo }) },
    poller: createPoller(polling),
  };
}

function linksTo(username: string): (payload: string) => string {
  return (payload) => `https://t.me/${username}?start=${payload}`;
}
