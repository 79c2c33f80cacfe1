import { describe, expect, it } from 'vitest';
import {
  addBook,
  addBreak,
  closePart,
  declineEvening,
  digestDays,
  leaveAll,
  markUnreachable,
  openMarking,
  readWeek,
  recordPages,
  type Store,
} from '../../db/index.ts';
import { addDays, createRandom, type Random, type SchoolDay } from '../../drills/index.ts';
import { settleEvening } from '../support/deliveries.ts';
import { aChild, aClass, aFamily, type Classroom, type Family, onBot } from '../support/people.ts';
import { anEvening, markPart } from '../support/practice.ts';
import { sharedStore } from '../support/shared-store.ts';
import { dearBackends } from '../support/stores.ts';
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
import { historySuite } from './history.suite.ts';
import { nudgeSuite } from './nudges.suite.ts';
import { weekFromRows } from './raw-week.ts';
import { weekPastSuite } from './week-past.suite.ts';

const WEEK = [MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY];
const WEEK_BEFORE = WEEK.map((on) => addDays(on, -7));
/** Long after the week's last evening could be answered. */
const NOON_AFTER = new Date('2026-09-19T10:00:00Z');
const BOOK = { title: 'Pebble Path', firstPage: 1, lastPage: 90, pagesADay: 2 };

describe.each(dearBackends)('the week on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('as the digest reads it', () => reading(opened));
  describe('and the children’s own past', () => weekPastSuite(opened));
  describe('while it is going on', () => freshness(opened));
  describe('and its days', () => days(opened));
  describe('and nudges', () => nudgeSuite(opened));
  describe('and its past evenings', () => historySuite(opened));
});

/** Lets one family live one evening by chance: put off, unsent, silent, or marked with corrections. */
async function live(
  store: Store,
  classroom: Classroom,
  family: Family,
  on: SchoolDay,
  random: Random,
) {
  const { scope, view } = await anEvening(store, classroom, family, { on });
  const settled = (['sent', 'sent', 'sent', 'unknown', 'failed'] as const)[random.int(5)] ?? 'sent';
  await settleEvening(store, view.id, settled, evening(on));
  const now = evening(on, 15);
  const mood = random.int(5);
  if (mood === 0) return declineEvening(store, scope, now);
  if (mood === 1) return;
  const missed = [random.int(2), 2 + random.int(3)];
  await markPart(store, scope, { part: 0, missed, now });
  if (random.int(2) === 0) await markPart(store, scope, { part: 0, missed: [3], now }, missed);
  const said = (count: number) =>
    closePart(store, scope, { part: 1, verdict: { kind: 'said', said: count }, now });
  await said(random.int(11));
  if (random.int(2) === 0) {
    await openMarking(store, scope, { part: 1, now });
    await said(random.int(11));
  }
  if (random.int(3) > 0) await markPart(store, scope, { part: 2, missed: [random.int(8)], now });
  for (let count = random.int(3); count > 0; count -= 1) {
    await recordPages(store, scope, { pages: random.int(4), now });
  }
}

function reading(opened: () => Store) {
  it('every number equals a plain count over the raw rows, corrections and silence included', async () => {
    const random = createRandom('a week of Kingfisher class');
    const classroom = await aClass(opened());
    await addBook(opened(), classroom.scope, { book: BOOK, now: MORNING });
    const nicknames = ['Wren', 'Otto', 'Juniper', 'Fern'];
    const families: Family[] = [];
    for (const nickname of nicknames)
      families.push(await aFamily(opened(), classroom, { nickname }));
    await aChild(opened(), classroom, 'Sorrel');
    for (const on of [...WEEK_BEFORE.slice(2), ...WEEK]) {
      for (const family of families) await live(opened(), classroom, family, on, random);
    }
    await markUnreachable(opened(), onBot(families[3]?.helper.chatId ?? 0), MORNING);
    const gone = await aFamily(opened(), classroom, { nickname: 'Robin' });
    await leaveAll(opened(), { helperId: gone.helper.id, now: MORNING });
    const { classId } = classroom.scope;
    const read = await readWeek(opened(), { classId, days: WEEK, now: NOON_AFTER });
    const counted = await weekFromRows(opened(), classId, WEEK);
    expect(read.days).toEqual(WEEK);
    expect(read.children).toMatchObject(counted);
    const statuses = read.children.flatMap((row) => row.evenings.map((past) => past.status));
    // The check means something only if the generated week holds every case.
    expect([...new Set(statuses)].sort()).toEqual(['not_today', 'practised', 'silent', 'unsent']);
    expect(statuses).toHaveLength(20);
    expect(counted.filter((row) => row.left).map((row) => row.nickname)).toEqual(['Robin']);
    expect(read.children.flatMap((row) => row.earlier).length).toBeGreaterThan(3);
    expect(read.children.flatMap((row) => row.evenings).some(({ runs }) => runs.length > 0)).toBe(
      true,
    );
  });

  it('silence is counted from before the week, and one answer ends it', async () => {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom);
    const silent = async (on: SchoolDay) => {
      const { view, scope } = await anEvening(opened(), classroom, family, { on });
      await settleEvening(opened(), view.id, 'sent', evening(on));
      return scope;
    };
    const run = async () => {
      const { classId } = classroom.scope;
      return (await readWeek(opened(), { classId, days: WEEK, now: NOON_AFTER })).children[0]
        ?.silentRun;
    };
    for (const on of [...WEEK_BEFORE.slice(3), MONDAY]) await silent(on);
    expect(await run()).toBe(3);
    await declineEvening(opened(), await silent(TUESDAY), evening(TUESDAY, 5));
    expect(await run()).toBe(0);
    await silent(WEDNESDAY);
    expect(await run()).toBe(1);
  });
}

function freshness(opened: () => Store) {
  it('an evening that may still be marked is no silence; two hours after it was sent it shows', async () => {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom);
    for (const on of [MONDAY, TUESDAY]) {
      const { view } = await anEvening(opened(), classroom, family, { on });
      await settleEvening(opened(), view.id, 'sent', evening(on));
    }
    const { classId } = classroom.scope;
    const days = [MONDAY, TUESDAY];
    const seen = async (minutes: number) => {
      const now = evening(TUESDAY, minutes);
      return (await readWeek(opened(), { classId, days, now })).children[0];
    };
    expect(await seen(30)).toMatchObject({ silentRun: 1, evenings: [{ day: MONDAY }] });
    expect(await seen(119)).toMatchObject({ silentRun: 1, evenings: [{ day: MONDAY }] });
    const both = [{ day: MONDAY }, { day: TUESDAY, status: 'silent' }];
    expect(await seen(120)).toMatchObject({ silentRun: 1, evenings: both });
    // Midnight in the class's zone is six and a half hours after half past five.
    expect(await seen(389)).toMatchObject({ silentRun: 1, evenings: both });
    expect(await seen(390)).toMatchObject({ silentRun: 2, evenings: both });
  });

  it('a week without days has the class’s children and no evenings', async () => {
    const classroom = await aClass(opened());
    await aFamily(opened(), classroom);
    const { classId } = classroom.scope;
    const { days: none, children } = await readWeek(opened(), {
      classId,
      days: [],
      now: NOON_AFTER,
    });
    expect(none).toEqual([]);
    expect(children).toMatchObject([{ nickname: 'Wren', joined: true, evenings: [] }]);
  });
}

function days(opened: () => Store) {
  it('are the school days of seven days that end with the digest’s own, breaks left out', async () => {
    const { scope, schoolClass } = await aClass(opened());
    const holiday = { first: TUESDAY, last: WEDNESDAY };
    await addBreak(opened(), scope, { break: holiday, title: 'Fair', now: MORNING });
    expect(await digestDays(opened(), schoolClass, FRIDAY)).toEqual([MONDAY, THURSDAY, FRIDAY]);
  });

  it('end the day before when the digest comes before the evening, unless today is wanted', async () => {
    const { schoolClass } = await aClass(opened(), { digestTime: time('15:00') });
    const friday = addDays(FRIDAY, -7);
    const before = [friday, MONDAY, TUESDAY, WEDNESDAY, THURSDAY];
    expect(await digestDays(opened(), schoolClass, FRIDAY)).toEqual(before);
    expect(await digestDays(opened(), schoolClass, FRIDAY, 'with_today')).toEqual(WEEK);
  });
}
