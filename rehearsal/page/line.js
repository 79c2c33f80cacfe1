// @ts-check
import { h } from './dom.js';

/**
 * A labelled field to fill in and send. Keeps what was typed when sending was refused. With `rows` it takes several lines, as
 * a pasted list needs: Enter sends, Shift and Enter begin a new line; its label stands in it until something is typed.
 *
 * @param {{ label: string, button: string, id: string, rows?: number }} words
 * @param {(value: string) => Promise<boolean>} send
 */
export function line({ label, button, id, rows }, send) {
  const field = { id, autocomplete: 'off', required: true, placeholder: rows && label };
  const input = rows ? h('textarea', { ...field, rows }) : h('input', field);
  /** @param {Event} event */
  const submit = async (event) => {
    event.preventDefault();
    if (await send(input.value)) input.value = '';
  };
  /** @param {Event} event */
  const sendOnEnter = (event) => {
    if (!(event instanceof KeyboardEvent) || event.key !== 'Enter') return;
    if (event.shiftKey || event.isComposing) return;
    event.preventDefault();
    if (input.value.trim() !== '') void submit(event);
  };
  return h(
    'form',
    { class: 'line', onsubmit: submit, ...(rows ? { onkeydown: sendOnEnter } : {}) },
    h('label', { for: id, class: rows ? 'heard' : undefined }, label),
    input,
    h('button', {}, button),
  );
}
