// @ts-check
/** @import { LoggedCall } from '../call-log.ts' */
import { api } from './api.js';
import { h, refresh } from './dom.js';
import { shortTime } from './words.js';

const SHOWN = 200;

/**
 * @param {LoggedCall} call
 * @param {string | undefined} timeZone
 */
function row(call, timeZone) {
  const outcome = call.status === 0 ? 'cut off' : String(call.status);
  const details = call.description ?? JSON.stringify(call.params);
  return h(
    'tr',
    { class: call.status === 200 ? 'fine' : 'failed' },
    h('td', {}, shortTime(new Date(call.at), timeZone)),
    h('td', {}, call.method),
    h('td', {}, outcome),
    h('td', {}, call.chatId === undefined ? '' : String(call.chatId)),
    h('td', {}, `${Math.round(call.ms)} ms`),
    h('td', { class: 'params' }, details),
  );
}

/**
 * The bot's calls, newest first; read only while the panel is open.
 *
 * @param {HTMLDetailsElement} details
 */
export function createLogPanel(details) {
  const body = details.querySelector('.log-body');
  /** @param {string | undefined} timeZone */
  const update = async (timeZone) => {
    if (!details.open || !(body instanceof HTMLElement)) return;
    const calls = await api.log();
    const last = calls.slice(-SHOWN).reverse();
    const titles = ['Time', 'Method', 'Answer', 'Phone', 'Took', 'Sent'];
    refresh(body, JSON.stringify([calls.length, last[0]]), () => [
      h(
        'table',
        {},
        h('thead', {}, h('tr', {}, ...titles.map((title) => h('th', { scope: 'col' }, title)))),
        h('tbody', {}, ...last.map((call) => row(call, timeZone))),
      ),
    ]);
  };
  return update;
}
