import { GrammyError } from 'grammy';
import type { InlineKeyboardMarkup } from 'grammy/types';
import { findFile, problemOf } from '../../db/index.ts';
import type { Screen } from '../screens/screen.ts';
import { lines } from '../texts/words.ts';
import { apiProblem } from './api-error.ts';
import type { ChatDeps, Place } from './chat.ts';
import { callWithPicture, PaintError } from './upload.ts';

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
 * Sends a screen as a new message and returns its id; every failure is the caller's. A picture that cannot be drawn or is
 * refused is replaced by its words.
 */
export async function postScreen(deps: ChatDeps, chatId: number, screen: Screen): Promise<number> {
  const { picture } = screen;
  const reply_markup = keyboard(screen);
  if (picture) {
    try {
      const sent = await callWithPicture(deps, picture, (media) =>
        deps.api.sendPhoto(chatId, media, { ...caption(screen), reply_markup }),
      );
      if (sent !== true) return sent.message_id;
    } catch (error) {
      orElseWords(deps, error);
    }
  }
  const { text, entities } = inWords(screen);
  const sent = await deps.api.sendMessage(chatId, text, { entities, reply_markup });
  return sent.message_id;
}

/**
 * Turns a message into a screen. A text can become a picture; a picture stays one and only its caption changes. When the
 * message is gone, a new one is sent, so that a tap never ends in silence.
 */
export async function editScreen(deps: ChatDeps, place: Place, screen: Screen): Promise<void> {
  if (await changeScreen(deps, place, screen)) return;
  await sendScreen(deps, place.chatId, screen);
}

/** Turns a message into a screen if it is still there; false when the person has deleted it. */
export async function changeScreen(deps: ChatDeps, place: Place, screen: Screen): Promise<boolean> {
  try {
    if (screen.picture && !(await showsAlready(deps, place, screen.picture.hash))) {
      await editPicture(deps, place, screen);
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

async function showsAlready(deps: ChatDeps, place: Place, hash: string): Promise<boolean> {
  if (place.shown.kind !== 'picture') return false;
  const file = await findFile(deps.store, { hash, botId: deps.botId });
  return file?.uniqueId === place.shown.uniqueId;
}

async function editPicture(deps: ChatDeps, place: Place, screen: Screen): Promise<void> {
  const { picture } = screen;
  if (!picture) return;
  try {
    await callWithPicture(deps, picture, (media) =>
      deps.api.editMessageMedia(
        place.chatId,
        place.messageId,
        { type: 'photo', media, ...caption(screen) },
        { reply_markup: keyboard(screen) },
      ),
    );
  } catch (error) {
    orElseWords(deps, error);
    await editWords(deps, place, { ...screen, text: inWords(screen) });
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
 * Lets an error through unless it is about the picture itself, drawn badly or refused by the service; anything else may have
 * struck after the picture arrived. Logged once; the family sees the words instead.
 */
function orElseWords(deps: ChatDeps, error: unknown): void {
  const problem = pictureProblem(error);
  if (problem === null) throw error;
  deps.log.warn({ problem }, 'picture_replaced_by_words');
}

function pictureProblem(error: unknown): string | null {
  if (error instanceof PaintError) return problemOf(error.cause);
  const problem = apiProblem(error);
  return error instanceof GrammyError && problem.kind === 'rejected' ? problem.code : null;
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
