import type { Gate } from '../../rehearsal/server.ts';
import { textsIn } from './leaks.ts';

/** Sees every call of the bot as it comes in, and lets all pass. */
export interface CallWatch {
  readonly gate: Gate;
  /** The queries that were answered, or that the bot tried to answer. */
  answered(): readonly string[];
  /** Every text of every other call. */
  said(): readonly string[];
  forget(): void;
}

/** A watch that has seen nothing yet. */
export function createCallWatch(): CallWatch {
  let answered: string[] = [];
  let said: string[] = [];
  return {
    gate: async ({ method, params }) => {
      if (method === 'answerCallbackQuery') answered.push(String(params.callback_query_id));
      if (method !== 'getUpdates') said.push(textsIn(params).join('\n'));
      return 'apply';
    },
    answered: () => answered,
    said: () => said,
    forget: () => {
      answered = [];
      said = [];
    },
  };
}
