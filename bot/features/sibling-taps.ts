import {
  AppError,
  type EveningView,
  getDisplay,
  getEvening,
  type HelperScope,
  listTurns,
  localTimeAt,
  moveCopy,
  startEvening,
} from '../../db/index.ts';
import { apiProblem } from '../chat/api-error.ts';
import { postScreen } from '../chat/show.ts';
import { eveningScreen } from '../screens/evening-screen.ts';
import { errorText } from '../texts/errors.ts';
import { about, turnAnswer } from '../texts/turns.ts';
import { act, nothing, scopeOf } from './evening-taps.ts';
import { syncCopies } from './sync-copies.ts';
import type { Tap, TapHandlers } from './tap.ts';

/** From one child's evening to a brother's or sister's. */
export const siblingTaps: TapHandlers<'nextChild'> = {
  nextChild: async (tap, { evening, next }) => {
    const { store } = tap.deps;
    const { helperId } = await scopeOf(tap, evening);
    const turns = await listTurns(store, { helperId, eveningId: evening });
    const turn = turns.find(({ eveningId }) => eveningId === next);
    if (!turn) throw new AppError('not_found', 'evening');
    const { nickname, state } = turn;
    // Begun meanwhile, by the first of two taps or by another helper: it is not sent again.
    if (state === 'waiting') await begin(tap, { helperId, eveningId: next }, nickname);
    else await tap.answer(turnAnswer(nickname, state), 'alert');
    await act(tap, evening, nothing);
  },
};

/**
 * Starts the evening of a brother or sister in a new message, below what was just done: its own lies further up. The new one
 * is kept true from now on; the older ones lead to it.
 */
async function begin(tap: Tap, scope: HelperScope, nickname: string): Promise<void> {
  const { deps } = tap;
  const now = deps.clock.now();
  try {
    await startEvening(deps.store, scope, now);
  } catch (error) {
    if (!(error instanceof AppError) || error.code !== 'expired') throw error;
    return tap.answer(about(nickname, errorText(error)), 'alert');
  }
  await tap.answer(turnAnswer(nickname, 'waiting'));
  const view = await getEvening(deps.store, scope);
  const messageId = await post(tap, scope, view);
  if (messageId === null) return;
  const place = { chatId: tap.place.chatId, messageId };
  const { day } = localTimeAt(now, view.zone);
  await syncCopies(deps, view, day, { ...place, shown: { kind: 'unknown' } }, 'own');
  await moveCopy(deps.store, view.id, { ...place, botId: deps.botId });
}

/** Sends the evening as it stands; null when no answer came, so that nobody knows whether it arrived. */
async function post(tap: Tap, scope: HelperScope, view: EveningView): Promise<number | null> {
  const { deps } = tap;
  const { day } = localTimeAt(deps.clock.now(), view.zone);
  const display = await getDisplay(deps.store, scope.helperId);
  try {
    const screen = eveningScreen(view, day, { ...deps, ...display });
    return await postScreen(deps, tap.place.chatId, screen);
  } catch (error) {
    const { kind } = apiProblem(error);
    if (kind !== 'unknown') throw error;
    deps.log.warn({ problem: kind }, 'reply_lost');
    return null;
  }
}
