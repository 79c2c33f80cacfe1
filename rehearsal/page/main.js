// @ts-check
/** @import { AccountView, Overview } from '../phone-api/views.ts' */
/** @import { Stop } from './api.js' */
import { api } from './api.js';
import { createClockBar } from './clock-bar.js';
import { byId } from './dom.js';
import { createLogPanel } from './log-panel.js';
import { createPhone } from './phone.js';
import { createPhoneList } from './phone-list.js';

const POLL_MS = 1000;
const FIRST_NEW_ID = 7001;

const trouble = byId('trouble', HTMLElement);
const left = createPhone('left', attempt);
const right = createPhone('right', attempt);
byId('pages', HTMLElement).append(left.element, right.element);
const showClock = createClockBar(byId('clock', HTMLElement), (to) => attempt(api.moveTo(to)));
const logDetails = byId('log', HTMLDetailsElement);
const showLog = createLogPanel(logDetails);
const showPhones = createPhoneList(byId('phones', HTMLElement), {
  show: (id) => {
    if (right.chosen() === id) right.choose(undefined);
    left.choose(id);
    void read(true);
  },
  beside: (id) => {
    if (left.chosen() !== id) right.choose(right.chosen() === id ? undefined : id);
    void read(true);
  },
  add: (name) => attempt(addPhone(name)),
});

/** Messages already seen, by phone. @type {Map<number, number>} */
const seen = new Map();
/** @type {Overview | undefined} */
let latest;
/** @type {readonly Stop[]} */
let stops = [];

/** @param {string} name */
async function addPhone(name) {
  const ids = latest?.accounts.map(({ id }) => id) ?? [];
  const id = Math.max(FIRST_NEW_ID - 1, ...ids) + 1;
  await api.addAccount(id, name);
  left.choose(id);
}

/**
 * Does what a person asked for and shows the result at once, or the reason it was refused.
 *
 * @param {Promise<unknown>} work
 */
async function attempt(work) {
  let isDone = true;
  try {
    await work;
    trouble.hidden = true;
  } catch (error) {
    isDone = false;
    trouble.textContent = error instanceof Error ? error.message : String(error);
    trouble.hidden = false;
  }
  await read(true);
  return isDone;
}

/** @param {AccountView} account */
function unread(account) {
  return Math.max(0, account.received - (seen.get(account.id) ?? 0));
}

/** @param {Overview} overview */
function noteSeen(overview) {
  if (document.hidden) return;
  for (const { id, received } of overview.accounts) {
    if (id === left.chosen() || id === right.chosen()) seen.set(id, received);
  }
}

/** @param {number} id */
function where(id) {
  if (id === left.chosen()) return 'left';
  return id === right.chosen() ? 'right' : '';
}

/** @param {Overview} overview */
async function show(overview) {
  const title = `Rehearsal: ${overview.bot.name}`;
  document.title = title;
  byId('title', HTMLElement).textContent = overview.bot.name;
  if (left.chosen() === undefined) left.choose(overview.accounts[0]?.id);
  stops = await api.stops();
  await Promise.all([left.update(overview), right.update(overview), showLog(overview.timeZone)]);
  noteSeen(overview);
  showPhones(overview.accounts, unread, where);
}

/**
 * Reads what changed. Chats are read again only when the rehearsal says something changed.
 *
 * @param {boolean} isForced
 */
async function read(isForced) {
  const overview = await api.overview().catch(() => undefined);
  document.body.classList.toggle('offline', overview === undefined);
  byId('notice', HTMLElement).dataset.state = overview === undefined ? 'stopped' : 'running';
  if (overview === undefined) return;
  const isNew = overview.revision !== latest?.revision || overview.now !== latest.now;
  latest = overview;
  if (isNew || isForced) await show(overview);
  showClock(new Date(overview.now), overview.timeZone, stops);
}

async function readForever() {
  await read(false).catch(() => {});
  setTimeout(readForever, POLL_MS);
}

logDetails.addEventListener('toggle', () => void showLog(latest?.timeZone));
void readForever();
