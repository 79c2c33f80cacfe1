import { isLoopback } from '../safety.ts';
import type { Service } from '../service.ts';
import type { WebhookSetting } from '../state.ts';
import { badRequest, Told } from './envelope.ts';
import { method } from './method.ts';
import type { Params } from './schemas.ts';

/** SPEC setWebhook. */
const SECRET = /^[\w-]{1,256}$/;
const DEFAULT_CONNECTIONS = 40;
const MOST_CONNECTIONS = 100;

/** The words are from memory but for the last, which is ours: the rehearsal calls nobody outside. */
function checkAddress(service: Service, address: string): void {
  const url = URL.canParse(address) ? new URL(address) : undefined;
  if (url === undefined || !/^https?:$/.test(url.protocol))
    throw badRequest('bad webhook: An HTTPS URL must be provided for webhook');
  if (!service.allowRemote && !isLoopback(url.hostname.replace(/^\[|\]$/g, '')))
    throw badRequest('bad webhook: the rehearsal calls addresses of this computer only');
}

function read(service: Service, params: Params<'setWebhook'>): WebhookSetting {
  const { url, secret_token: secret, max_connections: connections } = params;
  checkAddress(service, url);
  // The words are from memory.
  if (secret !== undefined && secret.length > 256) throw badRequest('secret token is too long');
  if (secret !== undefined && secret !== '' && !SECRET.test(secret))
    throw badRequest('secret token contains unallowed characters');
  return {
    url,
    ...(secret ? { secretToken: secret } : {}),
    maxConnections: Math.min(Math.max(connections ?? DEFAULT_CONNECTIONS, 1), MOST_CONNECTIONS),
    hasCertificate: params.certificate !== undefined,
  };
}

function end(service: Service, dropsPending: boolean): Told {
  if (dropsPending) service.updates.forgetAll();
  if (service.state.webhook === undefined) return new Told(true, 'Webhook is already deleted');
  delete service.state.webhook;
  service.changed();
  return new Told(true, 'Webhook was deleted');
}

const setWebhook = method('setWebhook', (service, params) => {
  const { drop_pending_updates: dropsPending = false, allowed_updates: wanted } = params;
  if (params.url === '') return end(service, dropsPending);
  const webhook = read(service, params);
  const before = service.state.webhook;
  const isSame =
    before?.url === webhook.url &&
    before.secretToken === webhook.secretToken &&
    before.maxConnections === webhook.maxConnections;
  if (wanted !== undefined) service.state.allowedUpdates = wanted;
  if (dropsPending) service.updates.forgetAll();
  service.state.webhook = webhook;
  service.updates.interrupt('Conflict: terminated by setWebhook request');
  service.changed();
  service.webhook.reset();
  service.webhook.look();
  return new Told(true, isSame ? 'Webhook is already set' : 'Webhook was set');
});

const deleteWebhook = method('deleteWebhook', (service, params) =>
  end(service, params.drop_pending_updates ?? false),
);

const getWebhookInfo = method('getWebhookInfo', ({ state, updates }) => {
  const { webhook, allowedUpdates } = state;
  const error = webhook?.lastError;
  return {
    url: webhook?.url ?? '',
    has_custom_certificate: webhook?.hasCertificate ?? false,
    pending_update_count: updates.pending(),
    ...(webhook === undefined ? {} : { max_connections: webhook.maxConnections }),
    ...(error === undefined
      ? {}
      : { last_error_date: Math.floor(error.at / 1000), last_error_message: error.message }),
    ...(allowedUpdates === undefined ? {} : { allowed_updates: allowedUpdates }),
  };
});

/** Methods about where the bot's updates go. */
export const webhookMethods = { setWebhook, deleteWebhook, getWebhookInfo };
