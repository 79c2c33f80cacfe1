import { beforeAll, describe, expect, it } from 'vitest';
import * as verbs from '../../db/index.ts';
import { codeOf } from '../support/code-of.ts';
import { aClass, aFamily, aHelper, aTeacher, type Family } from '../support/people.ts';
import { anEvening } from '../support/practice.ts';
import { dumpAll } from '../support/raw-rows.ts';
import { sharedStore } from '../support/shared-store.ts';
import { dearBackends } from '../support/stores.ts';
import { evening, MONDAY, MORNING, PLAN, TUESDAY } from '../support/term.ts';
import { listThings } from './child-verbs.ts';
import { greetingThings } from './greeting-verbs.ts';
import { HELPER_VERBS, TEACHER_VERBS, UNSCOPED } from './scoped-verbs.ts';
import { TERM } from './term-verbs.ts';

const NOBODY = '00000000-0000-7000-8000-000000000000';
const BOOK = { title: 'Pebble Path', firstPage: 1, lastPage: 40, pagesADay: 2 };

it('every verb of db/ is either scoped to its owner or listed with the reason why not', () => {
  const exported = Object.entries(verbs).flatMap(([name, value]) =>
    typeof value === 'function' ? [name] : [],
  );
  const classified = [
    ...Object.keys(TEACHER_VERBS),
    ...Object.keys(HELPER_VERBS),
    ...Object.values(UNSCOPED).flat(),
  ];
  expect(classified.sort()).toEqual(exported.sort());
});

describe.each(dearBackends)('owner scope on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('of teachers', () => teacherSide(opened));
  describe('of helpers', () => helperSide(opened));
  describe('of lists', () => lists(opened));
});

async function aFullClass(store: verbs.Store) {
  const classroom = await aClass(store);
  const family = await aFamily(store, classroom);
  const { scope } = classroom;
  const { id: bookId } = await verbs.addBook(store, scope, { book: BOOK, now: MORNING });
  await verbs.saveDraftPlan(store, scope, { plan: PLAN, now: MORNING });
  await verbs.startScheme(store, scope, TERM);
  const { id: breakId } = await verbs.addBreak(store, scope, {
    break: { first: MONDAY, last: TUESDAY },
    title: 'Fair',
    now: MORNING,
  });
  const list = await listThings(store, classroom);
  const things = {
    ...list,
    ...(await greetingThings(store, scope)),
    breakId,
    bookId,
    childId: family.child.id,
  };
  return { classroom, scope, family, things };
}

function teacherSide(opened: () => verbs.Store) {
  let other: Awaited<ReturnType<typeof aFullClass>>;
  let strangers: readonly string[];
  beforeAll(async () => {
    other = await aFullClass(opened());
    const beginner = await aTeacher(opened());
    strangers = [other.scope.teacherId, beginner.id, other.family.helper.id, NOBODY];
  });

  it.each(Object.entries(TEACHER_VERBS))(
    '%s is not_found for another teacher and changes nothing; the class’s own teacher may',
    async (_name, verb) => {
      const own = await aFullClass(opened());
      const before = await dumpAll(opened());
      for (const teacherId of [...strangers, own.family.helper.id]) {
        const scope = { ...own.scope, teacherId };
        expect(await codeOf(verb(opened(), scope, own.things))).toBe('not_found');
      }
      expect(await dumpAll(opened())).toEqual(before);
      expect(await codeOf(verb(opened(), own.scope, own.things))).toBe('accepted');
    },
  );

  it.each([
    ...[
      'moveChild',
      'undoAct',
      'issueSlips',
      'keepSlips',
      'writeSlips',
      'removeBreak',
      'addBook',
      'listBooks',
    ],
    ...['getBook', 'changeBook', 'moveBook', 'putAwayBook', 'setPage', 'setClassPage'],
    ...['changeGreeting', 'removeGreeting'],
  ])('%s does not reach into another class from one’s own', async (name) => {
    const store = opened();
    const own = await aFullClass(store);
    const before = await dumpAll(store);
    expect(await codeOf(TEACHER_VERBS[name]?.(store, own.scope, other.things) ?? noSuch())).toBe(
      'not_found',
    );
    expect(await dumpAll(store)).toEqual(before);
  });

  it('issueSlips for one’s own and another’s child issues neither', async () => {
    const store = opened();
    const own = await aFullClass(store);
    const before = await dumpAll(store);
    const childIds = [own.things.childId, other.things.childId];
    const issuing = verbs.issueSlips(store, own.scope, { childIds, now: MORNING });
    expect(await codeOf(issuing)).toBe('not_found');
    expect(await dumpAll(store)).toEqual(before);
  });
}

function helperSide(opened: () => verbs.Store) {
  let own: Awaited<ReturnType<typeof aFullClass>>;
  let neighbour: Family;
  let gone: verbs.Helper;
  beforeAll(async () => {
    own = await aFullClass(opened());
    neighbour = await aFamily(opened(), own.classroom, { nickname: 'Otto' });
    gone = await aHelper(opened(), own.family.code);
    await verbs.leaveAll(opened(), { helperId: gone.id, now: MORNING });
    await anEvening(opened(), own.classroom, neighbour);
  });

  it.each(Object.entries(HELPER_VERBS))(
    '%s is not_found for another family and for a helper who left, and changes nothing; the child’s own helper may',
    async (_name, verb) => {
      const { scope } = await anEvening(opened(), own.classroom, own.family);
      await verbs.openMarking(opened(), scope, { part: 0, now: evening(MONDAY, 5) });
      const before = await dumpAll(opened());
      for (const helperId of [neighbour.helper.id, gone.id, own.scope.teacherId, NOBODY]) {
        expect(await codeOf(verb(opened(), { ...scope, helperId }))).toBe('not_found');
      }
      expect(await dumpAll(opened())).toEqual(before);
      expect(await codeOf(verb(opened(), scope))).toBe('accepted');
    },
  );
}

function lists(opened: () => verbs.Store) {
  it('findEvening cannot tell another family’s evening from none at all', async () => {
    const store = opened();
    const { classroom, family } = await aFullClass(store);
    const neighbour = await aFamily(store, classroom, { nickname: 'Otto' });
    await anEvening(store, classroom, family);
    const find = (helperId: string, day: typeof MONDAY) =>
      verbs.findEvening(store, { helperId, childId: family.child.id, day });
    expect((await find(family.helper.id, MONDAY))?.childId).toBe(family.child.id);
    expect(await find(neighbour.helper.id, MONDAY)).toBeNull();
    expect(await find(neighbour.helper.id, TUESDAY)).toBeNull();
  });

  it('a teacher’s classes and a helper’s children are their own only', async () => {
    const store = opened();
    const own = await aFullClass(store);
    const other = await aFullClass(store);
    const classes = await verbs.listClasses(store, own.scope.teacherId);
    const ids = [own.scope.classId, own.things.otherClassId];
    expect(classes.map((row) => row.id).sort()).toEqual(ids.sort());
    const children = await verbs.listFamilyChildren(store, other.family.helper.id);
    expect(children.map((row) => row.id)).toEqual([other.things.childId]);
  });

  it('a helper who left has no children, and sets nobody’s evening time', async () => {
    const store = opened();
    const { family } = await aFullClass(store);
    const helperId = family.helper.id;
    await verbs.leaveAll(store, { helperId, now: MORNING });
    expect(await verbs.listFamilyChildren(store, helperId)).toEqual([]);
    const changed = await verbs.setEveningTime(store, {
      helperId,
      time: verbs.storedTime('18:00'),
      now: MORNING,
    });
    expect(changed).toBe(0);
  });
}

function noSuch(): never {
  throw new Error('no such verb in the table');
}
