// @ts-check
/** @import { AccountView } from '../phone-api/views.ts' */
/** @import { Command, FileKind } from './api.js' */
import { h } from './dom.js';
import { fileSender } from './file-sender.js';
import { line } from './line.js';
import { linkOrCode } from './links.js';

/**
 * @typedef {object} ComposerActions
 * @property {(text: string) => Promise<boolean>} say
 * @property {(link: string) => Promise<boolean>} open
 * @property {(file: File, kind: FileKind, caption: string) => Promise<boolean>} sendFile
 * @property {(blocked: boolean) => void} setBlocked
 */

/**
 * @param {string} text
 * @param {() => void} onclick
 * @param {string} [kind]
 */
function act(text, onclick, kind) {
  return h('button', { type: 'button', class: kind, onclick }, text);
}

/**
 * A field for what is printed on a slip.
 *
 * @param {string} place
 * @param {ComposerActions} actions
 */
function slip(place, { open }) {
  const words = { label: 'Join with a slip: its link or its code', button: 'Join' };
  return line({ ...words, id: `slip-${place}` }, (typed) => open(linkOrCode(typed)));
}

/**
 * What the person can do below the chat.
 *
 * @param {AccountView} account
 * @param {string} place makes ids unique when several phones are shown
 * @param {ComposerActions} actions
 */
export function composer(account, place, actions) {
  if (account.deactivated) return [h('p', {}, 'This account is closed.')];
  if (account.blocked) {
    const words = h('p', {}, `${account.name} has blocked the bot.`);
    return [words, act('Unblock the bot', () => actions.setBlocked(false))];
  }
  if (!account.opened) {
    const words = h('p', {}, `${account.name} has not opened this chat yet.`);
    const start = act('Press start', () => void actions.say('/start'), 'strong');
    return [words, start, slip(place, actions)];
  }
  const write = { label: `Write as ${account.name}`, button: 'Send', id: `say-${place}`, rows: 1 };
  return [
    line(write, actions.say),
    h(
      'div',
      { class: 'more' },
      fileSender(place, actions.sendFile),
      h(
        'details',
        {},
        h('summary', {}, 'Join or block'),
        slip(place, actions),
        act('Block the bot', () => actions.setBlocked(true)),
      ),
    ),
  ];
}

/**
 * The bot's commands as buttons.
 *
 * @param {readonly Command[]} commands
 * @param {(text: string) => Promise<boolean>} say
 */
export function commandChips(commands, say) {
  return commands.map(({ command, description }) =>
    h(
      'button',
      { type: 'button', class: 'chip', title: description, onclick: () => void say(`/${command}`) },
      `/${command}`,
    ),
  );
}
