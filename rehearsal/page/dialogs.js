// @ts-check
/** @import { Answer } from '../phone-api/views.ts' */
import { byId } from './dom.js';

/**
 * Shows a picture at its own size.
 *
 * @param {string} address
 * @param {string} description
 */
export function enlarge(address, description) {
  const dialog = byId('picture', HTMLDialogElement);
  const image = dialog.querySelector('img');
  image?.setAttribute('src', address);
  image?.setAttribute('alt', description);
  dialog.showModal();
}

/** @param {string} text */
function showAlert(text) {
  byId('alert-text', HTMLElement).textContent = text;
  const dialog = byId('alert', HTMLDialogElement);
  if (!dialog.open) dialog.showModal();
}

/**
 * Keeps track of which answers to taps were already shown.
 *
 * @param {HTMLElement} status
 */
export function createAnswerTeller(status) {
  /** @type {Map<number, number>} */
  const told = new Map();
  /** @param {number} id @param {readonly Answer[]} answers */
  return (id, answers) => {
    const fresh = answers.slice(told.get(id) ?? answers.length);
    told.set(id, answers.length);
    for (const { text, showAlert: isAlert } of fresh) {
      status.textContent = text;
      if (isAlert && text !== '') showAlert(text);
    }
  };
}
