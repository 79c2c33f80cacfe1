import type { Gate } from '../../../rehearsal/server.ts';

/** Sees what the bot says to whom, as it says it. */
export interface Replies {
  readonly gate: Gate;
  /** Resolves when the bot next writes to a chat. */
  next(chatId: number): Promise<void>;
  /** How often the bot has written to a chat. */
  count(chatId: number): number;
}

/** Has seen nothing yet. */
export function createReplies(): Replies {
  const counts = new Map<number, number>();
  const waiting = new Map<number, () => void>();
  return {
    gate: async ({ method, params }) => {
      const chatId = Number(params.chat_id);
      if (method === 'sendMessage') {
        counts.set(chatId, (counts.get(chatId) ?? 0) + 1);
        waiting.get(chatId)?.();
      }
      return 'apply';
    },
    next: (chatId) => new Promise((resolve) => waiting.set(chatId, resolve)),
    count: (chatId) => counts.get(chatId) ?? 0,
  };
}
