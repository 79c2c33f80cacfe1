import { Bot, BotError, type Context } from 'grammy';
import type { Update, UserFromGetMe } from 'grammy/types';
import { AppError, markReachable, markUnreachable } from '../db/index.ts';
import { unpack } from './callback/codec.ts';
import type { BotDeps } from './deps.ts';
import { answerOnce } from './features/answer-once.ts';
import { classFile } from './features/class-file.ts';
import { languageFor } from './features/language-for.ts';
import { onTap } from './features/on-tap.ts';
import { takeRecording } from './features/recordings.ts';
import { routeText } from './features/route-text.ts';
import { type Typed, typed } from './features/say.ts';
import { readIn } from './language/index.ts';
import { isWellFormed, queryToAnswer } from './receive/well-formed.ts';
import { errorText, ourFault, staleButton } from './texts/errors.ts';
import { noFiles, privateOnly } from './texts/general.ts';
import { leftOut } from './texts/limits.ts';
import { lines } from './texts/words.ts';

/** The bot as the inbox uses it: one update at a time, handled to its end. */
export interface UpdateHandler {
  /** Handles an update. Rejects when something unforeseen went wrong; the inbox then tries again. */
  handle(update: Update): Promise<void>;
  /** Tells the person behind an update that it is our fault, after the last try. Rejects when they could not be told. */
  apologise(update: Update): Promise<void>;
  /** Tells somebody that they sent more than is kept. Rejects when they could not be told. */
  leftOut(chatId: number): Promise<void>;
}

/** Puts the features in their order. `token` and `botInfo` say which bot this is. */
export function createBot(
  deps: BotDeps,
  identity: { token: string; botInfo: UserFromGetMe },
): UpdateHandler {
  const bot = new Bot(identity.token, { botInfo: identity.botInfo });
  // Everything below speaks the language of whoever wrote or tapped.
  bot.use(async (ctx, next) => readIn(await languageFor(deps, ctx.from), next));
  bot.on('my_chat_member', (ctx) => noteMembership(deps, ctx));
  bot.on('callback_query', (ctx) => answerTap(deps, ctx));
  bot.chatType('private').on('message:text', (ctx) => answerMessage(deps, ctx, routeText));
  bot
    .chatType('private')
    .on(['message:voice', 'message:video', 'message:video_note', 'message:audio'], (ctx) =>
      answerMessage(deps, ctx, (said) => takeRecording(said, ctx.message)),
    );
  bot
    .chatType('private')
    .on('message:document', (ctx) =>
      answerMessage(deps, ctx, (said) => classFile(said, ctx.message.document)),
    );
  bot.chatType('private').on('message', async (ctx) => {
    await typed(deps, ctx.from.id, '').reply(noFiles());
  });
  bot.chatType(['group', 'supergroup']).command(['start', 'help'], async (ctx) => {
    // Scores never go to a group, so there is nothing we could do there.
    await deps.api.sendMessage(ctx.chat.id, privateOnly().text);
  });
  return {
    handle: async (update) => {
      if (!isWellFormed(update)) return setAside(deps, update);
      try {
        await bot.handleUpdate(update);
      } catch (error) {
        // The framework wraps whatever a handler throws.
        throw error instanceof BotError ? error.error : error;
      }
    },
    apologise: (update) => apologise(deps, update),
    leftOut: async (chatId) =>
      readIn(await languageFor(deps, { id: chatId }), () =>
        typed(deps, chatId, '').reply(leftOut()),
      ),
  };
}

/** An update of an odd shape is not handled at all; a tap among them is answered like any other button that is not ours. */
async function setAside(deps: BotDeps, update: Update): Promise<void> {
  deps.log.warn({ updateId: update.update_id }, 'odd_update');
  const queryId = queryToAnswer(update);
  if (queryId !== null) await answerOnce(deps, queryId)(staleButton(), 'alert');
}

/** Blocking and unblocking arrive here before the next message could fail. */
async function noteMembership(deps: BotDeps, ctx: Context): Promise<void> {
  const change = ctx.myChatMember;
  if (change?.chat.type !== 'private') return;
  const gone = change.new_chat_member.status === 'kicked';
  const chat = { botId: deps.botId, chatId: change.chat.id };
  if (gone) await markUnreachable(deps.store, chat, deps.clock.now());
  else await markReachable(deps.store, chat);
  deps.log.info({ gone }, 'reachability_changed');
}

async function answerTap(deps: BotDeps, ctx: Context): Promise<void> {
  const query = ctx.callbackQuery;
  const message = query?.message;
  if (!query) return;
  const action = query.data === undefined ? null : unpack(query.data);
  if (!action || !message) {
    deps.log.warn({ updateId: ctx.update.update_id }, 'stale_button');
    await answerOnce(deps, query.id)(staleButton(), 'alert');
    return;
  }
  await onTap(deps, {
    updateId: ctx.update.update_id,
    queryId: query.id,
    userId: query.from.id,
    chatId: message.chat.id,
    message,
    action,
  });
}

/** Hands a message to a feature; what we refuse on purpose becomes the reply. */
async function answerMessage(
  deps: BotDeps,
  { from, message }: Context,
  answer: (said: Typed) => Promise<void>,
): Promise<void> {
  if (!from || !message) return;
  const said = typed(deps, from.id, message.text ?? '');
  try {
    await answer(said);
  } catch (error) {
    if (!(error instanceof AppError)) throw error;
    deps.log.info({ code: error.code, what: error.what }, 'text_refused');
    await said.reply(lines(errorText(error)));
  }
}

async function apologise(deps: BotDeps, update: Update): Promise<void> {
  // A tap has been answered at its first failure, and could not be any more: it is told by a message too.
  const chatId = update.message?.chat.id ?? update.callback_query?.from.id;
  if (chatId === undefined) return;
  const language = await languageFor(deps, { id: chatId });
  await readIn(language, () => deps.api.sendMessage(chatId, ourFault()));
}
