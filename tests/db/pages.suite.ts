import { expect, it } from 'vitest';
import {
  addBook,
  addBreak,
  type BookSettings,
  changeBook,
  createClass,
  moveBook,
  moveChild,
  nextPages,
  readEvening,
  readPageProgress,
  recordPages,
  type Store,
  setClassPage,
  setPage,
  undoAct,
} from '../../db/index.ts';
import { addDays, type SchoolDay } from '../../drills/index.ts';
import { codeOf, refusalOf } from '../support/code-of.ts';
import {
  aChild,
  aClass,
  aFamily,
  type Classroom,
  type Family,
  SETTINGS,
} from '../support/people.ts';
import { anEvening } from '../support/practice.ts';
import { dumpAll } from '../support/raw-rows.ts';
import { evening, FRIDAY, MONDAY, MORNING, THURSDAY, TUESDAY, WEDNESDAY } from '../support/term.ts';

const BOOK: BookSettings = { title: 'Pebble Path', firstPage: 3, lastPage: 9, pagesADay: 2 };
const NEXT: BookSettings = { ...BOOK, title: 'Pebble Path 2', firstPage: 1 };
const WEEK = [MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY];

/** Where children are in their workbooks, and where that leads their evenings. */
export function pagesSuite(opened: () => Store) {
  const means = meansOf(opened);
  told(opened, means);
  inSeveralBooks(opened, means);
  saidByTeacher(opened, means);
  refused(opened, means);
  ofTheClass(opened, means);
  pace(opened, means);
}

type Means = ReturnType<typeof meansOf>;

function meansOf(opened: () => Store) {
  const add = ({ scope }: Classroom, book: BookSettings = BOOK, childId: string | null = null) =>
    addBook(opened(), scope, { book, childId, now: MORNING });

  function readerOf(classroom: Classroom, family: Family) {
    const { scope } = classroom;
    const childId = family.child.id;
    return {
      classroom,
      childId,
      /** Plans an evening and tells its pages as often as there are counts. */
      read: async (on: SchoolDay, ...counts: readonly number[]) => {
        const own = await anEvening(opened(), classroom, family, { on });
        for (const pages of counts) {
          await recordPages(opened(), own.scope, { pages, now: evening(on, 20) });
        }
        return readEvening(opened(), own.view.id);
      },
      say: (bookId: string, page: number, now: Date) =>
        setPage(opened(), scope, { bookId, childId, page, now }),
      next: async () => {
        const pages = await nextPages(opened(), { childId, classId: scope.classId });
        return pages && [pages.book.title, pages.from, pages.to];
      },
    };
  }

  async function reader(...books: readonly BookSettings[]) {
    const classroom = await aClass(opened());
    const added = [];
    for (const book of books) added.push(await add(classroom, book));
    const [first] = added;
    if (!first) throw new Error('a reader has a book');
    return { ...readerOf(classroom, await aFamily(opened(), classroom)), book: first };
  }

  return { add, readerOf, reader };
}

function told(opened: () => Store, { reader }: Means) {
  it('is the first page until pages are told, then moves on by them, more or fewer than asked for', async () => {
    const { read, next } = await reader(BOOK);
    expect((await read(MONDAY, 3)).book).toMatchObject({ title: 'Pebble Path', from: 3, to: 4 });
    expect(await next()).toEqual(['Pebble Path', 6, 7]);
    expect((await read(TUESDAY, 0)).book).toMatchObject({ from: 6, to: 7 });
    expect(await next()).toEqual(['Pebble Path', 6, 7]);
    await read(WEDNESDAY);
    expect(await next()).toEqual(['Pebble Path', 6, 7]);
  });

  it('counts a corrected evening once, by its latest word', async () => {
    const { read, next } = await reader(BOOK);
    await read(MONDAY, 4, 1, 2);
    expect(await next()).toEqual(['Pebble Path', 5, 6]);
  });

  it('ends on the last page; an evening without a book left asks for no pages', async () => {
    const { read, next } = await reader(BOOK);
    await read(MONDAY, 6);
    expect(await next()).toEqual(['Pebble Path', 9, 9]);
    const last = await read(TUESDAY, 3);
    expect(last.book).toMatchObject({ from: 9, last: 9, next: null });
    expect(await next()).toBeNull();
    expect((await read(WEDNESDAY)).book).toBeNull();
  });

  it('pages told of an evening without a book are not stored', async () => {
    const classroom = await aClass(opened());
    const { scope } = await anEvening(opened(), classroom, await aFamily(opened(), classroom));
    const before = await dumpAll(opened());
    const recording = recordPages(opened(), scope, { pages: 2, now: evening(MONDAY) });
    expect(await codeOf(recording)).toBe('accepted');
    expect(await dumpAll(opened())).toEqual(before);
  });
}

function inSeveralBooks(opened: () => Store, { add, readerOf, reader }: Means) {
  it('goes on in the next book, and the last evening of the one before says which', async () => {
    const { read, next } = await reader(BOOK, NEXT);
    expect((await read(MONDAY, 6)).book?.next).toBeNull();
    expect((await read(TUESDAY, 1)).book?.next).toEqual({ title: 'Pebble Path 2', from: 1 });
    expect(await next()).toEqual(['Pebble Path 2', 1, 2]);
    expect((await read(WEDNESDAY, 2)).book).toMatchObject({ title: 'Pebble Path 2', from: 1 });
    expect(await next()).toEqual(['Pebble Path 2', 3, 4]);
  });

  it('is in the child’s own books first, then in the class’s, and nobody else’s', async () => {
    const { classroom, childId, next, read } = await reader(BOOK);
    await add(classroom, { ...NEXT, lastPage: 2 }, childId);
    const other = readerOf(classroom, await aFamily(opened(), classroom, { nickname: 'Otter' }));
    expect([await next(), await other.next()]).toEqual([
      ['Pebble Path 2', 1, 2],
      ['Pebble Path', 3, 4],
    ]);
    await read(MONDAY, 2);
    expect(await next()).toEqual(['Pebble Path', 3, 4]);
  });

  it('goes along in the own books of a child that moves to another class, and not in the class’s', async () => {
    const { classroom, childId, read } = await reader(BOOK);
    const { teacher } = classroom;
    await add(classroom, NEXT, childId);
    await read(MONDAY, 4);
    const { id: toClassId } = await createClass(opened(), {
      teacherId: teacher.id,
      settings: { ...SETTINGS, title: 'Heron class' },
      now: MORNING,
    });
    const heron = { teacherId: teacher.id, classId: toClassId };
    await addBook(opened(), heron, { book: { ...BOOK, title: 'Heron Path' }, now: MORNING });
    await moveChild(opened(), classroom.scope, { number: 1, toClassId, now: MORNING });
    const [moved] = await readPageProgress(opened(), heron, evening(MONDAY, 60));
    expect(moved?.queue.map(({ book, page }) => [book.title, page])).toEqual([
      ['Pebble Path 2', 5],
      ['Heron Path', 3],
    ]);
  });

  it('is kept in each book when the books change places', async () => {
    const { classroom, book, read, next } = await reader(BOOK, NEXT);
    await read(MONDAY, 2);
    const move = (to: number) => moveBook(opened(), classroom.scope, { bookId: book.id, to });
    await move(1);
    expect(await next()).toEqual(['Pebble Path 2', 1, 2]);
    await read(TUESDAY, 1);
    await move(0);
    expect(await next()).toEqual(['Pebble Path', 5, 6]);
  });

  it('is kept when the book’s pages or pages a day change; a later first page begins there', async () => {
    const { classroom, book, read, next } = await reader(BOOK);
    await read(MONDAY, 2);
    const change = (changes: Partial<BookSettings>) =>
      changeBook(opened(), classroom.scope, { bookId: book.id, changes, now: MORNING });
    await change({ firstPage: 1, pagesADay: 3 });
    expect(await next()).toEqual(['Pebble Path', 5, 7]);
    await change({ lastPage: 4 });
    expect(await next()).toBeNull();
    await change({ firstPage: 8, lastPage: 40, pagesADay: 1 });
    expect(await next()).toEqual(['Pebble Path', 8, 8]);
  });
}

function saidByTeacher(opened: () => Store, { reader }: Means) {
  it('is what the teacher says, further on or back; evenings after that count, the one before does not', async () => {
    const { book, read, say, next } = await reader(BOOK);
    await read(MONDAY, 1);
    await say(book.id, 7, evening(MONDAY, 60));
    // The same evening, told anew: the teacher knew better.
    await read(MONDAY, 2);
    expect(await next()).toEqual(['Pebble Path', 7, 8]);
    expect((await read(TUESDAY, 2)).book).toMatchObject({ from: 7, to: 8 });
    expect(await next()).toEqual(['Pebble Path', 9, 9]);
    await say(book.id, 4, evening(TUESDAY, 60));
    expect(await next()).toEqual(['Pebble Path', 4, 5]);
    await say(book.id, 10, evening(TUESDAY, 61));
    expect(await next()).toBeNull();
  });

  it('that was said is taken back to where the evenings led', async () => {
    const { classroom, book, read, say, next } = await reader(BOOK);
    await read(MONDAY, 2);
    const { teacherId } = classroom.scope;
    const actId = await say(book.id, 9, evening(MONDAY, 60));
    await undoAct(opened(), { teacherId, actId, now: evening(MONDAY, 61) });
    expect(await next()).toEqual(['Pebble Path', 5, 6]);
  });
}

function refused(opened: () => Store, { add, reader }: Means) {
  it('is refused outside the book, in another child’s book, and for another class’s child', async () => {
    const { classroom, book, childId, say } = await reader(BOOK);
    const other = await aChild(opened(), classroom, 'Otter');
    const own = await add(classroom, NEXT, other.id);
    const stranger = await aChild(opened(), await aClass(opened()));
    const before = await dumpAll(opened());
    for (const page of [2, 11, 4.5]) {
      expect(await refusalOf(say(book.id, page, MORNING))).toBe('invalid: page of the book');
      const all = setClassPage(opened(), classroom.scope, { bookId: book.id, page, now: MORNING });
      expect(await refusalOf(all)).toBe('invalid: page of the book');
    }
    expect(await refusalOf(say(own.id, 2, MORNING))).toBe('not_found: book');
    const forOne = { bookId: own.id, page: 2, now: MORNING };
    const setting = setClassPage(opened(), classroom.scope, forOne);
    expect(await refusalOf(setting)).toBe('not_found: book');
    const input = { bookId: book.id, page: 4, now: MORNING };
    const reaching = setPage(opened(), classroom.scope, { ...input, childId: stranger.id });
    expect(await refusalOf(reaching)).toBe('not_found: child');
    expect(childId).not.toBe(stranger.id);
    expect(await dumpAll(opened())).toEqual(before);
  });
}

function ofTheClass(opened: () => Store, { readerOf, reader }: Means) {
  it('of the whole class moves those behind, leaves those further on, and is taken back as one', async () => {
    const { classroom, book, say, next } = await reader(BOOK);
    const ahead = readerOf(classroom, await aFamily(opened(), classroom, { nickname: 'Otter' }));
    const even = readerOf(classroom, await aFamily(opened(), classroom, { nickname: 'Robin' }));
    await ahead.say(book.id, 8, MORNING);
    await even.say(book.id, 6, MORNING);
    await say(book.id, 4, MORNING);
    const now = evening(MONDAY);
    const set = await setClassPage(opened(), classroom.scope, { bookId: book.id, page: 6, now });
    expect(set).toMatchObject({ moved: 1, further: 1 });
    expect([await next(), await ahead.next(), await even.next()]).toEqual([
      ['Pebble Path', 6, 7],
      ['Pebble Path', 8, 9],
      ['Pebble Path', 6, 7],
    ]);
    const again = { bookId: book.id, page: 6, now };
    expect((await setClassPage(opened(), classroom.scope, again)).act).toBeNull();
    const { teacherId } = classroom.scope;
    await undoAct(opened(), { teacherId, actId: set.act ?? '', now });
    expect(await next()).toEqual(['Pebble Path', 4, 5]);
    expect(await ahead.next()).toEqual(['Pebble Path', 8, 9]);
  });
}

function pace(opened: () => Store, { reader }: Means) {
  it('comes with a pace from the evenings that asked for pages, and the school days ahead', async () => {
    const { classroom, read } = await reader({ ...BOOK, lastPage: 99 });
    for (const on of WEEK) {
      const lastWeek = addDays(on, -7);
      if (on === WEDNESDAY) await read(lastWeek);
      else await read(lastWeek, 2);
    }
    const holiday = { break: { first: TUESDAY, last: WEDNESDAY }, title: 'Fair', now: MORNING };
    await addBreak(opened(), classroom.scope, holiday);
    const on = async (now: Date) => (await readPageProgress(opened(), classroom.scope, now))[0];
    // Four evenings were told: too few for a pace.
    expect(await on(MORNING)).toMatchObject({ pace: null });
    const view = await read(MONDAY);
    const before = await on(evening(MONDAY, 5));
    expect([before?.pace, before?.days[0]]).toEqual([null, MONDAY]);
    await read(MONDAY, 3);
    const after = await on(evening(MONDAY, 30));
    // Wednesday, when nobody told, counts as an evening without pages.
    expect(after?.pace).toMatchObject({ pages: 11, evenings: 6 });
    expect(after?.days[0]).toBe(THURSDAY);
    expect(after?.queue.map(({ page }) => page)).toEqual([14]);
    expect(view.pages).toBeNull();
    const later = await on(new Date('2026-10-09T12:00:00Z'));
    expect(later?.pace).toBeNull();
  });
}
