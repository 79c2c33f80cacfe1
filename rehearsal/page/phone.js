// @ts-check
/** @import { AccountView, ButtonView, ChatMessage, Overview } from '../phone-api/views.ts' */
/** @import { Command } from './api.js' */
import { api } from './api.js';
import { createChatList } from './chat-list.js';
import { commandChips, composer } from './composer.js';
import { createAnswerTeller, enlarge } from './dialogs.js';
import { h, refresh } from './dom.js';
import { messageEntry } from './message.js';
import { shortDay } from './words.js';

/**
 * @typedef {object} Phone
 * @property {HTMLElement} element
 * @property {(id: number | undefined) => void} choose
 * @property {() => number | undefined} chosen
 * @property {(overview: Overview) => Promise<void>} update
 */

/** @param {string} place */
function createParts(place) {
  const heading = h('h2', { class: 'owner', id: `owner-${place}` });
  const chat = createChatList(`owner-${place}`);
  const status = h('p', { class: 'answer', role: 'status' });
  const commands = h('div', { class: 'chips' });
  const controls = h('div', { class: 'composer' });
  const element = h(
    'section',
    { class: 'phone', 'aria-labelledby': `owner-${place}`, hidden: true },
    heading,
    chat.element,
    status,
    commands,
    controls,
  );
  return { place, element, heading, chat, status, commands, controls };
}

/** @typedef {ReturnType<typeof createParts>} Parts */
/** @typedef {(work: Promise<unknown>) => Promise<boolean>} Attempt */

/**
 * @param {Parts} parts
 * @param {AccountView} account
 * @param {readonly Command[]} known
 * @param {Attempt} attempt
 */
function drawControls(parts, account, known, attempt) {
  const { id, name, opened, blocked, deactivated } = account;
  const actions = {
    say: (/** @type {string} */ text) => attempt(api.say(id, text)),
    open: (/** @type {string} */ link) => attempt(api.open(id, link)),
    setBlocked: (/** @type {boolean} */ isBlocked) => void attempt(api.setBlocked(id, isBlocked)),
  };
  const signature = JSON.stringify([id, name, opened, blocked, deactivated]);
  refresh(parts.controls, signature, () => composer(account, parts.place, actions));
  const canWrite = opened && !blocked && !deactivated;
  refresh(parts.commands, signature + JSON.stringify(known), () =>
    canWrite ? commandChips(known, actions.say) : [],
  );
}

/**
 * @param {Parts} parts
 * @param {AccountView} account
 * @param {Overview} overview
 * @param {readonly ChatMessage[]} messages
 * @param {Attempt} attempt
 */
function drawChat(parts, account, overview, messages, attempt) {
  const { timeZone, bot, accounts } = overview;
  const { status } = parts;
  parts.heading.replaceChildren(account.name, h('small', {}, account.note ?? ''));
  /** @param {number} messageId @param {ButtonView} button */
  const tap = (messageId, button) => {
    status.textContent = `${button.text}: waiting for the bot`;
    void attempt(api.tap(account.id, messageId, button.data ?? ''));
  };
  const links = {
    botUsername: bot.username,
    phoneId: account.id,
    phones: accounts,
    open: (/** @type {number} */ phone, /** @type {string} */ link) =>
      void attempt(api.open(phone, link)),
  };
  const actions = { links, personName: account.name, botName: bot.name, timeZone, tap, enlarge };
  const context = JSON.stringify(accounts.map((it) => [it.id, it.name, it.note]));
  const days = messages.map(({ date }) => shortDay(new Date(date), timeZone));
  const entries = messages.map((message, i) => {
    const isNewDay = days[i] !== days[i - 1];
    return {
      id: message.id,
      signature: JSON.stringify([isNewDay, context, message]),
      draw: () => messageEntry(message, isNewDay, actions),
    };
  });
  parts.chat.update(entries);
}

/**
 * A phone on the desk: whose it is, the chat, and what the person can do.
 *
 * @param {string} place `left` or `right`
 * @param {Attempt} attempt runs an action, shows what went wrong and reads anew
 * @returns {Phone}
 */
export function createPhone(place, attempt) {
  /** @type {number | undefined} */
  let id;
  let updates = 0;
  const parts = createParts(place);
  const tell = createAnswerTeller(parts.status);
  return {
    element: parts.element,
    choose: (chosen) => {
      if (chosen === id) return;
      id = chosen;
      parts.status.textContent = '';
      parts.chat.clear();
    },
    chosen: () => id,
    update: async (overview) => {
      const account = overview.accounts.find((it) => it.id === id);
      parts.element.hidden = account === undefined;
      if (account === undefined) return;
      updates += 1;
      const mine = updates;
      const [messages, answers, known] = await Promise.all([
        api.chat(account.id),
        api.answers(account.id),
        api.commands(account.id),
      ]);
      // A later update or another phone has overtaken this one.
      if (mine !== updates || id !== account.id) return;
      drawChat(parts, account, overview, messages, attempt);
      tell(account.id, answers);
      drawControls(parts, account, known, attempt);
    },
  };
}
