import type { Api } from 'grammy';
import { ALLOWED_UPDATES } from './take-in.ts';
import type { WebhookKey } from './webhook-key.ts';

/** How many updates the service brings at a time, of the 1 to 100 it offers: its own default. */
const CONNECTIONS = 40;

/**
 * Tells the service to bring a bot's updates to us, and which. `url` is where the internet reaches us, without the path. Any
 * number of processes may say so: they say the same. What waits at the service comes too.
 */
export async function announceWebhook(api: Api, url: string, key: WebhookKey): Promise<void> {
  await api.setWebhook(url.replace(/\/+$/, '') + key.path, {
    secret_token: key.secret,
    allowed_updates: ALLOWED_UPDATES,
    max_connections: CONNECTIONS,
  });
}
