// @ts-check
/** @import { AccountView } from '../phone-api/views.ts' */
import { focusPosition, h, refresh, restoreFocus } from './dom.js';

/**
 * @typedef {object} PhoneListActions
 * @property {(id: number) => void} show opens the phone on the left page
 * @property {(id: number) => void} beside opens it on the right page
 * @property {(name: string) => Promise<boolean>} add
 */

/**
 * @param {AccountView} account
 * @param {number} unread
 * @param {string} where
 * @param {PhoneListActions} actions
 */
function row(account, unread, where, actions) {
  const { id, name, note } = account;
  const count = unread > 0 && h('span', { class: 'unread' }, `${unread} new`);
  const label = h('span', { class: 'who' }, h('strong', {}, name), note && h('small', {}, note));
  return h(
    'li',
    {},
    h(
      'button',
      {
        type: 'button',
        class: 'pick',
        'aria-pressed': String(where === 'left'),
        onclick: () => actions.show(id),
      },
      label,
      count,
    ),
    h(
      'button',
      {
        type: 'button',
        class: 'beside',
        'aria-label': `Beside: ${name}`,
        'aria-pressed': String(where === 'right'),
        onclick: () => actions.beside(id),
      },
      'Beside',
    ),
  );
}

/** @param {PhoneListActions} actions */
function newPhone(actions) {
  const input = h('input', { id: 'new-phone', required: true, maxlength: 64, autocomplete: 'off' });
  /** @param {Event} event */
  const submit = async (event) => {
    event.preventDefault();
    if (await actions.add(input.value)) input.value = '';
  };
  return h(
    'form',
    { class: 'line', onsubmit: submit },
    h('label', { for: 'new-phone' }, 'Name'),
    input,
    h('button', {}, 'Add'),
  );
}

/**
 * The list of phones with what is new on each.
 *
 * @param {HTMLElement} nav
 * @param {PhoneListActions} actions
 */
export function createPhoneList(nav, actions) {
  const list = h('ul', {});
  const adding = h('details', {}, h('summary', {}, 'New phone'), newPhone(actions));
  nav.append(h('h2', {}, 'Phones'), list, adding);
  /**
   * @param {readonly AccountView[]} accounts
   * @param {(account: AccountView) => number} unread
   * @param {(id: number) => string} where
   */
  return (accounts, unread, where) => {
    const rows = accounts.map((account) => ({
      account,
      unread: unread(account),
      where: where(account.id),
    }));
    const position = focusPosition(list);
    const shown = rows.map(({ account: { id, name, note }, ...rest }) => ({
      id,
      name,
      note,
      ...rest,
    }));
    refresh(list, JSON.stringify(shown), () =>
      rows.map((it) => row(it.account, it.unread, it.where, actions)),
    );
    if (position >= 0) restoreFocus(list, position);
  };
}
