import { type EveningView, forgetCopy, listCopies } from '../../db/index.ts';
import type { SchoolDay } from '../../drills/index.ts';
import { apiProblem } from '../chat/api-error.ts';
import type { Place } from '../chat/chat.ts';
import { changeScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import { readIn } from '../language/index.ts';
import { copyScreen } from '../screens/evening-screen.ts';
import { languageFor } from './language-for.ts';

/**
 * Brings the other messages about an evening up to date: an earlier one in the same chat and, for `all`, those of other
 * helpers. The tap itself is answered already, so a message that cannot be changed is logged and left.
 */
export async function syncCopies(
  deps: BotDeps,
  view: EveningView,
  today: SchoolDay,
  current: Place,
  whose: 'all' | 'own',
): Promise<void> {
  for (const copy of await listCopies(deps.store, view.id)) {
    const api = deps.apiOf(copy.botId);
    const sameChat = copy.botId === deps.botId && copy.chatId === current.chatId;
    if (sameChat ? copy.messageId === current.messageId : whose === 'own') continue;
    if (!api) {
      deps.log.warn({ eveningId: view.id, botId: copy.botId }, 'copy_of_another_bot');
      continue;
    }
    try {
      const place = { ...copy, shown: { kind: 'unknown' } } as const;
      const language = await languageFor(deps, { id: copy.chatId });
      const changed = await readIn(language, () =>
        changeScreen({ ...deps, api, botId: copy.botId }, place, copyScreen(view, today, sameChat)),
      );
      // Deleted by its owner. A new message would break the promise of one an evening.
      if (!changed) await forgetCopy(deps.store, view.id, copy);
    } catch (error) {
      deps.log.warn({ eveningId: view.id, problem: apiProblem(error).kind }, 'copy_not_updated');
    }
  }
}
