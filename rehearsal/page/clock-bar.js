// @ts-check
/** @import { Stop } from './api.js' */
import { h, refresh } from './dom.js';
import { longTime } from './words.js';

const HALF_HOUR = 30 * 60_000;
const DAY = 24 * 3_600_000;

/**
 * The virtual time in words and the buttons that move it.
 *
 * @param {HTMLElement} section
 * @param {(to: Date) => Promise<boolean>} moveTo
 */
export function createClockBar(section, moveTo) {
  let now = new Date(0);
  const time = h('p', { class: 'now' });
  const buttons = h('div', { class: 'stops' });
  section.append(time, buttons);

  /** @param {string} label @param {() => Date} target */
  const mover = (label, target) => {
    /** @param {Event} event */
    const move = async (event) => {
      const button = event.currentTarget;
      section.setAttribute('aria-busy', 'true');
      for (const other of buttons.querySelectorAll('button')) other.disabled = true;
      await moveTo(target());
      section.removeAttribute('aria-busy');
      for (const other of buttons.querySelectorAll('button')) other.disabled = false;
      if (button instanceof HTMLButtonElement && button.isConnected) button.focus();
    };
    return h('button', { type: 'button', onclick: move }, label);
  };

  /**
   * @param {Date} instant
   * @param {string | undefined} timeZone
   * @param {readonly Stop[]} stops
   */
  return (instant, timeZone, stops) => {
    now = instant;
    const words = longTime(instant, timeZone);
    refresh(time, words, () => [h('span', {}, 'It is '), h('strong', {}, words)]);
    const ahead = stops.filter(({ at }) => new Date(at) > instant);
    refresh(buttons, JSON.stringify(ahead), () => [
      ...ahead.map(({ label, at }) => mover(`Go to ${label}`, () => new Date(at))),
      mover('+30 min', () => new Date(now.getTime() + HALF_HOUR)),
      mover('Next day', () => new Date(now.getTime() + DAY)),
    ]);
  };
}
