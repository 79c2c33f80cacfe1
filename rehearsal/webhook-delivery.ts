import { z } from 'zod';
import { readJson } from './json.ts';
import type { WebhookSetting } from './state.ts';

/** How long the service waits for a webhook's answer, in milliseconds of the machine's clock. */
const ANSWER_LIMIT_MS = 60_000;

const reply = z.looseObject({ method: z.string() });

/** A call written into a webhook's answer. */
export type WebhookReply = z.output<typeof reply>;

/** How sending an update ended. `retryAfter` is seconds. */
export type Delivery =
  | { readonly kind: 'taken'; readonly reply?: WebhookReply }
  | {
      readonly kind: 'failed';
      readonly message: string;
      readonly status?: number;
      readonly retryAfter?: number;
    };

async function read(response: Response): Promise<Delivery> {
  const body = await response.text();
  if (!response.ok) {
    const seconds = Number.parseInt(response.headers.get('retry-after') ?? '', 10);
    return {
      kind: 'failed',
      message: `Wrong response from the webhook: ${response.status} ${response.statusText}`.trim(),
      status: response.status,
      ...(seconds > 0 ? { retryAfter: seconds } : {}),
    };
  }
  if (!/json/.test(response.headers.get('content-type') ?? '')) return { kind: 'taken' };
  const call = reply.safeParse(readJson(body));
  return call.success ? { kind: 'taken', reply: call.data } : { kind: 'taken' };
}

/**
 * Posts an update to a webhook and waits up to a minute for the answer. Any 2xx takes it, and may carry a call. The words of
 * a failure are from memory. Redirections count as failures; whether the service follows them was not verified.
 */
export async function deliverUpdate(
  { url, secretToken }: WebhookSetting,
  update: unknown,
  closing: AbortSignal,
): Promise<Delivery> {
  const secret =
    secretToken === undefined ? {} : { 'x-telegram-bot-api-secret-token': secretToken };
  try {
    const response = await fetch(url, {
      method: 'POST',
      body: JSON.stringify(update),
      headers: { 'content-type': 'application/json', ...secret },
      redirect: 'manual',
      signal: AbortSignal.any([closing, AbortSignal.timeout(ANSWER_LIMIT_MS)]),
    });
    return await read(response);
  } catch (error) {
    const isLate = error instanceof Error && error.name === 'TimeoutError';
    return { kind: 'failed', message: isLate ? 'Read timeout expired' : 'Connection refused' };
  }
}
