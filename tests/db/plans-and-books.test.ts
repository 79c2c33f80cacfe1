import { describe, expect, it } from 'vitest';
import {
  activatePlan,
  BOOK_LIMITS,
  type BookSettings,
  getActivePlan,
  getBook,
  getPlans,
  nextPages,
  pagesDone,
  readEvening,
  recordPages,
  retireBook,
  type Store,
  saveDraftPlan,
  setBook,
} from '../../db/index.ts';
import type { WeekPlan } from '../../drills/index.ts';
import { codeOf, refusalOf } from '../support/code-of.ts';
import { aClass, aFamily } from '../support/people.ts';
import { anEvening, aPlan } from '../support/practice.ts';
import { dumpAll } from '../support/raw-rows.ts';
import { sharedStore } from '../support/shared-store.ts';
import { backends } from '../support/stores.ts';
import { evening, MONDAY, MORNING, PLAN, TUESDAY, WEDNESDAY } from '../support/term.ts';

const OTHER_PLAN: WeekPlan = { parts: [{ rung: 'halves.to10', cards: 5, seconds: 4 }] };
const BOOK: BookSettings = { title: 'Pebble Path', firstPage: 3, lastPage: 9, pagesADay: 2 };

describe.each(backends)('on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('a week plan', () => plans(opened));
  describe('a workbook', () => books(opened));
  describe('a child’s place in the workbook', () => pages(opened));
});

function plans(opened: () => Store) {
  it('is a draft until it is activated, and there is one draft at a time', async () => {
    const { scope, schoolClass } = await aClass(opened());
    expect(await getPlans(opened(), scope)).toEqual({ active: null, draft: null });
    await saveDraftPlan(opened(), scope, { plan: OTHER_PLAN, now: MORNING });
    await saveDraftPlan(opened(), scope, { plan: PLAN, now: MORNING });
    const { active, draft } = await getPlans(opened(), scope);
    expect([active, draft?.plan]).toEqual([null, PLAN]);
    expect(await getActivePlan(opened(), schoolClass.id)).toBeNull();
    expect(await activatePlan(opened(), scope, MORNING)).toEqual(PLAN);
    expect(await getPlans(opened(), scope)).toEqual({ active: draft, draft: null });
    expect(await getActivePlan(opened(), schoolClass.id)).toEqual({ ...draft, since: MORNING });
  });

  it('once activated takes the place of the one before', async () => {
    const classroom = await aClass(opened());
    const first = await aPlan(opened(), classroom, PLAN);
    await saveDraftPlan(opened(), classroom.scope, { plan: OTHER_PLAN, now: MORNING });
    await activatePlan(opened(), classroom.scope, MORNING);
    const { active } = await getPlans(opened(), classroom.scope);
    expect(active?.plan).toEqual(OTHER_PLAN);
    expect(active?.id).not.toBe(first.id);
  });

  it.each<[string, WeekPlan]>([
    ['without parts', { parts: [] }],
    ['with too many cards', { parts: [{ rung: 'doubles.to5', cards: 6, seconds: 3 }] }],
    ['with the same rung twice', { parts: [...PLAN.parts, ...PLAN.parts] }],
  ])('%s may be kept as a draft but not activated', async (_how, plan) => {
    const classroom = await aClass(opened());
    const active = await aPlan(opened(), classroom);
    await saveDraftPlan(opened(), classroom.scope, { plan, now: MORNING });
    const before = await dumpAll(opened());
    const activating = activatePlan(opened(), classroom.scope, MORNING);
    expect(await refusalOf(activating)).toBe('invalid: week plan');
    expect(await dumpAll(opened())).toEqual(before);
    expect(await getActivePlan(opened(), classroom.schoolClass.id)).toEqual(active);
  });

  it('cannot be activated without a draft', async () => {
    const { scope } = await aClass(opened());
    expect(await refusalOf(activatePlan(opened(), scope, MORNING))).toBe('not_found: draft plan');
  });

  it('activated later alters no evening that is planned already', async () => {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom);
    const { view } = await anEvening(opened(), classroom, family);
    await saveDraftPlan(opened(), classroom.scope, { plan: OTHER_PLAN, now: MORNING });
    await activatePlan(opened(), classroom.scope, MORNING);
    expect(await readEvening(opened(), view.id)).toEqual(view);
    const next = await anEvening(opened(), classroom, family, { on: TUESDAY });
    expect(next.view.drill.parts.map((part) => part.rung)).toEqual(['halves.to10']);
  });
}

function books(opened: () => Store) {
  it.each<[string, Partial<BookSettings>]>([
    ['book title', { title: ' ' }],
    ['book title', { title: 'P'.repeat(BOOK_LIMITS.titleLength + 1) }],
    ['page', { firstPage: 0 }],
    ['page', { lastPage: BOOK_LIMITS.page + 1 }],
    ['page', { firstPage: 1.5 }],
    ['page order', { firstPage: 10 }],
    ['pages a day', { pagesADay: 0 }],
    ['pages a day', { pagesADay: BOOK_LIMITS.pagesADay + 1 }],
  ])('with a wrong %s is refused', async (what, wrong) => {
    const { scope } = await aClass(opened());
    const setting = setBook(opened(), scope, { book: { ...BOOK, ...wrong }, now: MORNING });
    expect(await refusalOf(setting)).toBe(`invalid: ${what}`);
    expect(await getBook(opened(), scope)).toBeNull();
  });

  it('under the same title is the same book, with its other settings changed', async () => {
    const { scope } = await aClass(opened());
    const first = await setBook(opened(), scope, { book: BOOK, now: MORNING });
    const changed = { ...BOOK, title: ' Pebble Path ', pagesADay: 3 };
    const second = await setBook(opened(), scope, { book: changed, now: MORNING });
    expect(second).toEqual({ ...first, pagesADay: 3 });
    expect(await getBook(opened(), scope)).toEqual(second);
  });

  it('under another title takes the place of the one before', async () => {
    const { scope } = await aClass(opened());
    const first = await setBook(opened(), scope, { book: BOOK, now: MORNING });
    const next = { ...BOOK, title: 'Pebble Path 2' };
    const second = await setBook(opened(), scope, { book: next, now: MORNING });
    expect(second.id).not.toBe(first.id);
    expect(await getBook(opened(), scope)).toEqual(second);
  });

  it('that is retired is in use no more, and evenings carry no pages', async () => {
    const classroom = await aClass(opened());
    await setBook(opened(), classroom.scope, { book: BOOK, now: MORNING });
    await retireBook(opened(), classroom.scope, MORNING);
    expect(await getBook(opened(), classroom.scope)).toBeNull();
    const { view } = await anEvening(opened(), classroom, await aFamily(opened(), classroom));
    expect(view.book).toBeNull();
  });
}

function pages(opened: () => Store) {
  async function reader() {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom);
    const book = await setBook(opened(), classroom.scope, { book: BOOK, now: MORNING });
    const read = async (on: typeof MONDAY, ...counts: readonly number[]) => {
      const { scope, view } = await anEvening(opened(), classroom, family, { on, book });
      for (const count of counts) {
        await recordPages(opened(), scope, { pages: count, now: evening(on, 20) });
      }
      return view.book;
    };
    return {
      classroom,
      family,
      book,
      read,
      next: () => nextPages(opened(), family.child.id, book),
    };
  }

  it('is the first page until pages are reported, then moves on by them', async () => {
    const { read, next, family, book } = await reader();
    expect(await read(MONDAY, 3)).toEqual({ title: 'Pebble Path', from: 3, to: 4 });
    expect(await next()).toEqual({ from: 6, to: 7 });
    expect(await read(TUESDAY, 0)).toMatchObject({ from: 6, to: 7 });
    expect(await pagesDone(opened(), family.child.id, book.id)).toBe(3);
  });

  it('counts a corrected evening once, by its latest word', async () => {
    const { read, next } = await reader();
    await read(MONDAY, 4, 1, 2);
    expect(await next()).toEqual({ from: 5, to: 6 });
  });

  it('ends on the last page; a finished book gives null and an evening without pages', async () => {
    const { read, next } = await reader();
    await read(MONDAY, 6);
    expect(await next()).toEqual({ from: 9, to: 9 });
    await read(TUESDAY, 1);
    expect(await next()).toBeNull();
    expect(await read(WEDNESDAY)).toBeNull();
  });

  it('stays when only the pages a day change, and is each child’s own', async () => {
    const { classroom, read, family } = await reader();
    await read(MONDAY, 2);
    const faster = { ...BOOK, pagesADay: 3 };
    const book = await setBook(opened(), classroom.scope, { book: faster, now: MORNING });
    expect(await nextPages(opened(), family.child.id, book)).toEqual({ from: 5, to: 7 });
    const other = await aFamily(opened(), classroom, { nickname: 'Otto' });
    expect(await nextPages(opened(), other.child.id, book)).toEqual({ from: 3, to: 5 });
  });

  it('pages reported on an evening without a book are not stored', async () => {
    const classroom = await aClass(opened());
    const { scope } = await anEvening(opened(), classroom, await aFamily(opened(), classroom));
    const before = await dumpAll(opened());
    const recording = recordPages(opened(), scope, { pages: 2, now: evening(MONDAY) });
    expect(await codeOf(recording)).toBe('accepted');
    expect(await dumpAll(opened())).toEqual(before);
  });
}
