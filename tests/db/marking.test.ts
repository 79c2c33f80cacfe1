import { describe, expect, it } from 'vitest';
import { closePart, getEvening, openMarking, type Store, toggleMissed } from '../../db/index.ts';
import { aClass, aFamily } from '../support/people.ts';
import { anEvening, markPart } from '../support/practice.ts';
import { dumpAll } from '../support/raw-rows.ts';
import { sharedStore } from '../support/shared-store.ts';
import { dearBackends } from '../support/stores.ts';
import { evening, MONDAY, TUESDAY } from '../support/term.ts';
import { aMarkableEvening } from './marked-evening.ts';
import { oneByOneSuite } from './one-by-one.suite.ts';

const NOW = evening(MONDAY, 10);
const ALL_RIGHT = { kind: 'all_right' } as const;
const TAPPED = { kind: 'tapped' } as const;

describe.each(dearBackends)('marking on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('of cards', () => cards(opened));
  describe('twice', () => twice(opened));
  describe('from an older screen', () => older(opened));
  describe('of a run', () => runs(opened));
  describe('one by one', () => oneByOneSuite(opened));
});

function cards(opened: () => Store) {
  const toggle = (scope: Parameters<typeof toggleMissed>[1], card: number, part = 0) =>
    toggleMissed(opened(), scope, { part, card, now: NOW });

  it('a card tapped twice is as before, and done stores one mark a card', async () => {
    const { scope, rows, read } = await aMarkableEvening(opened());
    await openMarking(opened(), scope, { part: 0, now: NOW });
    for (const card of [3, 1, 3, 4]) await toggle(scope, card);
    expect((await read()).marking).toEqual({ part: 0, missed: [1, 4] });
    await closePart(opened(), scope, { part: 0, verdict: TAPPED, now: NOW });
    const view = await read();
    expect(view.marking).toBeNull();
    expect(view.results[0]).toMatchObject({ right: 3, asked: 5, missed: [1, 4], revision: 1 });
    const [part] = view.drill.parts;
    const marks = (await rows('mark')).sort((a, b) => Number(a.card) - Number(b.card));
    expect(marks.map((row) => row.fact)).toEqual(part?.kind === 'facts' ? part.cards : []);
    expect(marks.map((row) => row.right)).toEqual([true, false, true, true, false]);
  });

  it('a tap that says what its button showed turns the card once, however often it is handled', async () => {
    const { scope, read } = await aMarkableEvening(opened());
    await openMarking(opened(), scope, { part: 0, now: NOW });
    const tap = (wasMissed: boolean) =>
      toggleMissed(opened(), scope, { part: 0, card: 2, wasMissed, now: NOW });
    await tap(true);
    expect((await read()).marking?.missed).toEqual([]);
    await tap(false);
    await tap(false);
    expect((await read()).marking?.missed).toEqual([2]);
    await tap(true);
    expect((await read()).marking?.missed).toEqual([]);
  });

  it('all right needs no opening and no taps', async () => {
    const { scope, read } = await aMarkableEvening(opened());
    await closePart(opened(), scope, { part: 2, verdict: ALL_RIGHT, now: NOW });
    const { results } = await read();
    expect(results.map((result) => result?.right ?? null)).toEqual([null, null, 8]);
  });

  it('a tap on a card or part that is not open changes nothing', async () => {
    const { scope } = await aMarkableEvening(opened());
    const quiet = async (work: () => Promise<unknown>) => {
      const before = await dumpAll(opened());
      await work();
      expect(await dumpAll(opened())).toEqual(before);
    };
    await quiet(() => toggle(scope, 0));
    await quiet(() => openMarking(opened(), scope, { part: 3, now: NOW }));
    await quiet(() => closePart(opened(), scope, { part: 0, verdict: TAPPED, now: NOW }));
    await quiet(() => closePart(opened(), scope, { part: 3, verdict: ALL_RIGHT, now: NOW }));
    await openMarking(opened(), scope, { part: 0, now: NOW });
    for (const card of [-1, 5, 0.5, Number.NaN]) await quiet(() => toggle(scope, card));
    await quiet(() => toggle(scope, 0, 2));
    await quiet(() => openMarking(opened(), scope, { part: 0, now: NOW }));
    await quiet(() => closePart(opened(), scope, { part: 2, verdict: TAPPED, now: NOW }));
  });
}

function twice(opened: () => Store) {
  it('the same done twice stores one set of marks', async () => {
    const { scope, rows } = await aMarkableEvening(opened());
    await markPart(opened(), scope, { part: 0, missed: [2], now: NOW });
    const before = await dumpAll(opened());
    await closePart(opened(), scope, { part: 0, verdict: TAPPED, now: NOW });
    await closePart(opened(), scope, { part: 0, verdict: ALL_RIGHT, now: NOW });
    expect(await dumpAll(opened())).toEqual(before);
    expect(await rows('mark')).toHaveLength(5);
  });

  it('two helpers at once store one set of marks, by one of them', async () => {
    const { scope, rows, family } = await aMarkableEvening(opened());
    const scopes = family.helpers.map(({ id }) => ({ ...scope, helperId: id }));
    await Promise.all(
      [...scopes, ...scopes].map((own) =>
        closePart(opened(), own, { part: 0, verdict: ALL_RIGHT, now: NOW }),
      ),
    );
    const marks = await rows('mark');
    expect(marks).toHaveLength(5);
    expect(new Set(marks.map((row) => row.helper_id)).size).toBe(1);
  });

  it('taps by two helpers at once are all kept', async () => {
    const { scope, read, family } = await aMarkableEvening(opened());
    await openMarking(opened(), scope, { part: 2, now: NOW });
    const taps = [0, 1, 2, 3, 4, 5].map((card) =>
      toggleMissed(
        opened(),
        { ...scope, helperId: family.helpers[card % 2]?.id ?? '' },
        { part: 2, card, now: NOW },
      ),
    );
    await Promise.all(taps);
    expect((await read()).marking?.missed).toEqual([0, 1, 2, 3, 4, 5]);
  });

  it('a correction begins with the cards missed so far, and appends; the old marks stay', async () => {
    const { scope, rows, read } = await aMarkableEvening(opened());
    await markPart(opened(), scope, { part: 0, missed: [0, 1], now: NOW });
    const old = await rows('mark');
    await openMarking(opened(), scope, { part: 0, now: NOW });
    expect((await read()).marking?.missed).toEqual([0, 1]);
    await toggleMissed(opened(), scope, { part: 0, card: 1, now: NOW });
    await closePart(opened(), scope, { part: 0, verdict: TAPPED, now: NOW });
    const marks = await rows('mark');
    expect(marks).toEqual(expect.arrayContaining(old));
    expect(marks.filter((row) => row.revision === 2)).toHaveLength(5);
    expect(marks).toHaveLength(10);
    expect((await read()).results[0]).toMatchObject({ right: 4, missed: [0], revision: 2 });
    expect(await rows('part_score')).toHaveLength(1);
  });

  it('an evening’s own score is not among the earlier ones it is compared with', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const family = await aFamily(store, classroom);
    const monday = await anEvening(store, classroom, family);
    await markPart(store, monday.scope, { part: 0, missed: [0], now: NOW });
    const tuesday = await anEvening(store, classroom, family, { on: TUESDAY });
    const now = evening(TUESDAY, 10);
    await closePart(store, tuesday.scope, { part: 0, verdict: ALL_RIGHT, now });
    const earlier = async (scope: typeof monday.scope) =>
      (await getEvening(store, scope)).results[0]?.earlier;
    expect(await earlier(tuesday.scope)).toEqual([4]);
    expect(await earlier(monday.scope)).toEqual([]);
  });
}

function older(opened: () => Store) {
  it('all right wipes no cards that another helper tapped as missed', async () => {
    const { scope, rows, read, family } = await aMarkableEvening(opened());
    const other = { ...scope, helperId: family.helpers[1]?.id ?? '' };
    const allRight = () => closePart(opened(), other, { part: 0, verdict: ALL_RIGHT, now: NOW });
    await openMarking(opened(), scope, { part: 0, now: NOW });
    for (const card of [1, 3]) await toggleMissed(opened(), scope, { part: 0, card, now: NOW });
    await allRight();
    expect(await rows('mark')).toEqual([]);
    expect((await read()).marking).toEqual({ part: 0, missed: [1, 3] });
    for (const card of [1, 3]) await toggleMissed(opened(), scope, { part: 0, card, now: NOW });
    await allRight();
    expect((await read()).results[0]).toMatchObject({ right: 5, asked: 5 });
  });

  it('cards tapped in one part do not hold up another part', async () => {
    const { scope, read } = await aMarkableEvening(opened());
    await openMarking(opened(), scope, { part: 0, now: NOW });
    await toggleMissed(opened(), scope, { part: 0, card: 1, now: NOW });
    await closePart(opened(), scope, { part: 2, verdict: ALL_RIGHT, now: NOW });
    expect((await read()).results[2]).toMatchObject({ right: 8 });
  });
}

function runs(opened: () => Store) {
  const say = (scope: Parameters<typeof closePart>[1], said: number, part = 1) =>
    closePart(opened(), scope, { part, verdict: { kind: 'said', said }, now: NOW });

  it.each([0, 6, 10])('a run of ten may be said as far as %d', async (said) => {
    const { scope, rows, read } = await aMarkableEvening(opened());
    await say(scope, said);
    expect((await read()).results[1]).toMatchObject({ right: said, asked: 10, missed: [] });
    expect((await rows('run_result')).map((row) => row.said)).toEqual([said]);
  });

  it('a run that is all right was said to its end', async () => {
    const { scope, rows } = await aMarkableEvening(opened());
    await closePart(opened(), scope, { part: 1, verdict: ALL_RIGHT, now: NOW });
    expect((await rows('run_result')).map((row) => row.said)).toEqual([10]);
  });

  it.each([-1, 11, 2.5, Number.NaN])('%d of ten numbers is ignored', async (said) => {
    const { scope } = await aMarkableEvening(opened());
    const before = await dumpAll(opened());
    await say(scope, said);
    expect(await dumpAll(opened())).toEqual(before);
  });

  it('cards are not said and a run is not tapped', async () => {
    const { scope } = await aMarkableEvening(opened());
    await openMarking(opened(), scope, { part: 1, now: NOW });
    const before = await dumpAll(opened());
    await say(scope, 3, 0);
    await closePart(opened(), scope, { part: 1, verdict: TAPPED, now: NOW });
    await toggleMissed(opened(), scope, { part: 1, card: 0, now: NOW });
    expect(await dumpAll(opened())).toEqual(before);
  });

  it('a corrected run appends; the old result stays', async () => {
    const { scope, rows, read } = await aMarkableEvening(opened());
    await say(scope, 4);
    await openMarking(opened(), scope, { part: 1, now: NOW });
    await say(scope, 9);
    const results = await rows('run_result');
    expect(results.map((row) => `${row.revision}:${row.said}`).sort()).toEqual(['1:4', '2:9']);
    expect((await read()).results[1]).toMatchObject({ right: 9, revision: 2 });
  });
}
