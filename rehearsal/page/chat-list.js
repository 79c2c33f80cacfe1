// @ts-check
/** @import { ChatMessage } from '../phone-api/views.ts' */

/**
 * Which control inside an entry has the focus, as a position among its controls; -1 for none.
 *
 * @param {Element} entry
 */
function focusPosition(entry) {
  return [...entry.querySelectorAll('button, select, a')].indexOf(
    /** @type {Element} */ (document.activeElement),
  );
}

/**
 * Gives the focus back after an entry was drawn anew: to the control in the same place, or to the entry.
 *
 * @param {HTMLElement} entry
 * @param {number} position
 */
function restoreFocus(entry, position) {
  const control = entry.querySelectorAll('button, select, a')[position];
  if (control instanceof HTMLElement) control.focus({ preventScroll: true });
  else entry.focus({ preventScroll: true });
}

/**
 * Brings a list of entries up to date, touching only entries that changed, and follows the end of
 * the chat when the reader was at the end or the list is new.
 *
 * @param {HTMLElement} list
 * @param {readonly ChatMessage[]} messages
 * @param {string} context anything besides the message that an entry shows
 * @param {(message: ChatMessage) => HTMLElement} draw
 */
export function updateChat(list, messages, context, draw) {
  const wasAtEnd = list.scrollHeight - list.scrollTop - list.clientHeight < 40;
  const existing = new Map(
    [...list.children].map((child) => [child.getAttribute('data-id'), child]),
  );
  let changed = false;
  const entries = messages.map((message) => {
    const signature = context + JSON.stringify(message);
    const old = existing.get(String(message.id));
    if (old instanceof HTMLElement && old.dataset.signature === signature) return old;
    changed = true;
    const position = old ? focusPosition(old) : -1;
    const entry = draw(message);
    entry.dataset.signature = signature;
    if (old) old.replaceWith(entry);
    if (position >= 0) restoreFocus(entry, position);
    return entry;
  });
  const kept = new Set(entries);
  for (const child of [...list.children])
    if (!kept.has(/** @type {HTMLElement} */ (child))) child.remove();
  for (const entry of entries) if (!entry.isConnected) list.append(entry);
  if (changed && wasAtEnd) list.scrollTop = list.scrollHeight;
}
