import { expect, it } from 'vitest';
import {
  backOneCard,
  closePart,
  declineEvening,
  type HelperScope,
  judgeCard,
  openMarking,
  type Store,
  showAnswer,
  stopEvening,
  toggleMissed,
} from '../../db/index.ts';
import { dumpAll } from '../support/raw-rows.ts';
import { evening, MONDAY } from '../support/term.ts';
import { aMarkableEvening } from './marked-evening.ts';

const NOW = evening(MONDAY, 10);

/** One helper's taps on the cards of a store's evenings. */
function tapsIn(opened: () => Store) {
  const show = (scope: HelperScope, card: number, part = 0) =>
    showAnswer(opened(), scope, { part, card, now: NOW });
  const judge = (scope: HelperScope, card: number, right: boolean, part = 0) =>
    judgeCard(opened(), scope, { part, card, right, now: NOW });
  const back = (scope: HelperScope, card: number, part = 0) =>
    backOneCard(opened(), scope, { part, card, now: NOW });
  const quiet = async (work: () => Promise<unknown>) => {
    const before = await dumpAll(opened());
    await work();
    expect(await dumpAll(opened())).toEqual(before);
  };
  /** Goes through cards of the first part, of which these are not known yet. */
  const play = async (scope: HelperScope, notYet: readonly number[], cards = [0, 1, 2, 3, 4]) => {
    for (const card of cards) {
      await show(scope, card);
      await judge(scope, card, !notYet.includes(card));
    }
  };
  return { show, judge, back, quiet, play };
}

/** One card at a time: its answer, right or not yet, and the card before it. */
export function oneByOneSuite(opened: () => Store) {
  storing(opened);
  tapping(opened);
  sharing(opened);
}

function storing(opened: () => Store) {
  const { play } = tapsIn(opened);

  it('a part gone through is stored like any other, its marks seen card by card', async () => {
    const { scope, rows, read } = await aMarkableEvening(opened());
    await play(scope, [1, 4]);
    const view = await read();
    expect(view.marking).toBeNull();
    expect(view.started).toBe(true);
    expect(view.results[0]).toMatchObject({ right: 3, asked: 5, missed: [1, 4], revision: 1 });
    const marks = (await rows('mark')).sort((a, b) => Number(a.card) - Number(b.card));
    expect(marks.map((row) => row.right)).toEqual([true, false, true, true, false]);
    expect(new Set(marks.map((row) => row.way))).toEqual(new Set(['card']));
    expect(await rows('part_score')).toHaveLength(1);
  });

  it('what was judged so far is kept, and is the same for the child’s other helper', async () => {
    const { scope, read, family } = await aMarkableEvening(opened());
    const other = { ...scope, helperId: family.helpers[1]?.id ?? '' };
    await play(scope, [1], [0, 1]);
    expect((await read()).marking).toEqual({
      part: 0,
      missed: [1],
      single: { card: 2, shown: false },
    });
    await play(other, [2], [2, 3, 4]);
    expect((await read()).results[0]).toMatchObject({ right: 3, missed: [1, 2] });
  });
}

function tapping(opened: () => Store) {
  const { show, judge, back, quiet, play } = tapsIn(opened);

  it('each tap twice does what it did once', async () => {
    const { scope, read } = await aMarkableEvening(opened());
    await show(scope, 0);
    await quiet(() => show(scope, 0));
    await judge(scope, 0, false);
    await quiet(() => judge(scope, 0, false));
    await quiet(() => judge(scope, 0, true));
    await show(scope, 1);
    await back(scope, 1);
    await quiet(() => back(scope, 1));
    await play(scope, [], [0, 1, 2, 3, 4]);
    expect((await read()).results[0]).toMatchObject({ right: 5, missed: [] });
    await quiet(() => judge(scope, 4, false));
    await quiet(() => show(scope, 0));
  });

  it('a card that was gone back to is judged anew', async () => {
    const { scope, read } = await aMarkableEvening(opened());
    await play(scope, [0, 1], [0, 1]);
    await back(scope, 2);
    expect((await read()).marking?.single).toEqual({ card: 1, shown: false });
    await back(scope, 1);
    await quiet(() => back(scope, 0));
    await play(scope, [3]);
    expect((await read()).results[0]).toMatchObject({ missed: [3] });
  });

  it('a card is judged only once its answer was to be seen, and only where its turn is', async () => {
    const { scope } = await aMarkableEvening(opened());
    for (const card of [1, -1, 5, 0.5]) await quiet(() => show(scope, card));
    await quiet(() => judge(scope, 0, true));
    await show(scope, 0);
    await quiet(() => judge(scope, 1, true));
    await quiet(() => judge(scope, 0, true, 2));
    await quiet(() => show(scope, 0, 2));
    await judge(scope, 0, true);
    await quiet(() => judge(scope, 1, true));
    for (const part of [1, 3]) await quiet(() => show(scope, 0, part));
  });
}

function sharing(opened: () => Store) {
  const { show, judge, quiet, play } = tapsIn(opened);

  it('a part that is marked otherwise meanwhile is left as it is', async () => {
    const { scope, rows, family } = await aMarkableEvening(opened());
    const other = { ...scope, helperId: family.helpers[1]?.id ?? '' };
    await play(scope, [], [0, 1]);
    await closePart(opened(), other, { part: 0, verdict: { kind: 'all_right' }, now: NOW });
    expect((await rows('mark')).map((row) => row.helper_id)).toEqual(Array(5).fill(other.helperId));
    await quiet(() => show(scope, 2));
    await quiet(() => judge(scope, 2, false));
  });

  it('two helpers who judge the same card at once judge it once', async () => {
    const { scope, rows, family } = await aMarkableEvening(opened());
    await play(scope, [], [0, 1, 2, 3]);
    await show(scope, 4);
    await Promise.all(family.helpers.map(({ id }) => judge({ ...scope, helperId: id }, 4, false)));
    expect(await rows('mark')).toHaveLength(5);
  });

  it('a part whose cards are being tapped in a list is not asked one by one, but the other way it is', async () => {
    const { scope, read } = await aMarkableEvening(opened());
    await openMarking(opened(), scope, { part: 0, now: NOW });
    await quiet(() => show(scope, 0));
    const other = await aMarkableEvening(opened());
    await play(other.scope, [1], [0, 1]);
    await quiet(() => openMarking(opened(), other.scope, { part: 0, now: NOW }));
    await toggleMissed(opened(), other.scope, { part: 0, card: 4, now: NOW });
    await closePart(opened(), other.scope, { part: 0, verdict: { kind: 'tapped' }, now: NOW });
    expect((await other.read()).results[0]).toMatchObject({ missed: [1, 4] });
    expect((await read()).results[0]).toBeNull();
  });

  it('a correction keeps that the cards were seen one by one', async () => {
    const { scope, rows } = await aMarkableEvening(opened());
    await play(scope, [1]);
    await openMarking(opened(), scope, { part: 0, now: NOW });
    await toggleMissed(opened(), scope, { part: 0, card: 1, now: NOW });
    await closePart(opened(), scope, { part: 0, verdict: { kind: 'tapped' }, now: NOW });
    const marks = await rows('mark');
    expect(marks.filter((row) => row.revision === 2)).toHaveLength(5);
    expect(new Set(marks.map((row) => row.way))).toEqual(new Set(['card']));
  });

  it('nothing is asked while the evening is put off or stopped', async () => {
    for (const end of [declineEvening, stopEvening]) {
      const { scope } = await aMarkableEvening(opened());
      await end(opened(), scope, NOW);
      await quiet(() => show(scope, 0));
    }
  });
}
