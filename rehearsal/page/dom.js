// @ts-check

/** @typedef {string | Node | null | undefined | false} Child */

/**
 * Builds an element. Keys that begin with "on" are event listeners; `true` sets an empty attribute,
 * `false` and `undefined` leave it out.
 *
 * @template {keyof HTMLElementTagNameMap} Tag
 * @param {Tag} tag
 * @param {Record<string, string | number | boolean | undefined | ((event: Event) => void)>} attributes
 * @param {...Child} children
 * @returns {HTMLElementTagNameMap[Tag]}
 */
export function h(tag, attributes, ...children) {
  const element = document.createElement(tag);
  for (const [key, value] of Object.entries(attributes)) {
    if (typeof value === 'function') element.addEventListener(key.slice(2), value);
    else if (value === true) element.setAttribute(key, '');
    else if (value !== false && value !== undefined) element.setAttribute(key, String(value));
  }
  for (const child of children) if (child) element.append(child);
  return element;
}

/**
 * The element with an id; throws when the page has none of that kind.
 *
 * @template {HTMLElement} Kind
 * @param {string} id
 * @param {new () => Kind} kind
 * @returns {Kind}
 */
export function byId(id, kind) {
  const element = document.getElementById(id);
  if (!(element instanceof kind)) throw new Error(`the page has no ${kind.name} #${id}`);
  return element;
}

/**
 * Replaces the children only when `signature` differs from last time, so focus and scroll stay put. A control that had the focus
 * and has a `data-key` gives it to the new control with the same key.
 *
 * @param {HTMLElement} parent
 * @param {string} signature
 * @param {() => Child[]} build
 */
export function refresh(parent, signature, build) {
  if (parent.dataset.signature === signature) return;
  const focused = document.activeElement;
  const key = parent.contains(focused) && focused?.getAttribute('data-key');
  parent.dataset.signature = signature;
  const children = build().filter(
    (child) => child !== null && child !== undefined && child !== false,
  );
  parent.replaceChildren(...children);
  if (!key) return;
  const again = [...parent.querySelectorAll('[data-key]')];
  const twin = again.find((control) => control.getAttribute('data-key') === key) ?? again[0];
  if (twin instanceof HTMLElement) twin.focus({ preventScroll: true });
}

/**
 * Makes these elements the children, in this order. One that is in its place already is not touched: an element that is moved
 * loses its focus and where it was scrolled to.
 *
 * @param {HTMLElement} parent
 * @param {readonly HTMLElement[]} wanted
 */
export function arrange(parent, wanted) {
  /** @type {Set<Element>} */
  const kept = new Set(wanted);
  for (const child of [...parent.children]) if (!kept.has(child)) child.remove();
  for (const [place, element] of wanted.entries()) {
    const there = parent.children[place];
    if (there !== element) parent.insertBefore(element, there ?? null);
  }
}

const CONTROLS = 'button, select, a, video, audio, summary';

/**
 * Which control inside an element has the focus, as a position among its controls; -1 for none.
 *
 * @param {Element} root
 */
export function focusPosition(root) {
  return [...root.querySelectorAll(CONTROLS)].indexOf(
    /** @type {Element} indexOf accepts no null, and finds none */ (document.activeElement),
  );
}

/**
 * Gives the focus back after an element was drawn anew: to the control in the same place, or else
 * to the element itself.
 *
 * @param {HTMLElement} root
 * @param {number} position
 */
export function restoreFocus(root, position) {
  const control = root.querySelectorAll(CONTROLS)[position];
  if (control instanceof HTMLElement) control.focus({ preventScroll: true });
  else root.focus({ preventScroll: true });
}
