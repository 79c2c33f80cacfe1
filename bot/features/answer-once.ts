import { apiProblem } from '../chat/api-error.ts';
import type { BotDeps } from '../deps.ts';
import type { Tap } from './tap.ts';

/** Characters the chat service takes in an answer to a tap. */
const ANSWER_LENGTH = 200;

/** The service keeps a tap answerable for seconds only; a late answer is dropped, what the tap did stands. */
export function answerOnce(deps: BotDeps, queryId: string): Tap['answer'] {
  let answered = false;
  return async (text, kind) => {
    if (answered) return;
    answered = true;
    try {
      await deps.api.answerCallbackQuery(
        queryId,
        text === undefined
          ? {}
          : { text: text.slice(0, ANSWER_LENGTH), show_alert: kind === 'alert' },
      );
    } catch (error) {
      deps.log.info({ problem: apiProblem(error).kind }, 'answer_not_taken');
    }
  };
}
