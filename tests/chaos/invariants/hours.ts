import type { EveningFacts, Violation } from '../facts.ts';
import { isNewMessage } from '../traffic.ts';

/**
 * Nothing new is sent to a family before its evening or in quiet hours, whether it arrived or not. Families of the suite tap
 * within the hours only, so that nothing outside them is an answer.
 */
export function checkHours({ calls, families, hours }: EveningFacts): Violation[] {
  const phones = new Set(families.flatMap((family) => family.phones));
  return calls
    .filter(({ chatId, method }) => chatId !== null && phones.has(chatId) && isNewMessage(method))
    .filter(({ at }) => at < hours.from || at >= hours.to)
    .map(({ at, chatId, method }) => ({
      invariant: 'nothing is sent outside hours',
      what: `${method} to phone ${chatId} at ${new Date(at).toISOString()}`,
    }));
}
