// @ts-check
import { focusPosition, restoreFocus } from './dom.js';

/**
 * @typedef {object} Entry
 * @property {number} id
 * @property {string} signature everything the entry shows; another one means it is drawn anew
 * @property {() => HTMLElement} draw
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
  old?.replaceWith(element);
  if (position >= 0) restoreFocus(element, position);
  return element;
}

/**
 * Notes whether the reader is at the end of the list, so that it stays there when it grows or its
 * width changes.
 *
 * @param {HTMLElement} list
 */
export function followEnd(list) {
  list.addEventListener('scroll', () => {
    const below = list.scrollHeight - list.scrollTop - list.clientHeight;
    list.dataset.following = below < NEAR_END ? 'yes' : 'no';
  });
}

/**
 * Empties the list for another phone, to be read from its end.
 *
 * @param {HTMLElement} list
 */
export function clearChat(list) {
  list.replaceChildren();
  list.dataset.following = 'yes';
}

/**
 * Brings a list of entries up to date, touching only entries that changed, and stays at the end
 * when the reader is there.
 *
 * @param {HTMLElement} list
 * @param {readonly Entry[]} entries
 */
export function updateChat(list, entries) {
  const existing = new Map(
    [...list.children].map((child) => [child.getAttribute('data-id'), child]),
  );
  const after = entries.map((entry) => drawn(existing.get(String(entry.id)), entry));
  /** @type {Set<Element>} */
  const kept = new Set(after);
  for (const child of [...list.children]) if (!kept.has(child)) child.remove();
  for (const element of after) if (!element.isConnected) list.append(element);
  if (list.dataset.following !== 'no') list.scrollTop = list.scrollHeight;
}
