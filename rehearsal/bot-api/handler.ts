import { type CallLog, readable } from '../call-log.ts';
import type { Fault, Faults } from '../faults.ts';
import type { Gate } from '../options.ts';
import type { RateLimits } from '../rate-limits.ts';
import type { Service } from '../service.ts';
import { type CallBody, readBody } from './body.ts';
import { ApiError, errorEnvelope, okEnvelope } from './envelope.ts';
import { findMethod } from './methods.ts';

export interface BotApiParts {
  readonly service: Service;
  readonly faults: Faults;
  readonly log: CallLog;
  readonly limits: RateLimits;
  readonly gate: Gate | undefined;
  /** Milliseconds of the machine's clock. */
  machineClock(): number;
  /** Waits by the machine's clock. */
  machineSleep(ms: number): Promise<void>;
}

/** How a call ends: with a response, or by cutting the connection at once or when the caller gives up. */
export type Outcome =
  | {
      readonly kind: 'answer';
      readonly status: number;
      readonly response: Response;
      readonly description?: string;
      readonly messageId?: number;
    }
  | { readonly kind: 'cut' | 'hang'; readonly messageId?: number };

/** How late a slow answer is when the fault does not say, in seconds. */
const SLOW_S = 10;

type Answer = Extract<Outcome, { kind: 'answer' }>;

function refuse(error: ApiError): Answer {
  return {
    kind: 'answer',
    status: error.code,
    response: errorEnvelope(error),
    description: error.message,
  };
}

async function run(
  { service, limits }: BotApiParts,
  method: string,
  body: CallBody,
  signal: AbortSignal,
): Promise<Answer> {
  const found = findMethod(method);
  if (found === undefined) return refuse(new ApiError(404, 'Not Found: method not found'));
  try {
    await limits.admit(method, body);
    const result = await found.run(service, body, signal);
    return { kind: 'answer', status: 200, response: okEnvelope(result), ...messageOf(result) };
  } catch (error) {
    if (error instanceof ApiError) return refuse(error);
    throw error;
  }
}

/** Which message a call made or changed, if any. */
function messageOf(result: unknown): { messageId?: number } {
  if (typeof result !== 'object' || result === null || !('message_id' in result)) return {};
  return typeof result.message_id === 'number' ? { messageId: result.message_id } : {};
}

function withoutApplying(fault: Fault): Outcome | undefined {
  if (fault.mode === 'drop_before') return { kind: 'cut' };
  if (fault.mode === 'http_502') {
    const page =
      '<html><head><title>502 Bad Gateway</title></head><body>502 Bad Gateway</body></html>';
    const response = new Response(page, { status: 502, headers: { 'content-type': 'text/html' } });
    return { kind: 'answer', status: 502, response };
  }
  if (fault.mode !== 'error') return undefined;
  const { code, description, retryAfter } = fault.error ?? {
    code: 500,
    description: 'Internal Server Error',
  };
  return refuse(new ApiError(code, description, retryAfter));
}

async function decide(
  parts: BotApiParts,
  method: string,
  body: CallBody,
  call: number,
  signal: AbortSignal,
): Promise<Outcome> {
  const verdict = await parts.gate?.({ method, params: body.params, index: call });
  if (verdict === 'drop') return { kind: 'cut' };
  const fault = parts.faults.take(method);
  if (fault === undefined) return run(parts, method, body, signal);
  const unapplied = withoutApplying(fault);
  if (unapplied !== undefined) return unapplied;
  const answer = await run(parts, method, body, signal);
  if (fault.mode === 'slow') {
    await parts.machineSleep((fault.seconds ?? SLOW_S) * 1000);
    return answer;
  }
  const { messageId } = answer;
  const kind = fault.mode === 'apply_then_drop' ? 'cut' : 'hang';
  return messageId === undefined ? { kind } : { kind, messageId };
}

function isEmptyPoll(method: string, body: string): boolean {
  return method.toLowerCase() === 'getupdates' && body === '{"ok":true,"result":[]}';
}

/** Answers calls of one bot. Polls that bring nothing are not logged. */
export function createBotApi(
  parts: BotApiParts,
): (method: string, request: Request, signal: AbortSignal) => Promise<Outcome> {
  let calls = 0;
  const log = async (
    method: string,
    body: CallBody,
    outcome: Outcome,
    ms: number,
  ): Promise<void> => {
    if (outcome.kind === 'answer' && isEmptyPoll(method, await outcome.response.clone().text()))
      return;
    const chatId = Number(body.params.chat_id);
    parts.log.add({
      at: parts.service.now().toISOString(),
      method,
      status: outcome.kind === 'answer' ? outcome.status : 0,
      ...(Number.isSafeInteger(chatId) ? { chatId } : {}),
      ...(outcome.messageId === undefined ? {} : { messageId: outcome.messageId }),
      ms,
      params: readable(body.params),
      ...(outcome.kind === 'answer' && outcome.description !== undefined
        ? { description: outcome.description }
        : {}),
    });
  };
  return async (method, request, signal) => {
    const began = parts.machineClock();
    let body: CallBody = { params: {}, uploads: new Map() };
    let outcome: Outcome;
    try {
      body = await readBody(request);
      outcome = await decide(parts, method, body, calls++, signal);
    } catch (error) {
      if (!(error instanceof ApiError)) throw error;
      outcome = refuse(error);
    }
    await log(method, body, outcome, parts.machineClock() - began);
    return outcome;
  };
}
