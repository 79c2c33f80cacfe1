import { addBook, getEvening, type Store } from '../../db/index.ts';
import { aClass, aFamily } from '../support/people.ts';
import { anEvening } from '../support/practice.ts';
import { readTable } from '../support/raw-rows.ts';
import { MONDAY, MORNING } from '../support/term.ts';

/** An evening with two helpers and a workbook, ready to be marked. */
export async function aMarkableEvening(store: Store, zone?: string, on = MONDAY) {
  const classroom = await aClass(store, zone === undefined ? {} : { zone });
  const family = await aFamily(store, classroom, { helpers: 2 });
  const settings = { title: 'Pebble Path', firstPage: 1, lastPage: 40, pagesADay: 2 };
  await addBook(store, classroom.scope, { book: settings, now: MORNING });
  const { scope, view } = await anEvening(store, classroom, family, { on });
  const rows = async (table: string) =>
    (await readTable(store, table)).filter((row) => row.evening_id === view.id);
  return { family, scope, rows, read: () => getEvening(store, scope) };
}
