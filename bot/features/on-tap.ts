import type { MaybeInaccessibleMessage } from 'grammy/types';
import { AppError } from '../../db/index.ts';
import type { Action } from '../callback/actions.ts';
import { type Place, shownIn } from '../chat/chat.ts';
import { editScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import { errorText, tryingAgain } from '../texts/errors.ts';
import { answerOnce } from './answer-once.ts';
import { routeTap } from './route-tap.ts';
import type { Tap } from './tap.ts';

/** A tap as it came in. */
export interface IncomingTap {
  readonly updateId: number;
  readonly queryId: string;
  readonly userId: number;
  readonly chatId: number;
  readonly message: MaybeInaccessibleMessage;
  readonly action: Action;
}

/** Handles one tap. Whatever happens, the tap is answered: the button never keeps spinning. */
export async function onTap(deps: BotDeps, incoming: IncomingTap): Promise<void> {
  const answer = answerOnce(deps, incoming.queryId);
  const place = placeOf(incoming);
  const tap: Tap = {
    deps,
    userId: incoming.userId,
    place,
    answer,
    show: (screen) => editScreen(deps, place, screen),
  };
  try {
    // Our buttons stand in private chats only, whose number is the person's own. Anything else is forged.
    if (incoming.chatId !== incoming.userId) throw new AppError('not_found', 'message');
    await routeTap(tap, incoming.action);
  } catch (error) {
    if (!(error instanceof AppError)) {
      // The next try may come too late to answer the tap.
      await answer(tryingAgain());
      throw error;
    }
    // Ids and codes only: who tapped what they should not is an event, not a name.
    const { code, what } = error;
    deps.log.warn(
      { updateId: incoming.updateId, action: incoming.action.kind, code, what },
      'tap_refused',
    );
    await answer(errorText(error), 'alert');
  }
  await answer();
}

function placeOf(incoming: IncomingTap): Place {
  const { message, chatId } = incoming;
  const shown = message.date === 0 ? ({ kind: 'unknown' } as const) : shownIn(message);
  return { chatId, messageId: message.message_id, shown };
}
