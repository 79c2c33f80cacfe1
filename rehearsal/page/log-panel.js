// @ts-check
/** @import { AccountView } from '../phone-api/views.ts' */
/** @import { LoggedCall } from '../call-log.ts' */
import { api } from './api.js';
import { arrange, h } from './dom.js';
import { shortDay, shortTime } from './words.js';

const SHOWN = 200;
/** Parameters longer than this are folded. */
const SHORT = 160;
const TITLES = ['Time', 'Method', 'Answer', 'Phone', 'Took', 'Sent'];

/** @param {LoggedCall} call */
function answerOf({ status, description }) {
  const code = status === 0 ? 'cut off' : String(status);
  return description === undefined ? code : `${code}: ${description}`;
}

/** @param {Record<string, unknown>} params */
function sent(params) {
  const text = JSON.stringify(params);
  if (text.length <= SHORT) return text;
  const whole = h('pre', {}, JSON.stringify(params, null, 2));
  return h('details', {}, h('summary', {}, `${text.slice(0, SHORT)}…`), whole);
}

/**
 * @param {LoggedCall} call
 * @param {(id: number) => string} nameOf
 * @param {string | undefined} timeZone
 */
function row(call, nameOf, timeZone) {
  const at = new Date(call.at);
  const cells = [
    `${shortDay(at, timeZone)}, ${shortTime(at, timeZone)}`,
    call.method,
    answerOf(call),
    call.chatId === undefined ? '' : nameOf(call.chatId),
    `${Math.round(call.ms)} ms`,
  ];
  return h(
    'tr',
    { class: call.status === 200 ? 'fine' : 'failed' },
    ...cells.map((cell) => h('td', {}, cell)),
    h('td', { class: 'params' }, sent(call.params)),
  );
}

/**
 * The bot's calls with how long they took, newest first; read only while the panel is open. Rows that stay are not drawn anew,
 * so that what was unfolded or marked in them stays so.
 *
 * @param {HTMLDetailsElement} details
 * @param {HTMLElement} body
 */
export function createLogPanel(details, body) {
  const rows = h('tbody', {});
  const onlyFailed = h('input', { type: 'checkbox', id: 'only-failed' });
  const titles = h('tr', {}, ...TITLES.map((title) => h('th', { scope: 'col' }, title)));
  const region = { class: 'scroll', tabindex: 0, role: 'region', 'aria-label': 'Calls of the bot' };
  body.append(
    h('p', { class: 'check' }, onlyFailed, h('label', { for: 'only-failed' }, 'Only what failed')),
    h('div', region, h('table', {}, h('thead', {}, titles), rows)),
  );
  /** @type {Map<string, HTMLElement>} */
  let drawn = new Map();
  /** @param {string | undefined} timeZone @param {readonly AccountView[]} accounts */
  const update = async (timeZone, accounts) => {
    if (!details.open) return;
    /** @param {number} id */
    const nameOf = (id) => accounts.find((it) => it.id === id)?.name ?? String(id);
    const calls = await api.log();
    const wanted = calls.filter(({ status }) => !onlyFailed.checked || status !== 200);
    /** @type {Map<string, HTMLElement>} */
    const kept = new Map();
    for (const call of wanted.slice(-SHOWN).reverse()) {
      const text = JSON.stringify(call);
      const key = kept.has(text) ? `${text} ${kept.size}` : text;
      kept.set(key, drawn.get(key) ?? row(call, nameOf, timeZone));
    }
    drawn = kept;
    arrange(rows, [...kept.values()]);
  };
  return { update, onlyFailed };
}
