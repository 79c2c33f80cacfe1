import type { Action } from '../callback/actions.ts';
import { BUTTONS } from '../texts/buttons.ts';
import type { Page } from './pages.ts';
import { type Button, button } from './screen.ts';

/** The row that leads to the pages before and after; no row for a list of one page. */
export function pageRow(
  { page, pages }: Pick<Page<unknown>, 'page' | 'pages'>,
  actionOf: (page: number) => Action,
): Button[][] {
  const row = [
    ...(page > 0 ? [button(BUTTONS.earlierPage, actionOf(page - 1))] : []),
    ...(page < pages - 1 ? [button(BUTTONS.nextPage, actionOf(page + 1))] : []),
  ];
  return row.length > 0 ? [row] : [];
}
