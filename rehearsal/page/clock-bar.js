// @ts-check
/** @import { Stop } from './api.js' */
import { h, refresh } from './dom.js';
import { longTime, shortDay, shortTime } from './words.js';

const HALF_HOUR = 30 * 60_000;
const DAY = 24 * 3_600_000;

/**
 * @typedef {object} ClockState
 * @property {Date} now
 * @property {string | undefined} timeZone
 * @property {readonly Stop[]} stops
 */

/**
 * Goes from stop to stop until the week has ended, so that the chats are seen growing. `state` is read anew after each step.
 *
 * @param {() => ClockState} state
 * @param {(to: Date) => Promise<boolean>} moveTo
 * @param {() => boolean} isHalted
 */
async function runWeek(state, moveTo, isHalted) {
  const end = new Date(weekEnd(state())?.at ?? 0);
  while (!isHalted()) {
    const { now, stops } = state();
    const ahead = stops.map(({ at }) => new Date(at)).filter((at) => at > now);
    const [next] = ahead.sort((a, b) => a.getTime() - b.getTime());
    if (next === undefined || next > end || !(await moveTo(next))) return;
  }
}

/** @param {ClockState} state */
function weekEnd({ now, stops }) {
  return stops.find(({ at, endsWeek }) => endsWeek && new Date(at) > now);
}

/** @param {string} day @param {string} words */
function when(day, words) {
  return h('small', {}, ` ${day}, ${words}`);
}

/**
 * The virtual time in words and the buttons that move it. Each button says to which day and time it goes, in the page's own time
 * zone, as the time beside it is told.
 *
 * @param {HTMLElement} section
 * @param {(to: Date) => Promise<boolean>} moveTo
 * @returns {(state: ClockState) => void}
 */
export function createClockBar(section, moveTo) {
  /** @type {ClockState} */
  let state = { now: new Date(0), timeZone: undefined, stops: [] };
  let isBusy = false;
  let isHalted = false;
  const time = h('p', { class: 'now' });
  const progress = h('p', { class: 'progress heard', role: 'status' });
  const buttons = h('div', { class: 'stops' });
  const halt = h('button', { type: 'button', hidden: true, onclick: () => (isHalted = true) });
  halt.append('Stop here');
  const moves = h('details', { class: 'moves' }, h('summary', {}, 'Move the clock'), buttons, halt);
  section.append(time, progress, moves);
  keepOpenWhenWide(moves);

  /** @param {() => Promise<unknown>} work @param {boolean} canHalt */
  const busy = async (work, canHalt) => {
    // The buttons stay enabled, or the one that was pressed would lose the focus.
    if (isBusy) return;
    isBusy = true;
    isHalted = false;
    progress.textContent = 'The clock is moving.';
    progress.classList.remove('heard');
    section.setAttribute('aria-busy', 'true');
    halt.hidden = !canHalt;
    await work();
    halt.hidden = true;
    section.removeAttribute('aria-busy');
    // The time stands beside it; this is for people who hear the page.
    progress.classList.add('heard');
    progress.textContent = `Moved to ${longTime(state.now, state.timeZone)}.`;
    isBusy = false;
  };

  /** @param {string} label @param {() => Promise<unknown>} work @param {Node} [small] */
  const button = (label, work, small) => {
    const onclick = () => void busy(work, label === RUN);
    return h('button', { type: 'button', 'data-key': label, onclick }, label, small);
  };

  return (latest) => {
    state = latest;
    const { now, timeZone, stops } = state;
    const words = longTime(now, timeZone);
    refresh(time, words, () => [h('span', {}, 'It is '), h('strong', {}, words)]);
    const ahead = stops.filter(({ at }) => new Date(at) > now);
    refresh(buttons, JSON.stringify([ahead, timeZone]), () => [
      ...ahead.map(({ label, at }) => {
        const instant = new Date(at);
        const small = when(shortDay(instant, timeZone), shortTime(instant, timeZone));
        return button(`Go to ${label}`, () => moveTo(instant), small);
      }),
      weekEnd(latest) !== undefined &&
        button(RUN, () =>
          runWeek(
            () => state,
            moveTo,
            () => isHalted,
          ),
        ),
      button('+30 min', () => moveTo(new Date(state.now.getTime() + HALF_HOUR))),
      button('+1 day', () => moveTo(new Date(state.now.getTime() + DAY))),
    ]);
  };
}

const RUN = 'Run the week';

/** @param {HTMLDetailsElement} details */
function keepOpenWhenWide(details) {
  const wide = matchMedia('(min-width: 901px)');
  const follow = () => {
    details.open = wide.matches;
  };
  wide.addEventListener('change', follow);
  follow();
}
