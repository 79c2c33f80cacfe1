import { z } from 'zod';
import type { Button } from '../state.ts';
import { badRequest } from './envelope.ts';

/** Bytes of UTF-8 (SPEC InlineKeyboardButton). */
const DATA_LIMIT = 64;
/** Observed by bot authors, not official: buttons in all and bytes of the whole markup. */
const BUTTON_LIMIT = 100;
const MARKUP_LIMIT = 10_240;

const button = z.looseObject({
  text: z.string(),
  callback_data: z.string().optional(),
  url: z.string().optional(),
});
const keyboard = z.array(z.array(button));

export interface Markup {
  readonly keyboard?: Button[][];
  readonly otherMarkup?: Record<string, unknown>;
}

const NOT_ACTIONS = ['text', 'style', 'icon_custom_emoji_id'];

/** Whether a callback payload has a length the service takes: 1 to 64 bytes. */
export function isCallbackData(data: string): boolean {
  return data !== '' && Buffer.byteLength(data) <= DATA_LIMIT;
}

function checkButton(given: z.output<typeof button>): Button {
  if (given.text === '')
    throw badRequest("can't parse inline keyboard button: Button text must be non-empty");
  const actions = Object.keys(given).filter((key) => !NOT_ACTIONS.includes(key));
  if (actions.length === 0) {
    throw badRequest(
      "can't parse inline keyboard button: Text buttons are unallowed in the inline keyboard",
    );
  }
  const { callback_data: data, url } = given;
  if (data !== undefined && !isCallbackData(data)) throw badRequest('BUTTON_DATA_INVALID');
  if (url !== undefined && !/^(https?|tg):\/\/\S+$/.test(url))
    throw badRequest('BUTTON_URL_INVALID');
  return { ...given };
}

/**
 * Reads a `reply_markup`. Empty inline keyboards count as none.
 * Throws a 400 for buttons without an action, payloads over 64 bytes and keyboards beyond the limits.
 */
export function readMarkup(markup: Record<string, unknown> | undefined): Markup {
  if (markup === undefined) return {};
  if (!('inline_keyboard' in markup))
    return Object.keys(markup).length === 0 ? {} : { otherMarkup: markup };
  const read = keyboard.safeParse(markup.inline_keyboard);
  if (!read.success)
    throw badRequest("can't parse inline keyboard button: InlineKeyboardButton must be an Object");
  const rows = read.data.map((row) => row.map(checkButton)).filter((row) => row.length > 0);
  if (rows.flat().length > BUTTON_LIMIT || Buffer.byteLength(JSON.stringify(rows)) > MARKUP_LIMIT) {
    throw badRequest('reply markup is too long');
  }
  return rows.length === 0 ? {} : { keyboard: rows };
}

/** Reads the `reply_markup` of an edit, which can only be an inline keyboard. */
export function readInlineMarkup(
  markup: Record<string, unknown> | undefined,
): Button[][] | undefined {
  const read = readMarkup(markup);
  if (read.otherMarkup !== undefined) throw badRequest('inline keyboard expected');
  return read.keyboard;
}
