// @ts-check
import { focusPosition, h, restoreFocus } from './dom.js';
import { keepPlayer } from './keep-player.js';

/**
 * @typedef {object} Entry
 * @property {number} id
 * @property {string} signature everything the entry shows; another one means it is drawn anew
 * @property {() => HTMLElement} draw
 */

/**
 * @typedef {object} ChatList
 * @property {HTMLElement} element
 * @property {(entries: readonly Entry[]) => void} update
 */

/** How near to the end of the list counts as reading the end, in pixels. */
const NEAR_END = 40;

/**
 * @param {Element | undefined} old
 * @param {Entry} entry
 */
function drawn(old, { id, signature, draw }) {
  if (old instanceof HTMLElement && old.dataset.signature === signature) return old;
  const position = old ? focusPosition(old) : -1;
  const element = draw();
  element.dataset.id = String(id);
  element.dataset.signature = signature;
  if (old) keepPlayer(old, element);
  if (position >= 0) restoreFocus(element, position);
  return element;
}

/**
 * Brings the list up to date, touching only entries that changed. Returns whether some are new.
 *
 * @param {HTMLElement} list
 * @param {readonly Entry[]} entries
 */
function redraw(list, entries) {
  const existing = new Map(
    [...list.children].map((child) => [child.getAttribute('data-id'), child]),
  );
  const after = entries.map((entry) => drawn(existing.get(String(entry.id)), entry));
  /** @type {Set<Element>} */
  const kept = new Set(after);
  for (const child of [...list.children]) if (!kept.has(child)) child.remove();
  const added = after.filter((element) => !element.isConnected);
  list.append(...added);
  return added.length > 0;
}

/**
 * A list of entries that stays at its end when the reader is there, and else says when something new
 * came below.
 *
 * @param {string} labelledBy id of the heading that names the list
 * @returns {ChatList}
 */
export function createChatList(labelledBy) {
  let isAtEnd = true;
  const list = h('ol', { class: 'chat', tabindex: 0, 'aria-labelledby': labelledBy });
  const toEnd = () => {
    list.scrollTop = list.scrollHeight;
  };
  const goDown = () => {
    toEnd();
    list.focus({ preventScroll: true });
  };
  const attributes = { type: 'button', class: 'strong below', hidden: true, onclick: goDown };
  const below = h('button', attributes, 'New message below');
  let height = 0;
  list.addEventListener('scroll', () => {
    // Not the reader: the list shrank, and is brought to its end again below.
    if (isAtEnd && list.clientHeight !== height) return;
    isAtEnd = list.scrollHeight - list.scrollTop - list.clientHeight < NEAR_END;
    if (isAtEnd) below.hidden = true;
  });
  // What stands below the list may grow and shrink it.
  new ResizeObserver(() => {
    height = list.clientHeight;
    if (isAtEnd) toEnd();
  }).observe(list);
  return {
    element: h('div', { class: 'chat-frame' }, list, below),
    update: (entries) => {
      const isLonger = redraw(list, entries);
      if (isAtEnd) toEnd();
      else if (isLonger) below.hidden = false;
    },
  };
}
