import { Api } from 'grammy';
import { failureOf } from '../../roots/failure.ts';
import type { Site } from '../store.ts';
import { type Check, fine, mend } from './check.ts';

const CALL_SECONDS = 10;
const HOUR_SECONDS = 60 * 60;

/** Whether the chat service takes each token. */
export const tokenCheck: Check = {
  what: 'token',
  look: async (site) => {
    const apis = apisOf(site);
    if (apis.length === 0) return fine('none: the bot rehearses. For a real class, set BOT_TOKEN');
    const names: string[] = [];
    for (const api of apis) names.push(`@${(await api.getMe()).username}`);
    return fine(names.join(', '));
  },
};

/** How the service delivers, against how this bot receives: by `webhook` at an address, or by asking (null). */
export function webhookCheck(webhook: string | null, now: Date): Check {
  return {
    what: 'webhook',
    look: async (site) => {
      const said: { ok: boolean; say: string }[] = [];
      for (const api of apisOf(site)) said.push(judged(await api.getWebhookInfo(), webhook, now));
      return said.find(({ ok }) => !ok) ?? said[0] ?? fine('none: the bot rehearses');
    },
  };
}

type Info = Awaited<ReturnType<Api['getWebhookInfo']>>;

function judged(info: Info, webhook: string | null, now: Date) {
  const { url = '', last_error_date: failedAt = 0, last_error_message: why = 'no reason' } = info;
  if (webhook === null) {
    return url === ''
      ? fine('none: the bot asks for updates')
      : mend(
          `The service delivers to ${new URL(url).host}, this bot would ask. Start it, which takes the webhook back, or set WEBHOOK_URL.`,
        );
  }
  if (!url.startsWith(webhook)) return fine(`the next start has the service deliver to ${webhook}`);
  const isBroken = failedAt > now.getTime() / 1000 - HOUR_SECONDS;
  return isBroken
    ? mend(
        `The service could not deliver to ${webhook} (${why}). Is it reachable from outside by HTTPS?`,
      )
    : fine(`the service delivers to ${webhook}`);
}

function apisOf({ config }: Site): Api[] {
  if (config.mode !== 'live') return [];
  const { tokens, apiRoot } = config;
  return tokens.map((token) => new Api(token, { apiRoot, timeoutSeconds: CALL_SECONDS }));
}

/** A check that could not be made, in the words of any other failure. */
export function unmade(error: unknown) {
  return mend(failureOf(error).line);
}
