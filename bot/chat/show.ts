import { GrammyError } from 'grammy';
import type { InlineKeyboardMarkup, Message } from 'grammy/types';
import { findFile, problemOf } from '../../db/index.ts';
import type { Screen } from '../screens/screen.ts';
import { lines } from '../texts/words.ts';
import { apiProblem } from './api-error.ts';
import type { ChatDeps, Place } from './chat.ts';
import { callWithVisual, type VisualCall } from './upload.ts';
import { PaintError, type Visual, visualsOf } from './visual.ts';

/**
 * Sends a screen as a new message to somebody who has just done something. When no answer comes, the message may have arrived:
 * that is logged, and what follows goes on, since a handler that is run again would send everything twice.
 */
export async function sendScreen(deps: ChatDeps, chatId: number, screen: Screen): Promise<void> {
  try {
    await postScreen(deps, chatId, screen);
  } catch (error) {
    const { kind } = apiProblem(error);
    if (kind !== 'unknown') throw error;
    deps.log.warn({ problem: kind }, 'reply_lost');
  }
}

/**
 * Sends a screen as a new message and returns its id; every failure is the caller's. A clip that is not ready or is refused is
 * replaced by the picture, and a picture that cannot be drawn or is refused by its words.
 */
export async function postScreen(deps: ChatDeps, chatId: number, screen: Screen): Promise<number> {
  const reply_markup = keyboard(screen);
  for (const visual of visualsOf(screen)) {
    const under = { ...caption(screen), reply_markup };
    const sent = await tryVisual(deps, visual, (media) =>
      visual.send(deps.api, chatId, media, under),
    );
    if (sent !== null && sent !== true) return sent.message_id;
  }
  const { text, entities } = inWords(screen);
  const sent = await deps.api.sendMessage(chatId, text, { entities, reply_markup });
  return sent.message_id;
}

/**
 * Turns a message into a screen. A text can become a picture or clip; these stay, and only the caption changes. When the
 * message is gone, a new one is sent, so that a tap never ends in silence.
 */
export async function editScreen(deps: ChatDeps, place: Place, screen: Screen): Promise<void> {
  if (await changeScreen(deps, place, screen)) return;
  await sendScreen(deps, place.chatId, screen);
}

/** Turns a message into a screen if it is still there; false when the person has deleted it. */
export async function changeScreen(deps: ChatDeps, place: Place, screen: Screen): Promise<boolean> {
  try {
    const visuals = visualsOf(screen);
    if (visuals.length > 0 && !(await showsAlready(deps, place, visuals))) {
      await editVisual(deps, place, screen, visuals);
    } else {
      await editWords(deps, place, screen);
    }
    return true;
  } catch (error) {
    const problem = apiProblem(error);
    if (problem.kind === 'not_modified') return true;
    if (problem.kind === 'not_editable') return false;
    throw error;
  }
}

/** Whether the message shows one of these already: a sheet that stood in for its clip stays when the clip is ready later. */
async function showsAlready(
  deps: ChatDeps,
  { shown }: Place,
  visuals: readonly Visual[],
): Promise<boolean> {
  if (shown.kind !== 'picture') return false;
  for (const { hash } of visuals) {
    const file = await findFile(deps.store, { hash, botId: deps.botId });
    if (file?.uniqueId === shown.uniqueId) return true;
  }
  return false;
}

async function editVisual(
  deps: ChatDeps,
  place: Place,
  screen: Screen,
  visuals: readonly Visual[],
): Promise<void> {
  for (const visual of visuals) {
    const edited = await tryVisual(deps, visual, (media) =>
      deps.api.editMessageMedia(
        place.chatId,
        place.messageId,
        visual.asMedia(media, caption(screen)),
        { reply_markup: keyboard(screen) },
      ),
    );
    if (edited !== null) return;
  }
  await editWords(deps, place, { ...screen, text: inWords(screen) });
}

/** Null when this is not to be seen: not ready, drawn badly, refused, or a clip the service fails at. Any other failure is the caller's. */
async function tryVisual(
  deps: ChatDeps,
  visual: Visual,
  call: VisualCall,
): Promise<Message | true | null> {
  try {
    return await callWithVisual(deps, visual, call);
  } catch (error) {
    orElseNext(deps, visual.kind, error);
    return null;
  }
}

async function editWords(deps: ChatDeps, place: Place, screen: Screen): Promise<void> {
  const { chatId, messageId, shown } = place;
  const reply_markup = keyboard(screen);
  const asText = () => {
    const { text, entities } = inWords(screen);
    return deps.api.editMessageText(chatId, messageId, text, { entities, reply_markup });
  };
  const asCaption = () =>
    deps.api.editMessageCaption(chatId, messageId, { ...caption(screen), reply_markup });
  const [first, second] = shown.kind === 'picture' ? [asCaption, asText] : [asText, asCaption];
  try {
    await first();
  } catch (error) {
    const { kind } = apiProblem(error);
    if (kind !== 'no_text' && kind !== 'no_caption') throw error;
    await second();
  }
}

/**
 * Lets an error through unless it is about the picture or clip itself, drawn badly or refused by the service; anything else may
 * have struck after it arrived. A clip also gives way when the service failed at it, which says that it was not carried out: large
 * files may fail where small ones pass. Logged once; the family sees the next best instead.
 */
function orElseNext(deps: ChatDeps, kind: Visual['kind'], error: unknown): void {
  const problem = pictureProblem(error) ?? (kind === 'clip' ? serviceProblem(error) : null);
  if (problem === null) throw error;
  const event = kind === 'clip' ? 'clip_replaced_by_picture' : 'picture_replaced_by_words';
  deps.log.warn({ problem }, event);
}

function pictureProblem(error: unknown): string | null {
  if (error instanceof PaintError) return problemOf(error.cause);
  const problem = apiProblem(error);
  return error instanceof GrammyError && problem.kind === 'rejected' ? problem.code : null;
}

function serviceProblem(error: unknown): string | null {
  const problem = apiProblem(error);
  return problem.kind === 'service_error' ? problem.code : null;
}

function inWords(screen: Screen): Screen['text'] {
  return screen.picture && screen.words ? lines(screen.text, '', screen.words) : screen.text;
}

function caption(screen: Screen) {
  const { caption, caption_entities } = screen.text;
  return { caption, caption_entities };
}

function keyboard(screen: Screen): InlineKeyboardMarkup {
  return {
    inline_keyboard: screen.buttons.map((row) =>
      row.map(({ label, data }) => ({ text: label, callback_data: data })),
    ),
  };
}
