import { expect, it } from 'vitest';
import {
  addBook,
  BOOK_LIMITS,
  type BookSettings,
  changeBook,
  currentBook,
  getBook,
  listBooks,
  moveBook,
  putAwayBook,
  type Store,
  setPage,
  undoAct,
} from '../../db/index.ts';
import { codeOf, refusalOf } from '../support/code-of.ts';
import { aChild, aClass, aFamily, type Classroom } from '../support/people.ts';
import { anEvening } from '../support/practice.ts';
import { dumpAll } from '../support/raw-rows.ts';
import { MORNING } from '../support/term.ts';

const BOOK: BookSettings = { title: 'Pebble Path', firstPage: 3, lastPage: 9, pagesADay: 2 };
const NEXT: BookSettings = { ...BOOK, title: 'Pebble Path 2' };
const now = MORNING;

/** Workbooks in the line of a class, or of a child. */
export function booksSuite(opened: () => Store) {
  const means = meansOf(opened);
  limits(opened, means);
  inLine(opened, means);
  takenBack(opened, means);
  current(opened, means);
}

type Means = ReturnType<typeof meansOf>;

function meansOf(opened: () => Store) {
  const add = ({ scope }: Classroom, book: BookSettings = BOOK, childId: string | null = null) =>
    addBook(opened(), scope, { book, childId, now });
  const titles = async ({ scope }: Classroom, childId: string | null = null) =>
    (await listBooks(opened(), scope, childId)).map(({ title }) => title);
  const undo = ({ scope }: Classroom, actId: string) =>
    undoAct(opened(), { teacherId: scope.teacherId, actId, now });
  return { add, titles, undo };
}

function limits(opened: () => Store, { add, titles }: Means) {
  it.each<[string, Partial<BookSettings>]>([
    ['book title', { title: ' ' }],
    ['book title', { title: 'P'.repeat(BOOK_LIMITS.titleLength + 1) }],
    ['page', { firstPage: 0 }],
    ['page', { lastPage: BOOK_LIMITS.page + 1 }],
    ['page', { firstPage: 1.5 }],
    ['page order', { firstPage: 10 }],
    ['pages a day', { pagesADay: 0 }],
    ['pages a day', { pagesADay: BOOK_LIMITS.pagesADay + 1 }],
  ])('with a wrong %s is refused, new or changed', async (what, wrong) => {
    const classroom = await aClass(opened());
    expect(await refusalOf(add(classroom, { ...BOOK, ...wrong }))).toBe(`invalid: ${what}`);
    expect(await titles(classroom)).toEqual([]);
    const { id: bookId } = await add(classroom);
    const changing = changeBook(opened(), classroom.scope, { bookId, changes: wrong, now });
    expect(await refusalOf(changing)).toBe(`invalid: ${what}`);
    expect(await getBook(opened(), classroom.scope, bookId)).toMatchObject(BOOK);
  });
}

function inLine(opened: () => Store, { add, titles }: Means) {
  it('joins the end of its line, the class’s or a child’s own, and is moved within it', async () => {
    const classroom = await aClass(opened());
    const { id: childId } = await aChild(opened(), classroom);
    const first = await add(classroom);
    await add(classroom, NEXT);
    await add(classroom, { ...NEXT, title: 'Pebble Path 3' });
    await add(classroom, BOOK, childId);
    const to = (place: number) =>
      moveBook(opened(), classroom.scope, { bookId: first.id, to: place });
    await to(1);
    await to(1);
    expect(await titles(classroom)).toEqual(['Pebble Path 2', 'Pebble Path', 'Pebble Path 3']);
    await to(99);
    expect(await titles(classroom)).toEqual(['Pebble Path 2', 'Pebble Path 3', 'Pebble Path']);
    expect(await titles(classroom, childId)).toEqual(['Pebble Path']);
  });

  it('is refused when its title is in line already or the line is full', async () => {
    const classroom = await aClass(opened());
    const { id: childId } = await aChild(opened(), classroom);
    await add(classroom);
    const again = { ...BOOK, title: ' pebble PATH ' };
    expect(await refusalOf(add(classroom, again))).toBe('conflict: book title');
    expect(await codeOf(add(classroom, again, childId))).toBe('accepted');
    for (let n = 2; n <= BOOK_LIMITS.inLine; n += 1) {
      await add(classroom, { ...BOOK, title: `Pebble Path ${n}` });
    }
    const more = add(classroom, { ...BOOK, title: 'Pebble Path 9' });
    expect(await refusalOf(more)).toBe('invalid: number of books');
  });

  it('is refused for a child of another class', async () => {
    const classroom = await aClass(opened());
    const stranger = await aChild(opened(), await aClass(opened()));
    expect(await refusalOf(add(classroom, BOOK, stranger.id))).toBe('not_found: child');
  });
}

function takenBack(opened: () => Store, { add, titles, undo }: Means) {
  it('takes the title of another one neither when it is changed nor when that is taken back', async () => {
    const classroom = await aClass(opened());
    const { id: bookId } = await add(classroom);
    const to = (title: string) =>
      changeBook(opened(), classroom.scope, { bookId, changes: { title }, now });
    expect(await to(' Pebble Path ')).toBeNull();
    const act = (await to('Pebble Path 3')) ?? '';
    await add(classroom);
    expect(await refusalOf(to('Pebble Path'))).toBe('conflict: book title');
    const before = await dumpAll(opened());
    expect(await refusalOf(undo(classroom, act))).toBe('conflict: undo');
    expect(await dumpAll(opened())).toEqual(before);
  });

  it('gets back the settings it had', async () => {
    const classroom = await aClass(opened());
    const book = await add(classroom);
    const changes = { title: 'Heron Path', firstPage: 1, lastPage: 99, pagesADay: 5 };
    const input = { bookId: book.id, changes, now };
    const act = (await changeBook(opened(), classroom.scope, input)) ?? '';
    expect(await getBook(opened(), classroom.scope, book.id)).toEqual({ ...book, ...changes });
    await undo(classroom, act);
    expect(await getBook(opened(), classroom.scope, book.id)).toEqual(book);
  });

  it('that is put away is not found and asks for no pages, until that is taken back', async () => {
    const classroom = await aClass(opened());
    const { scope } = classroom;
    const { id: bookId } = await add(classroom);
    await add(classroom, NEXT);
    const act = await putAwayBook(opened(), scope, { bookId, now });
    expect(await titles(classroom)).toEqual(['Pebble Path 2']);
    expect(await refusalOf(getBook(opened(), scope, bookId))).toBe('not_found: book');
    const again = putAwayBook(opened(), scope, { bookId, now });
    expect(await refusalOf(again)).toBe('not_found: book');
    const { view } = await anEvening(opened(), classroom, await aFamily(opened(), classroom));
    expect(view.book?.title).toBe('Pebble Path 2');
    await undo(classroom, act);
    expect(await titles(classroom)).toEqual(['Pebble Path', 'Pebble Path 2']);
  });

  it('cannot be brought back beside another one with its title', async () => {
    const classroom = await aClass(opened());
    const { id: bookId } = await add(classroom);
    const act = await putAwayBook(opened(), classroom.scope, { bookId, now });
    await add(classroom);
    expect(await refusalOf(undo(classroom, act))).toBe('conflict: undo');
    expect(await titles(classroom)).toEqual(['Pebble Path']);
  });
}

function current(opened: () => Store, { add }: Means) {
  it('is the class’s current one until every child has done it; a class without children is at its first', async () => {
    const classroom = await aClass(opened());
    const title = async () => (await currentBook(opened(), classroom.scope))?.title ?? null;
    expect(await title()).toBeNull();
    const { id: bookId } = await add(classroom);
    await add(classroom, NEXT);
    expect(await title()).toBe('Pebble Path');
    const wren = await aChild(opened(), classroom, 'Wren');
    const otter = await aChild(opened(), classroom, 'Otter');
    for (const { id: childId } of [wren, otter]) {
      expect(await title()).toBe('Pebble Path');
      await setPage(opened(), classroom.scope, { bookId, childId, page: 10, now });
    }
    expect(await title()).toBe('Pebble Path 2');
  });
}
