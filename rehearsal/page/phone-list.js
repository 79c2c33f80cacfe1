// @ts-check
/** @import { AccountView } from '../phone-api/views.ts' */
import { h, refresh } from './dom.js';

/**
 * @typedef {object} PhoneListActions
 * @property {(id: number) => void} show shows this phone alone
 * @property {(id: number) => void} beside shows it beside the others, or takes it away again
 * @property {(name: string) => Promise<boolean>} add
 */

/** @typedef {'first' | 'beside' | 'away'} Place */

/** @param {AccountView} account */
function stateOf({ opened, blocked, deactivated }) {
  if (deactivated) return 'account closed';
  if (blocked) return 'has blocked the bot';
  return opened ? undefined : 'chat not opened yet';
}

/**
 * @param {AccountView} account
 * @param {number} unread
 * @param {Place} place
 * @param {PhoneListActions} actions
 */
function row(account, unread, place, actions) {
  const { id, name, note } = account;
  const below = [note, stateOf(account)].filter(Boolean).join(', ');
  const pick = h(
    'button',
    {
      type: 'button',
      class: 'pick',
      'data-key': `show ${id}`,
      'aria-pressed': String(place === 'first'),
      onclick: () => actions.show(id),
    },
    h('strong', {}, name),
    ' ',
    below !== '' && h('small', {}, below, ' '),
    unread > 0 && h('span', { class: 'unread' }, `${unread} new`),
  );
  const beside = h(
    'button',
    {
      type: 'button',
      class: 'beside',
      'data-key': `beside ${id}`,
      'aria-label': `Beside: ${name}`,
      'aria-pressed': String(place === 'beside'),
      onclick: () => actions.beside(id),
    },
    'Beside',
  );
  return h('li', {}, pick, place !== 'first' && beside);
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
  return {
    /**
     * @param {readonly AccountView[]} accounts
     * @param {(account: AccountView) => number} unread
     * @param {(id: number) => Place} place
     */
    update: (accounts, unread, place) => {
      const rows = accounts.map((account) => {
        // The count of messages is not shown, so a new one alone draws nothing anew.
        const shown = { ...account, received: 0 };
        return { account: shown, unread: unread(account), place: place(account.id) };
      });
      refresh(list, JSON.stringify(rows), () =>
        rows.map((it) => row(it.account, it.unread, it.place, actions)),
      );
    },
    /** @param {number | undefined} id */
    focus: (id) => {
      const pick = list.querySelector(`[data-key="show ${id}"]`) ?? list.querySelector('.pick');
      if (pick instanceof HTMLElement) pick.focus();
    },
  };
}
