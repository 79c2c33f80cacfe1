// @ts-check
/** @import { AccountView, ButtonView, ChatMessage, Overview } from '../phone-api/views.ts' */
/** @import { Command, FileKind } from './api.js' */
import { api } from './api.js';
import { createChatList } from './chat-list.js';
import { commandChips, composer } from './composer.js';
import { createAnswerTeller, enlarge } from './dialogs.js';
import { h, refresh } from './dom.js';
import { messageEntry } from './message.js';
import { createNews } from './news.js';
import { shortDay } from './words.js';

/**
 * @typedef {object} Phone
 * @property {HTMLElement} element
 * @property {(overview: Overview) => Promise<void>} update reads the chat anew; a phone that is gone stays as it was
 * @property {(elsewhere: number) => void} tellElsewhere says how much is new on the other phones
 * @property {() => void} focus
 */

/**
 * @typedef {object} PhoneActions
 * @property {(work: Promise<unknown>) => Promise<boolean>} attempt runs an action, shows what went wrong and reads anew
 * @property {() => void} toList
 * @property {(id: number) => void} putAway
 * @property {(id: number) => void} reveal makes sure that another phone is seen
 */

/**
 * @param {number} id
 * @param {PhoneActions} actions
 */
function createParts(id, { toList, putAway }) {
  const heading = h('h2', { id: `owner-${id}`, tabindex: -1 });
  const back = h('button', { type: 'button', class: 'back', onclick: toList }, 'Phones');
  const away = h('button', { type: 'button', class: 'away', onclick: () => putAway(id) });
  away.append('Put away');
  const chat = createChatList(`owner-${id}`);
  const status = h('p', { class: 'answer', role: 'status' });
  const heard = h('p', { class: 'heard', 'aria-live': 'polite' });
  const commands = h('div', { class: 'chips' });
  const controls = h('div', { class: 'composer' });
  const element = h(
    'section',
    { class: 'phone', 'aria-labelledby': `owner-${id}`, hidden: true },
    h('div', { class: 'owner' }, back, heading, away),
    chat.element,
    status,
    heard,
    h('div', { class: 'below-chat' }, commands, controls),
  );
  return { element, heading, back, away, chat, status, heard, commands, controls };
}

/** @typedef {ReturnType<typeof createParts>} Parts */

/**
 * @param {Parts} parts
 * @param {AccountView} account
 * @param {readonly Command[]} known
 * @param {PhoneActions} actions
 */
function drawControls(parts, account, known, { attempt }) {
  const { id, name, opened, blocked, deactivated } = account;
  const own = {
    say: (/** @type {string} */ text) => attempt(api.say(id, text)),
    open: (/** @type {string} */ link) => attempt(api.open(id, link)),
    sendFile: (
      /** @type {File} */ file,
      /** @type {FileKind} */ kind,
      /** @type {string} */ caption,
    ) => attempt(api.sendFile(id, file, kind, caption)),
    setBlocked: (/** @type {boolean} */ isBlocked) => void attempt(api.setBlocked(id, isBlocked)),
  };
  const signature = JSON.stringify([id, name, opened, blocked, deactivated]);
  refresh(parts.controls, signature, () => composer(account, String(id), own));
  const canWrite = opened && !blocked && !deactivated;
  refresh(parts.commands, signature + JSON.stringify(known), () =>
    canWrite ? commandChips(known, own.say) : [],
  );
}

/**
 * @param {Parts} parts
 * @param {AccountView} account
 * @param {Overview} overview
 * @param {readonly ChatMessage[]} messages
 * @param {PhoneActions} phoneActions
 */
function drawChat(parts, account, overview, messages, { attempt, reveal }) {
  const { timeZone, bot, accounts } = overview;
  const { status, heading, away } = parts;
  const { id, name, note } = account;
  refresh(heading, JSON.stringify([name, note]), () => [name, note && h('small', {}, note)]);
  away.setAttribute('aria-label', `Put away: ${name}`);
  /** @param {number} messageId @param {ButtonView} button */
  const tap = (messageId, button) => {
    status.textContent = `${button.text}: waiting for the bot`;
    void attempt(api.tap(id, messageId, button.data ?? ''));
  };
  /** @param {number} phone @param {string} link */
  const open = async (phone, link) => {
    if ((await attempt(api.open(phone, link))) && phone !== id) reveal(phone);
  };
  const links = { botUsername: bot.username, phoneId: id, phones: accounts, open };
  const actions = { links, personName: name, botName: bot.name, timeZone, tap, enlarge };
  const context = JSON.stringify(accounts.map((it) => [it.id, it.name, it.note]));
  const days = messages.map(({ date }) => shortDay(new Date(date), timeZone));
  const entries = messages.map((message, i) => {
    const isNewDay = days[i] !== days[i - 1];
    const earlier = messages.find((it) => it.id === message.replyTo);
    return {
      id: message.id,
      signature: JSON.stringify([isNewDay, context, message]),
      draw: () => messageEntry(message, { isNewDay, earlier }, actions),
    };
  });
  parts.chat.update(entries);
}

/**
 * A phone on the desk: whose it is, the chat, and what the person can do.
 *
 * @param {number} id
 * @param {PhoneActions} actions
 * @returns {Phone}
 */
export function createPhone(id, actions) {
  let updates = 0;
  const parts = createParts(id, actions);
  const tell = createAnswerTeller(parts.status);
  const newsIn = createNews();
  return {
    element: parts.element,
    focus: () => parts.heading.focus(),
    tellElsewhere: (count) => {
      const words = count === 0 ? 'Phones' : `Phones (${count} new)`;
      refresh(parts.back, words, () => [words]);
    },
    update: async (overview) => {
      const account = overview.accounts.find((it) => it.id === id);
      if (account === undefined) return;
      updates += 1;
      const mine = updates;
      const [messages, answers, known] = await Promise.all([
        api.chat(id),
        api.answers(id),
        api.commands(id),
      ]);
      // A later update has overtaken this one.
      if (mine !== updates) return;
      parts.element.hidden = false;
      drawChat(parts, account, overview, messages, actions);
      tell(id, answers);
      const news = newsIn(messages);
      if (news !== undefined) parts.heard.textContent = `${account.name} sees: ${news}`;
      drawControls(parts, account, known, actions);
    },
  };
}
