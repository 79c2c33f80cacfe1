import { readJson } from './json.ts';

/** One Bot API call as the network panel shows it. */
export interface LoggedCall {
  /** Instant of the app's clock, ISO 8601. */
  readonly at: string;
  readonly method: string;
  /** HTTP status; 0 when the connection was cut without an answer. */
  readonly status: number;
  readonly chatId?: number;
  /** The message that it made or changed, also when the bot was never told. */
  readonly messageId?: number;
  /** Milliseconds of the machine's clock. */
  readonly ms: number;
  /** Files are left out; `attach://` stands in their place. */
  readonly params: Record<string, unknown>;
  /** What the bot was told when the status is not 200. */
  readonly description?: string;
}

/**
 * Parameters with JSON texts opened up, since form and multipart bodies carry objects as text.
 *
 * @example readable({ media: '{"type":"photo"}' }) // { media: { type: 'photo' } }
 */
export function readable(params: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(params).map(([key, value]) => [key, opened(value)]));
}

function opened(value: unknown): unknown {
  return typeof value === 'string' && /^[[{]/.test(value) ? (readJson(value) ?? value) : value;
}

const KEPT = 2000;

export interface CallLog {
  add(call: LoggedCall): void;
  all(): readonly LoggedCall[];
}

/** Keeps the last calls in memory and tells of each. It is never written to a file. */
export function createCallLog(added: (call: LoggedCall) => void): CallLog {
  const calls: LoggedCall[] = [];
  return {
    add: (call) => {
      calls.push(call);
      if (calls.length > KEPT) calls.shift();
      added(call);
    },
    all: () => calls,
  };
}
