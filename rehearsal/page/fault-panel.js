// @ts-check
/** @import { Fault } from '../faults.ts' */
/** @import { Overview } from '../phone-api/views.ts' */
import { api } from './api.js';
import { h, refresh } from './dom.js';

/** What can go wrong, in words. @type {readonly [Fault['mode'], string][]} */
const MODES = [
  ['drop_before', 'the line is cut before the call is applied'],
  ['apply_then_drop', 'the call is applied, then the line is cut'],
  ['apply_then_hang', 'the call is applied and never answered'],
  ['slow', 'the call is applied, the answer comes ten seconds late'],
  ['http_502', 'a 502 page instead of an answer'],
  ['error', 'an error 500, nothing applied'],
  ['duplicate_updates', 'what a phone sends reaches the bot twice'],
  ['reorder_updates', 'what a phone sends reaches the bot after what comes next'],
];
/** These strike what phones send, not the bot's calls. @type {readonly Fault['mode'][]} */
const OF_PHONES = ['duplicate_updates', 'reorder_updates'];

/** Methods to choose from. */
const METHODS = [
  'getUpdates',
  'sendMessage',
  'sendPhoto',
  'sendVideo',
  'sendDocument',
  'sendVoice',
  'editMessageText',
  'editMessageCaption',
  'editMessageMedia',
  'deleteMessage',
  'answerCallbackQuery',
];

/** @param {Fault} fault */
function inWords({ method, mode, count }) {
  const thing = OF_PHONES.includes(mode) ? 'update' : method === '*' ? 'call' : `${method} call`;
  const what = MODES.find(([value]) => value === mode)?.[1] ?? mode;
  return `The next ${count === 1 ? thing : `${count} ${thing}s`}: ${what}.`;
}

/** @param {string} id @param {readonly (readonly [string, string])[]} options */
function choice(id, options) {
  return h('select', { id }, ...options.map(([value, words]) => h('option', { value }, words)));
}

/** @param {(fault: Fault) => void} setFault */
function faultForm(setFault) {
  const method = choice('fault-method', [
    ['*', 'any call, also one for updates'],
    ...METHODS.map((name) => /** @type {const} */ ([name, name])),
  ]);
  const mode = choice('fault-mode', MODES);
  const count = h('input', { id: 'fault-count', type: 'number', min: 1, max: 1000, value: 1 });
  mode.addEventListener('change', () => {
    method.disabled = OF_PHONES.some((it) => it === mode.value);
  });
  /** @param {Event} event */
  const set = (event) => {
    event.preventDefault();
    const [way] = MODES.find(([value]) => value === mode.value) ?? ['drop_before'];
    setFault({ method: method.value, mode: way, count: Number(count.value) });
  };
  return h(
    'form',
    { class: 'fields', onsubmit: set },
    h('label', { for: 'fault-mode' }, 'What goes wrong'),
    mode,
    h('label', { for: 'fault-method' }, 'With which calls of the bot'),
    method,
    h('label', { for: 'fault-count' }, 'How many times'),
    count,
    h('button', {}, 'Let it go wrong'),
  );
}

/**
 * A form that makes the next things go wrong, what is still to go wrong, and the switch for the service's rate limits.
 *
 * @param {HTMLElement} body
 * @param {(work: Promise<unknown>) => Promise<boolean>} attempt
 */
export function createFaultPanel(body, attempt) {
  const waiting = h('ul', { class: 'waiting' });
  const limits = h('input', { type: 'checkbox', id: 'limits' });
  let isSetting = false;
  limits.addEventListener('change', async () => {
    isSetting = true;
    await attempt(api.setLimits(limits.checked));
    isSetting = false;
  });
  const clear = () => void attempt(api.clearFaults());
  body.append(
    faultForm((fault) => void attempt(api.setFault(fault))),
    h('div', { role: 'status' }, waiting),
    h('button', { type: 'button', onclick: clear }, 'Let all go well'),
    h(
      'p',
      { class: 'check' },
      limits,
      h('label', { for: 'limits' }, 'Refuse calls that come too fast, as the service does'),
    ),
    h('p', {}, 'To block the bot on a phone, open “Join or block” under its chat.'),
  );
  /** @param {Overview} overview */
  return ({ faults, limited }) => {
    // While the switch is on its way, what was read before must not turn it back.
    if (!isSetting) limits.checked = limited;
    refresh(waiting, JSON.stringify(faults), () =>
      faults.length === 0
        ? [h('li', {}, 'Nothing is set to go wrong.')]
        : faults.map((fault) => h('li', {}, inWords(fault))),
    );
  };
}
