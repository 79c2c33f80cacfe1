import { BUTTONS } from '../../bot/texts/buttons.ts';
import type { LoggedCall } from '../../rehearsal/client.ts';
import type { Call, Prompt } from './facts.ts';

/** What the service has seen of the bot, and who waits for it. */
export interface Traffic {
  /** For the stand-in: hears of each call. */
  readonly logged: (call: LoggedCall) => void;
  /** Takes the calls of the evening so far, oldest first; the next evening begins with none. */
  take(): Call[];
  /** How often something has reached a chat. */
  version(chatId: number): number;
  /** Resolves to true when something has reached the chat since `version`, or to false after a while. */
  news(chatId: number, version: number, patienceMs: number): Promise<boolean>;
  /** When a call was last left without an answer, by the machine's clock. */
  lastHangAt(): number;
}

/** What a description says when the suite itself had the service refuse a call. */
export const BY_FAULT = '(on purpose)';

/** `timesFaster`: how many times faster the machine's clock of the stand-in runs, by which it says how long a call took. */
export function createTraffic(timesFaster: number): Traffic {
  let calls: Call[] = [];
  let lastHangAt = 0;
  const versions = new Map<number, number>();
  const waiting = new Map<number, Set<() => void>>();
  const reached = (chatId: number) => {
    versions.set(chatId, (versions.get(chatId) ?? 0) + 1);
    for (const wake of waiting.get(chatId) ?? []) wake();
  };
  return {
    logged: (call) => {
      if (call.method.toLowerCase() === 'getupdates') return;
      const read = readCall(call, timesFaster);
      calls.push(read);
      if (read.status === 0) lastHangAt = Date.now();
      if (read.chatId !== null && read.messageId !== null) reached(read.chatId);
    },
    take: () => {
      const taken = calls.sort((a, b) => a.at - b.at);
      calls = [];
      return taken;
    },
    version: (chatId) => versions.get(chatId) ?? 0,
    news: async (chatId, version, patienceMs) => {
      if ((versions.get(chatId) ?? 0) > version) return true;
      const own = waiting.get(chatId) ?? new Set();
      waiting.set(chatId, own);
      return new Promise((resolve) => {
        const end = (came: boolean) => {
          clearTimeout(timer);
          own.delete(wake);
          resolve(came);
        };
        const wake = () => end(true);
        const timer = setTimeout(() => end(false), patienceMs);
        own.add(wake);
      });
    },
    lastHangAt: () => lastHangAt,
  };
}

function readCall(call: LoggedCall, timesFaster: number): Call {
  const { method, status, params, description = '' } = call;
  const began = new Date(call.at).getTime() - call.ms / timesFaster;
  return {
    at: began,
    method,
    status,
    chatId: call.chatId ?? null,
    messageId: call.messageId ?? null,
    prompt: promptOf(method, params),
    queryId: method === 'answerCallbackQuery' ? String(params.callback_query_id) : null,
    pauseSeconds: status === 429 ? Number(/retry after (\d+)/.exec(description)?.[1] ?? 0) : null,
    byFault: description.includes(BY_FAULT),
  };
}

/** What the bot sends a family by itself, told by what the family sees of it. */
function promptOf(method: string, params: Readonly<Record<string, unknown>>): Prompt | null {
  if (!isNewMessage(method)) return null;
  const text = String(params.text ?? params.caption ?? '');
  const labels = JSON.stringify(params.reply_markup ?? '');
  if (!labels.includes(`"${BUTTONS.start}"`)) return null;
  return text.includes('Still time') ? 'nudge' : 'evening';
}

/** What the service counts as a new message. */
export function isNewMessage(method: string): boolean {
  return /^(send(?!chataction)|copymessage)/i.test(method);
}
