// @ts-check
/** @import { Overview } from '../phone-api/views.ts' */
/** @import { Phone, PhoneActions } from './phone.js' */
import { arrange } from './dom.js';
import { createPhone } from './phone.js';

/** More than these are not looked at together. */
const MOST = 4;

/**
 * The phones lying side by side. On a narrow screen the style shows the first one only.
 *
 * @param {HTMLElement} element
 * @param {PhoneActions} actions
 */
export function createDesk(element, actions) {
  /** @type {Map<number, Phone>} */
  const phones = new Map();

  /** @param {readonly number[]} ids */
  const lay = (ids) => {
    const wanted = ids.slice(0, MOST);
    for (const id of phones.keys()) if (!wanted.includes(id)) phones.delete(id);
    const elements = wanted.map((id) => {
      const phone = phones.get(id) ?? createPhone(id, actions);
      phones.set(id, phone);
      return phone.element;
    });
    arrange(element, elements);
    element.dataset.count = String(wanted.length);
  };

  return {
    lay,
    /** Ids of the phones that can be seen now. */
    visible: () => [...phones.keys()].filter((id) => phones.get(id)?.element.checkVisibility()),
    /** @param {number | undefined} id */
    focus: (id) => (id === undefined ? undefined : phones.get(id)?.focus()),
    /** @param {number} elsewhere */
    tellElsewhere: (elsewhere) => {
      for (const phone of phones.values()) phone.tellElsewhere(elsewhere);
    },
    /** @param {Overview} overview */
    update: (overview) => Promise.all([...phones.values()].map((phone) => phone.update(overview))),
  };
}

/**
 * The phones shown after one more was put beside them; the last one makes room when there are too many.
 *
 * @param {readonly number[]} ids
 * @param {number} id
 */
export function withBeside(ids, id) {
  return [...ids.filter((it) => it !== id).slice(0, MOST - 1), id];
}
