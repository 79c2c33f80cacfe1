import { type Book, type ChildProgress, storedDay } from '../../../db/index.ts';
import { addDays, atPage, paceOf, schoolDaysIn } from '../../../drills/index.ts';
import { kingfisher, listed } from './kingfisher.ts';

const MONDAY = storedDay('2026-09-14');

/** The class's workbook, 48 pages, two a day. */
export const pebblePath = aBook(1, 'Pebble Path');

/** The one after it. */
export const pebblePath2 = aBook(2, 'Pebble Path 2');

/** A workbook of 48 pages; with `childId` that child's own. */
export function aBook(number: number, title: string, childId: string | null = null): Book {
  const id = `019a0000-0000-7000-8000-00000000b0${String(number).padStart(2, '0')}`;
  return { id, childId, title, firstPage: 1, lastPage: 48, pagesADay: 2 };
}

/** The id of a child by its number, as a button can carry it. */
export function childId(number: number): string {
  return `019a0000-0000-7000-8000-0000000c${String(number).padStart(4, '0')}`;
}

/** Where a child is: on `page` of its first book, at the beginning of the others, with the pages of its evenings so far. */
export function progress(
  number: number,
  nickname: string,
  change: {
    readonly page?: number;
    readonly books?: readonly Book[];
    readonly evenings?: readonly (number | null)[];
  } = {},
): ChildProgress {
  const { page = 14, books = [pebblePath, pebblePath2], evenings = [2, 2, 2, 1, 3, 2] } = change;
  const { weekdays } = kingfisher;
  return {
    child: { ...listed(number, nickname), id: childId(number) },
    queue: books.map((book, at) => atPage(book, at === 0 ? page : null)),
    pace: paceOf(evenings),
    days: schoolDaysIn(MONDAY, addDays(MONDAY, 365), { weekdays, breaks: [] }),
  };
}
