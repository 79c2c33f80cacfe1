import { lines, type Text } from './words.ts';

/** For a photo, a sticker, a voice note: nothing we can use yet. */
export function noFiles(): Text {
  return lines('I can only read text and taps. Send /help to see what I can do.');
}

/** For somebody who added the bot to a group. */
export function privateOnly(): Text {
  return lines('Please write to me in a private chat. Children’s results never go to a group.');
}
