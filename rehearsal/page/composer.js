// @ts-check
/** @import { AccountView } from '../phone-api/views.ts' */
/** @import { Command } from './api.js' */
import { h } from './dom.js';

/**
 * @typedef {object} ComposerActions
 * @property {(text: string) => Promise<boolean>} say
 * @property {(link: string) => Promise<boolean>} open
 * @property {(blocked: boolean) => void} setBlocked
 */

/**
 * A labelled field to fill in and send. Keeps what was typed when sending was refused. With `rows` it takes several lines, as
 * a pasted list needs: Enter sends, Shift and Enter begin a new line.
 *
 * @param {{ label: string, button: string, id: string, placeholder?: string, rows?: number }} words
 * @param {(value: string) => Promise<boolean>} send
 */
function line({ label, button, id, placeholder, rows }, send) {
  const field = { id, autocomplete: 'off', placeholder, required: true };
  const input = rows ? h('textarea', { ...field, rows }) : h('input', field);
  /** @param {Event} event */
  const submit = async (event) => {
    event.preventDefault();
    if (await send(input.value)) input.value = '';
  };
  /** @param {Event} event */
  const sendOnEnter = (event) => {
    if (!(event instanceof KeyboardEvent) || event.key !== 'Enter') return;
    if (event.shiftKey || event.isComposing) return;
    event.preventDefault();
    if (input.value.trim() !== '') void submit(event);
  };
  return h(
    'form',
    { class: 'line', onsubmit: submit, ...(rows ? { onkeydown: sendOnEnter } : {}) },
    h('label', { for: id }, label),
    input,
    h('button', {}, button),
  );
}

/**
 * What the person can do below the chat.
 *
 * @param {AccountView} account
 * @param {string} place makes ids unique when two phones are shown
 * @param {ComposerActions} actions
 */
export function composer(account, place, actions) {
  const link = line(
    { label: 'Open a link', button: 'Open', id: `link-${place}`, placeholder: 'https://t.me/...' },
    actions.open,
  );
  if (account.deactivated) return [h('p', {}, 'This account is closed.')];
  if (account.blocked) {
    const unblock = h(
      'button',
      { type: 'button', onclick: () => actions.setBlocked(false) },
      'Unblock the bot',
    );
    return [h('p', {}, `${account.name} has blocked the bot.`), unblock];
  }
  if (!account.opened) {
    const start = h(
      'button',
      { type: 'button', class: 'strong', onclick: () => void actions.say('/start') },
      'Press start',
    );
    return [h('p', {}, `${account.name} has not opened this chat yet.`), start, link];
  }
  const write = line(
    { label: `Write as ${account.name}`, button: 'Send', id: `say-${place}`, rows: 2 },
    actions.say,
  );
  const block = h(
    'button',
    { type: 'button', onclick: () => actions.setBlocked(true) },
    'Block the bot',
  );
  return [write, h('details', { class: 'more' }, h('summary', {}, 'More'), link, block)];
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
      h('span', {}, ` ${description}`),
    ),
  );
}
