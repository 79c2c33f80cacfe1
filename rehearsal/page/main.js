// @ts-check
/** @import { AccountView, Overview } from '../phone-api/views.ts' */
/** @import { Stop } from './api.js' */
import { phonesInAddress, putInAddress } from './address.js';
import { api } from './api.js';
import { createClockBar } from './clock-bar.js';
import { createDesk, withBeside } from './desk.js';
import { byId } from './dom.js';
import { createFaultPanel } from './fault-panel.js';
import { createLogPanel } from './log-panel.js';
import { createPhoneList } from './phone-list.js';
import { createRhythm } from './rhythm.js';

const FIRST_NEW_ID = 7001;
/** Where the style shows either the list or one phone. */
const narrow = matchMedia('(max-width: 900px)');

const trouble = byId('trouble', HTMLElement);
const desk = createDesk(byId('pages', HTMLElement), {
  attempt,
  toList: () => putInAddress([]),
  putAway: (id) => putInAddress(shown().filter((it) => it !== id)),
  reveal,
});
const showClock = createClockBar(byId('clock', HTMLElement), (to) => attempt(api.moveTo(to)));
const phones = createPhoneList(byId('phones', HTMLElement), {
  show: (id) => putInAddress([id]),
  beside: (id) =>
    putInAddress(
      shown().includes(id) ? shown().filter((it) => it !== id) : withBeside(shown(), id),
    ),
  add: (name) => attempt(addPhone(name)),
});
const logDetails = byId('log', HTMLDetailsElement);
const log = createLogPanel(logDetails, byId('log-body', HTMLElement));
const showFaults = createFaultPanel(byId('faults-body', HTMLElement), attempt);
const rhythm = createRhythm(() => read(false));

/** Messages already seen, by phone. @type {Map<number, number>} */
const seen = new Map();
/** @type {Overview | undefined} */
let latest;
/** @type {readonly Stop[]} */
let stops = [];
/** How often was asked what changed, and which answer is the newest. */
const reads = { asked: 0, answered: 0 };

/** Ids of the phones on the desk: those of the address, or else the first there is. */
function shown() {
  const known = latest?.accounts.map(({ id }) => id) ?? [];
  const wanted = phonesInAddress().filter((id) => known.includes(id));
  return wanted.length > 0 ? wanted : known.slice(0, 1);
}

/** @param {number} id */
function reveal(id) {
  if (!shown().includes(id)) putInAddress(narrow.matches ? [id] : withBeside(shown(), id));
  else if (narrow.matches) putInAddress([id]);
}

/** @param {string} name */
async function addPhone(name) {
  const ids = latest?.accounts.map(({ id }) => id) ?? [];
  const id = Math.max(FIRST_NEW_ID - 1, ...ids) + 1;
  await api.addAccount(id, name);
  putInAddress([id]);
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
  rhythm.hurry();
  return isDone;
}

/** @param {AccountView} account */
function unread(account) {
  return Math.max(0, account.received - (seen.get(account.id) ?? 0));
}

/** @param {Overview} overview */
function noteSeen({ accounts }) {
  if (document.hidden) return;
  const visible = desk.visible();
  for (const { id, received } of accounts) if (visible.includes(id)) seen.set(id, received);
}

/** @param {Overview} overview */
async function show(overview) {
  const { bot, accounts, timeZone } = overview;
  const ids = shown();
  const isChosen = phonesInAddress().some((id) => ids.includes(id));
  document.body.dataset.view = isChosen ? 'phone' : 'list';
  const names = accounts.filter(({ id }) => isChosen && ids.includes(id)).map(({ name }) => name);
  document.title = ['Rehearsal', bot.name, ...names].join(': ');
  byId('title', HTMLElement).textContent = bot.name;
  desk.lay(ids);
  stops = await api.stops();
  await Promise.all([desk.update(overview), log.update(timeZone, accounts)]);
  noteSeen(overview);
  desk.tellElsewhere(accounts.reduce((sum, account) => sum + unread(account), 0));
  const open = isChosen || !narrow.matches ? ids : [];
  phones.update(accounts, unread, (id) =>
    id === open[0] ? 'first' : open.includes(id) ? 'beside' : 'away',
  );
}

/**
 * Reads what changed. Chats are read again only when the rehearsal says something changed.
 *
 * @param {boolean} isForced
 */
async function read(isForced) {
  reads.asked += 1;
  const mine = reads.asked;
  const overview = await api.overview().catch(() => undefined);
  if (mine < reads.answered) return;
  reads.answered = mine;
  byId('notice', HTMLElement).dataset.state = overview === undefined ? 'stopped' : 'running';
  if (overview === undefined) return;
  const isNew = overview.revision !== latest?.revision;
  const hasStopPassed = stops.some(({ at }) => at <= overview.now);
  latest = overview;
  if (isNew || isForced || hasStopPassed) await show(overview);
  showFaults(overview);
  showClock({ now: new Date(overview.now), timeZone: overview.timeZone, stops });
}

/**
 * On a narrow screen the list and the phone take each other's place, so the focus goes along, unless the person has already
 * put it somewhere that can be seen.
 */
async function follow() {
  const before = desk.visible()[0];
  await read(true);
  if (!narrow.matches) return;
  const focused = document.activeElement;
  if (focused && focused !== document.body && focused.checkVisibility()) return;
  if (document.body.dataset.view === 'phone') desk.focus(shown()[0]);
  else phones.focus(before);
  scrollTo(0, 0);
}

addEventListener('hashchange', () => void follow());
const showLog = () => void (latest && log.update(latest.timeZone, latest.accounts));
logDetails.addEventListener('toggle', showLog);
log.onlyFailed.addEventListener('change', showLog);
byId('skip', HTMLElement).addEventListener('click', () => desk.focus(shown()[0]));
rhythm.start();
