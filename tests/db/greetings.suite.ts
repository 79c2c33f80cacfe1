import { beforeAll, expect, it } from 'vitest';
import {
  changeGreeting,
  type GreetingWords,
  getGreeting,
  purgeGreetings,
  removeGreeting,
  type Store,
  setGreeting,
  undoAct,
} from '../../db/index.ts';
import { addDays, type GreetingTimes, NO_LAST_DAY } from '../../drills/index.ts';
import { codeOf } from '../support/code-of.ts';
import { aClass, type Classroom } from '../support/people.ts';
import { readTable } from '../support/raw-rows.ts';
import { FRIDAY, MONDAY, MORNING } from '../support/term.ts';

const HELLO: GreetingWords = { kind: 'text', body: 'A good week to all of you.', botId: null };
const VOICE: GreetingWords = { kind: 'voice', body: 'a-file-id', botId: 4 };
const WEEK: GreetingTimes = { evenings: 'first', first: MONDAY, last: addDays(MONDAY, 6) };
const DAY_MS = 24 * 60 * 60_000;

/** One class, and short ways to change and read its greeting. */
function setting(opened: () => Store) {
  let classroom: Classroom | undefined;
  beforeAll(async () => {
    classroom = await aClass(opened());
  });
  const scope = () => {
    if (!classroom) throw new Error('the class is there inside tests only');
    return classroom.scope;
  };
  return {
    scope,
    set: async (words: GreetingWords, times = WEEK, now = MORNING) =>
      setGreeting(opened(), scope(), { words, times, now }),
    inUse: async () => getGreeting(opened(), scope()),
    rows: async () =>
      (await readTable(opened(), 'note')).filter((row) => row.class_id === scope().classId),
  };
}

/** Putting a greeting in use, changing and replacing it. */
export function greetingSuite(opened: () => Store) {
  const { scope, set, inUse } = setting(opened);

  it('a greeting is in use with its words and days, and the same one again changes nothing', async () => {
    expect(await inUse()).toBeNull();
    const { id, actId } = await set(HELLO);
    expect(actId).toBeNull();
    expect(await inUse()).toMatchObject({ id, words: HELLO, ...WEEK });
    expect(await set(HELLO, { ...WEEK, evenings: 'every' })).toEqual({ id, actId: null });
    expect(await inUse()).toMatchObject({ evenings: 'first' });
  });

  it('a new one takes the place of the old one, and taking that back brings the old one with its days', async () => {
    const before = await inUse();
    const { id, actId } = await set(VOICE, { ...WEEK, last: NO_LAST_DAY });
    expect(await inUse()).toMatchObject({ id, words: VOICE, last: NO_LAST_DAY });
    const undo = { teacherId: scope().teacherId, actId: actId ?? '', now: MORNING };
    await undoAct(opened(), undo);
    expect(await inUse()).toEqual(before);
    expect((await undoAct(opened(), undo)).again).toBe(true);
    expect(await inUse()).toEqual(before);
  });

  it('its days are changed by its own id only, and never to end before they begin', async () => {
    const before = await inUse();
    const greetingId = before?.id ?? '';
    const change = (by: Partial<GreetingTimes>, id = greetingId) =>
      changeGreeting(opened(), scope(), { greetingId: id, change: by });
    await change({ evenings: 'every', last: FRIDAY });
    expect(await inUse()).toMatchObject({ evenings: 'every', first: MONDAY, last: FRIDAY });
    expect(await codeOf(change({ last: addDays(MONDAY, -1) }))).toBe('invalid');
    expect(await codeOf(change({}, scope().teacherId))).toBe('not_found');
    expect(await inUse()).toMatchObject({ last: FRIDAY });
  });

  it('nothing to read and too much are refused, and what is in use stays', async () => {
    const before = await inUse();
    for (const body of ['', '  \n ', 'a'.repeat(501)]) {
      expect(await codeOf(set({ kind: 'text', body, botId: null }))).toBe('invalid');
    }
    expect(await inUse()).toEqual(before);
    expect(await codeOf(set({ kind: 'text', body: '🙂'.repeat(500), botId: null }))).toBe(
      'accepted',
    );
  });
}

/** Taking a greeting out of use, and deleting its words. */
export function greetingEndSuite(opened: () => Store) {
  const { scope, set, inUse, rows } = setting(opened);
  beforeAll(async () => {
    await set(VOICE);
    await set(HELLO);
  });

  it('removed it is out of use at once; back again only while no other is in use', async () => {
    const greetingId = (await inUse())?.id ?? '';
    const actId = await removeGreeting(opened(), scope(), { greetingId, now: MORNING });
    expect(await inUse()).toBeNull();
    const again = removeGreeting(opened(), scope(), { greetingId, now: MORNING });
    expect(await codeOf(again)).toBe('not_found');
    const { id } = await set(HELLO);
    const undo = undoAct(opened(), { teacherId: scope().teacherId, actId, now: MORNING });
    expect(await codeOf(undo)).toBe('conflict');
    expect((await inUse())?.id).toBe(id);
  });

  it('words are deleted a day after they went out of use, and not before', async () => {
    const gone = (await rows()).filter((row) => row.removed_at !== null);
    expect(gone.length).toBeGreaterThan(1);
    await purgeGreetings(opened(), new Date(MORNING.getTime() + DAY_MS));
    expect((await rows()).every((row) => row.body !== '')).toBe(true);
    await purgeGreetings(opened(), new Date(MORNING.getTime() + DAY_MS + 1_000));
    const left = (await rows()).filter((row) => row.body !== '');
    expect(left.map((row) => row.id)).toEqual([(await inUse())?.id]);
  });

  it('a greeting whose week is over can be given another for two weeks; then its words are deleted', async () => {
    const at = (days: number) => new Date(Date.parse(`${WEEK.last}T12:00:00Z`) + days * DAY_MS);
    await purgeGreetings(opened(), at(14));
    expect((await inUse())?.words).toEqual(HELLO);
    await purgeGreetings(opened(), at(15));
    expect(await inUse()).toBeNull();
    expect((await rows()).map((row) => row.body)).toEqual((await rows()).map(() => ''));
    expect((await set(HELLO)).actId).toBeNull();
  });
}
