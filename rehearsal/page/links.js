// @ts-check
/** @import { AccountView } from '../phone-api/views.ts' */
import { h } from './dom.js';

/**
 * @typedef {object} LinkActions
 * @property {string} botUsername
 * @property {number} phoneId the phone the link is shown on
 * @property {readonly AccountView[]} phones
 * @property {(phoneId: number, link: string) => void} open
 */

/**
 * Whether a link starts the bot of this rehearsal.
 *
 * @param {string} url
 * @param {string} botUsername
 */
export function isBotLink(url, botUsername) {
  if (!URL.canParse(url)) return false;
  const { host, pathname } = new URL(url);
  return host === 't.me' && pathname.slice(1).toLowerCase() === botUsername.toLowerCase();
}

/**
 * What was copied off a slip or out of a message, as the rehearsal takes it: of a longer text only the link, which may lack its
 * "https://"; else the code without the gaps it is printed with.
 *
 * @param {string} typed
 */
export function linkOrCode(typed) {
  const link = /(?:https?:\/\/)?(t\.me\/\S+)/i.exec(typed)?.[1];
  return link === undefined ? typed.replace(/\s+/g, '') : `https://${link}`;
}

/**
 * A choice of phone and a button that opens the link on it.
 *
 * @param {string} label
 * @param {string} url
 * @param {LinkActions} actions
 */
export function linkOpener(label, url, actions) {
  const choice = h(
    'select',
    { 'aria-label': `Phone to open the link on` },
    ...actions.phones.map(({ id, name, note }) =>
      h(
        'option',
        { value: id, selected: id === actions.phoneId },
        note ? `${name}, ${note}` : name,
      ),
    ),
  );
  const open = h(
    'button',
    { type: 'button', onclick: () => actions.open(Number(choice.value), url) },
    label,
  );
  return h('span', { class: 'opener' }, open, h('span', { class: 'opener-on' }, ' on '), choice);
}

/**
 * A link to elsewhere. It is shown and not followed, because nothing leaves this computer.
 *
 * @param {string} label
 * @param {string} url
 */
export function outsideLink(label, url) {
  return h(
    'span',
    { class: 'outside' },
    label === url ? url : `${label} (${url})`,
    h('small', {}, ' not opened here'),
  );
}
