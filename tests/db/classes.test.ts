import { describe, expect, it } from 'vitest';
import {
  addBreak,
  CLASS_LIMITS,
  type ClassSettings,
  createClass,
  getClass,
  getRunningClass,
  listBreaks,
  listClasses,
  listRunningClasses,
  oweDigest,
  removeBreak,
  type Store,
  updateClass,
} from '../../db/index.ts';
import { codeOf, refusalOf } from '../support/code-of.ts';
import { aClass, SETTINGS } from '../support/people.ts';
import { dumpAll, readTable, runSql } from '../support/raw-rows.ts';
import { sharedStore } from '../support/shared-store.ts';
import { backends } from '../support/stores.ts';
import {
  evening,
  FRIDAY,
  MONDAY,
  MORNING,
  THURSDAY,
  TUESDAY,
  time,
  WEDNESDAY,
} from '../support/term.ts';
import { classGradeSuite } from './class-grade.suite.ts';
import { rosterSuite } from './roster.suite.ts';

describe.each(backends)('a class on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('and its settings', () => settings(opened));
  describe('and its grade', () => classGradeSuite(opened));
  describe('and since when they are in force', () => instants(opened));
  describe('and its breaks', () => breaks(opened));
  describe('and its roster', () => rosterSuite(opened));
});

/** The Monday evening after. */
const LATER = evening(MONDAY, 5);

const REFUSED: readonly [string, Partial<ClassSettings>][] = [
  ['title', { title: '   ' }],
  ['title', { title: 'K'.repeat(CLASS_LIMITS.titleLength + 1) }],
  ['zone', { zone: 'Mars/Base' }],
  ['zone', { zone: '+02:00' }],
  ['weekdays', { weekdays: [] }],
  ['evening time', { eveningTime: time('05:59'), nudgeTime: time('18:45') }],
  ['evening time', { eveningTime: time('20:01'), nudgeTime: time('20:45') }],
  ['nudge time', { nudgeTime: time('20:46') }],
  ['nudge too early', { eveningTime: time('17:30'), nudgeTime: time('18:14') }],
  ['nudge too early', { nudgeTime: time('17:00') }],
  ['grade', { curriculum: 'england', grade: '4' }],
  ['grade', { curriculum: 'england', grade: 'K' }],
  ['grade', { curriculum: 'own', grade: '1' }],
  ['grade', { curriculum: 'caps', grade: '' }],
  // A class goes by no curriculum until it names one.
  ['grade', { grade: '1' }],
];

const ALLOWED: readonly [string, Partial<ClassSettings>][] = [
  ['the longest title', { title: 'K'.repeat(CLASS_LIMITS.titleLength) }],
  ['the earliest evening', { eveningTime: time('06:00'), nudgeTime: time('06:45') }],
  ['the latest evening and nudge', { eveningTime: time('20:00'), nudgeTime: time('20:45') }],
  ['a school week of one day', { weekdays: [6] }],
  ['a grade of its curriculum', { curriculum: 'ccss', grade: 'K' }],
  ['a curriculum without a grade', { curriculum: 'acara', grade: null }],
];

function settings(opened: () => Store) {
  it.each(REFUSED)('a wrong %s is refused on creating and on changing', async (what, wrong) => {
    const { scope, teacher } = await aClass(opened());
    const before = await dumpAll(opened());
    const input = { teacherId: teacher.id, settings: { ...SETTINGS, ...wrong }, now: MORNING };
    expect(await refusalOf(createClass(opened(), input))).toBe(`invalid: ${what}`);
    expect(await refusalOf(updateClass(opened(), scope, { changes: wrong, now: LATER }))).toBe(
      `invalid: ${what}`,
    );
    expect(await dumpAll(opened())).toEqual(before);
  });

  it.each(ALLOWED)('%s is allowed', async (_what, changes) => {
    const { scope, schoolClass } = await aClass(opened());
    const updated = await updateClass(opened(), scope, { changes, now: LATER });
    expect(updated).toEqual({ ...schoolClass, ...changes });
    expect(await getClass(opened(), scope)).toEqual(updated);
  });

  it('two settings that only contradict each other together are refused one at a time', async () => {
    const { scope } = await aClass(opened());
    const change = (changes: Partial<ClassSettings>) =>
      updateClass(opened(), scope, { changes, now: LATER });
    const late = { eveningTime: time('18:30') };
    expect(await refusalOf(change(late))).toBe('invalid: nudge too early');
    const both = { ...late, nudgeTime: time('19:15') };
    expect(await codeOf(change(both))).toBe('accepted');
  });

  it('a class is stored with a trimmed title, the zone’s proper spelling and weekdays in order', async () => {
    const wanted = { title: ' Heron ', zone: 'asia/kathmandu', weekdays: [5, 1, 3, 1] as const };
    const { scope } = await aClass(opened(), wanted);
    expect(await getClass(opened(), scope)).toMatchObject({
      title: 'Heron',
      zone: 'Asia/Kathmandu',
      weekdays: [1, 3, 5],
    });
  });

  it('an archived class is running for nobody', async () => {
    const { scope, teacher, schoolClass } = await aClass(opened());
    await runSql(
      opened(),
      `update class set archived_at = '2026-09-14T08:00:00Z' where id = '${schoolClass.id}'`,
    );
    expect(await codeOf(getClass(opened(), scope))).toBe('not_found');
    expect(await codeOf(getRunningClass(opened(), schoolClass.id))).toBe('not_found');
    expect(await listClasses(opened(), teacher.id)).toEqual([]);
    const running = await listRunningClasses(opened());
    expect(running.map((row) => row.id)).not.toContain(schoolClass.id);
  });

  it('a running class is found by the engine, and a teacher’s classes come oldest first', async () => {
    const { teacher, schoolClass } = await aClass(opened());
    const later = new Date(MORNING.getTime() + 1);
    const input = { teacherId: teacher.id, settings: SETTINGS, now: later };
    const second = await createClass(opened(), input);
    expect(await getRunningClass(opened(), second.id)).toEqual(second);
    expect(await listClasses(opened(), teacher.id)).toEqual([schoolClass, second]);
    expect(await listRunningClasses(opened())).toEqual(
      expect.arrayContaining([schoolClass, second]),
    );
  });
}

/** What each change is in force since: the evenings' days and times, and the digest's. */
const SINCE: readonly [string, Partial<ClassSettings>, Date, Date][] = [
  ['a school day other than today', { weekdays: [1, 2, 3, 4, 5, 6] }, MORNING, MORNING],
  ['another evening time', { eveningTime: time('17:00') }, LATER, MORNING],
  ['another zone', { zone: 'Europe/London' }, LATER, MORNING],
  // No digest has come yet, so that one moved to an hour that is over still comes.
  ['another digest day', { digestWeekday: 4 }, MORNING, MORNING],
  ['another digest time', { digestTime: time('19:30') }, MORNING, MORNING],
  ['a curriculum and grade', { curriculum: 'caps', grade: '2' }, MORNING, MORNING],
  ['another title and nudge time', { title: 'Heron', nudgeTime: time('19:00') }, MORNING, MORNING],
  ['what is set already', { ...SETTINGS, weekdays: [5, 4, 3, 2, 1] }, MORNING, MORNING],
];

async function sinceOf(store: Store, classId: string) {
  const row = (await readTable(store, 'class')).find((candidate) => candidate.id === classId);
  return { times: new Date(String(row?.times_since)), digest: new Date(String(row?.digest_since)) };
}

function instants(opened: () => Store) {
  it.each(SINCE)('%s count from their own instant on', async (_what, changes, times, digest) => {
    const { scope } = await aClass(opened());
    expect(await sinceOf(opened(), scope.classId)).toEqual({ times: MORNING, digest: MORNING });
    const updated = await updateClass(opened(), scope, { changes, now: LATER });
    expect(await sinceOf(opened(), scope.classId)).toEqual({ times, digest });
    expect(updated.digestSince).toEqual(digest);
  });

  it('a school day that becomes one today counts from its own instant on', async () => {
    const { scope } = await aClass(opened());
    await updateClass(opened(), scope, { changes: { weekdays: [2] }, now: MORNING });
    await updateClass(opened(), scope, { changes: { weekdays: [1, 2] }, now: LATER });
    expect((await sinceOf(opened(), scope.classId)).times).toEqual(LATER);
  });

  it('after a digest, another day or time counts from its own instant on', async () => {
    const { scope } = await aClass(opened());
    const digest = { classId: scope.classId, day: MONDAY, expiresAt: LATER, now: MORNING };
    await oweDigest(opened(), digest);
    const changes = { digestWeekday: 4 } as const;
    expect((await updateClass(opened(), scope, { changes, now: LATER })).digestSince).toEqual(
      LATER,
    );
  });

  it('a break counts at once, and its removal from its own instant on when it frees today', async () => {
    const { scope } = await aClass(opened());
    const { scope: other } = await aClass(opened());
    const times = async (classId: string) => (await sinceOf(opened(), classId)).times;
    const add = (first: typeof MONDAY) =>
      addBreak(opened(), scope, { break: { first, last: first }, title: 'Fair', now: LATER });
    const [today, ahead] = [await add(MONDAY), await add(THURSDAY)];
    expect(await times(scope.classId)).toEqual(MORNING);
    await removeBreak(opened(), scope, { breakId: ahead.id, now: evening(MONDAY, 10) });
    expect(await times(scope.classId)).toEqual(MORNING);
    await removeBreak(opened(), scope, { breakId: today.id, now: evening(MONDAY, 10) });
    expect(await times(scope.classId)).toEqual(evening(MONDAY, 10));
    expect(await times(other.classId)).toEqual(MORNING);
  });
}

function breaks(opened: () => Store) {
  it('a break that ends before it begins is refused; one of a single day is not', async () => {
    const { scope } = await aClass(opened());
    const before = await dumpAll(opened());
    const add = (first: typeof MONDAY, last: typeof MONDAY) =>
      addBreak(opened(), scope, { break: { first, last }, title: 'Fair', now: LATER });
    expect(await refusalOf(add(TUESDAY, MONDAY))).toBe('invalid: break order');
    expect(await dumpAll(opened())).toEqual(before);
    expect(await codeOf(add(TUESDAY, TUESDAY))).toBe('accepted');
  });

  it('breaks come in order, from the first that has not ended, and of this class only', async () => {
    const { scope } = await aClass(opened());
    const other = await aClass(opened());
    const add = async (
      owner: typeof scope,
      title: string,
      first: typeof MONDAY,
      last: typeof MONDAY,
    ) => {
      const wanted = { break: { first, last }, title, now: MORNING };
      const { actId: _act, ...made } = await addBreak(opened(), owner, wanted);
      return made;
    };
    const late = await add(scope, 'Sports day', THURSDAY, THURSDAY);
    const early = await add(scope, 'Fair', MONDAY, TUESDAY);
    await add(other.scope, 'Other', MONDAY, FRIDAY);
    const list = (from: typeof MONDAY) => listBreaks(opened(), scope.classId, from);
    expect(await list(MONDAY)).toEqual([early, late]);
    expect(await list(TUESDAY)).toEqual([early, late]);
    expect(await list(WEDNESDAY)).toEqual([late]);
    expect(early).toMatchObject({ title: 'Fair', first: MONDAY, last: TUESDAY });
  });

  it.each(['', 'F'.repeat(CLASS_LIMITS.titleLength + 1)])(
    'a break may not be called "%s"',
    async (title) => {
      const { scope } = await aClass(opened());
      const adding = addBreak(opened(), scope, {
        break: { first: MONDAY, last: MONDAY },
        title,
        now: MORNING,
      });
      expect(await refusalOf(adding)).toBe('invalid: break title');
      expect(await listBreaks(opened(), scope.classId, MONDAY)).toEqual([]);
    },
  );

  it('a removed break is gone, and removing it again is not_found', async () => {
    const { scope } = await aClass(opened());
    const input = { break: { first: MONDAY, last: MONDAY }, title: 'Fair', now: MORNING };
    const { id } = await addBreak(opened(), scope, input);
    await removeBreak(opened(), scope, { breakId: id, now: LATER });
    expect(await listBreaks(opened(), scope.classId, MONDAY)).toEqual([]);
    expect(await codeOf(removeBreak(opened(), scope, { breakId: id, now: LATER }))).toBe(
      'not_found',
    );
  });
}
