// @ts-check
/** @import { ButtonView, ChatMessage } from '../phone-api/views.ts' */
/** @import { LinkActions } from './links.js' */
import { h } from './dom.js';
import { fileEntry, picture, player } from './file-view.js';
import { isBotLink, linkOpener, outsideLink } from './links.js';
import { richText } from './rich-text.js';
import { shortDay, shortTime } from './words.js';

/**
 * @typedef {object} MessageActions
 * @property {LinkActions} links
 * @property {string} personName
 * @property {string} botName
 * @property {string | undefined} timeZone
 * @property {(messageId: number, button: ButtonView) => void} tap
 * @property {(address: string, description: string) => void} enlarge
 */

/**
 * @param {ChatMessage} message
 * @param {MessageActions} actions
 */
function keyboard(message, actions) {
  /** @param {ButtonView} button */
  const one = (button) => {
    const { text, url } = button;
    if (url === undefined)
      return h('button', { type: 'button', onclick: () => actions.tap(message.id, button) }, text);
    return isBotLink(url, actions.links.botUsername)
      ? linkOpener(text, url, actions.links)
      : outsideLink(text, url);
  };
  return h(
    'div',
    { class: 'keys' },
    ...message.buttons.map((row) => h('div', { class: 'keys-row' }, ...row.map(one))),
  );
}

/** As much of a message as says which one it was. */
const REMINDER = 60;

/** @param {ChatMessage | undefined} earlier the message that was replied to; undefined when it is gone */
function replyLine(earlier) {
  const words = earlier?.text.slice(0, REMINDER) || 'an earlier message';
  return h('p', { class: 'reply' }, `In reply to: ${words}`);
}

/**
 * One entry of the notebook: the time in the margin, what was said beside it.
 *
 * @param {ChatMessage} message
 * @param {{ isNewDay: boolean, earlier: ChatMessage | undefined }} context `earlier` is the message it replies to
 * @param {MessageActions} actions
 */
export function messageEntry(message, { isNewDay, earlier }, actions) {
  const { photo, video, document, voice, text, entities, edits } = message;
  const instant = new Date(message.date);
  const writer = message.from === 'bot' ? actions.botName : actions.personName;
  /** @param {string} label @param {string} url */
  const showLink = (label, url) =>
    isBotLink(url, actions.links.botUsername)
      ? h('span', {}, label, ' ', linkOpener('Open it', url, actions.links))
      : outsideLink(label, url);
  return h(
    'li',
    { class: `entry from-${message.from}`, tabindex: -1 },
    h(
      'p',
      { class: 'margin' },
      h(
        'time',
        { datetime: message.date },
        isNewDay && h('span', { class: 'day' }, shortDay(instant, actions.timeZone), ' '),
        shortTime(instant, actions.timeZone),
      ),
      edits > 0 && h('small', {}, edits === 1 ? 'changed once' : `changed ${edits} times`),
    ),
    h(
      'div',
      { class: 'said' },
      h('p', { class: 'writer' }, writer),
      message.replyTo !== undefined && replyLine(earlier),
      photo && picture(photo, text, actions.enlarge),
      video && player('video', video, text),
      document && fileEntry(document),
      voice && player('voice note', voice, text),
      text !== '' && h('p', { class: 'text' }, ...richText(text, entities, showLink)),
      message.buttons.length > 0 && keyboard(message, actions),
    ),
  );
}
