import type { Transformer } from 'grammy';
import { type Clock, currentRequest, type Meter } from '../../db/index.ts';

/** Counts the service's "too many", and how long people waited for the answer to their tap. The innermost of a bot's transformers. */
export function countCalls({ clock, meter }: { clock: Clock; meter: Meter }): Transformer {
  return async (previous, method, payload, signal) => {
    const answer = await previous(method, payload, signal);
    if (!answer.ok && answer.error_code === 429) meter.refused();
    const since = currentRequest()?.since;
    if (answer.ok && method === 'answerCallbackQuery' && since) {
      meter.answered(clock.now().getTime() - since.getTime());
    }
    return answer;
  };
}
