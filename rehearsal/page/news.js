// @ts-check
/** @import { ChatMessage } from '../phone-api/views.ts' */

/** As much of a message as is read out when it comes. */
const READ_OUT = 300;

/** @param {ChatMessage} message */
function inWords({ text, photo, video, voice, document: file }) {
  const kind = (photo && 'Picture') || (video && 'Video') || (voice && 'Voice note');
  const what = kind || (file && `Document ${file.fileName ?? ''}`);
  return [what, text].filter(Boolean).join(': ').slice(0, READ_OUT);
}

/**
 * Finds out what a bot's newest message says when it is new or was changed since the last look, for people who hear the page.
 * The first look tells nothing: what was there before is no news.
 *
 * @returns {(messages: readonly ChatMessage[]) => string | undefined}
 */
export function createNews() {
  /** @type {Map<number, string> | undefined} */
  let known;
  return (messages) => {
    const before = known;
    const own = messages.filter(({ from }) => from === 'bot');
    known = new Map(own.map((message) => [message.id, JSON.stringify(message)]));
    const after = known;
    const newest = own.findLast(({ id }) => before && before.get(id) !== after.get(id));
    return newest && inWords(newest);
  };
}
