import { say } from '../language/index.ts';
import { lines, type Text } from './words.ts';

/** For a photo, a sticker, a voice note: nothing we can use yet. */
export function noFiles(): Text {
  return lines(say('general-text-only'));
}

/** For somebody who added the bot to a group. */
export function privateOnly(): Text {
  return lines(say('general-private-only'));
}
