import { expect, it } from 'vitest';
import {
  closePart,
  type HelperScope,
  judgeCard,
  listDueReminders,
  listNudgeCandidates,
  listPastEvenings,
  listUnmarkedDrills,
  openMarking,
  remindLater,
  type Store,
  showAnswer,
  startEvening,
  stopEvening,
  toggleMissed,
} from '../../db/index.ts';
import { settleEvening } from '../support/deliveries.ts';
import { dumpAll } from '../support/raw-rows.ts';
import { evening, MONDAY } from '../support/term.ts';
import { aMarkableEvening } from './marked-evening.ts';

const NOW = evening(MONDAY, 10);
const ALL_RIGHT = { kind: 'all_right' } as const;

/** "Stop for today", and going on after all. */
export function stoppingSuite(opened: () => Store) {
  stopping(opened);
  goingOn(opened);
}

function stopping(opened: () => Store) {
  const stop = (scope: HelperScope) => stopEvening(opened(), scope, NOW);
  async function statusOf(classId: string, childId: string) {
    const [past] = await listPastEvenings(opened(), { classId, childId, from: MONDAY });
    return past?.status;
  }

  it('keeps what is marked, and open parts are no score at all', async () => {
    const { scope, rows, read, family } = await aMarkableEvening(opened());
    await closePart(opened(), scope, { part: 0, verdict: ALL_RIGHT, now: NOW });
    await stop(scope);
    const view = await read();
    expect(view).toMatchObject({ stopped: true, declined: false });
    expect(view.results.map((result) => result?.right ?? null)).toEqual([5, null, null]);
    expect(await rows('part_score')).toHaveLength(1);
    expect(await statusOf(view.classId, family.child.id)).toBe('practised');
  });

  it('without a mark is an answer like “not today”, never silence', async () => {
    const { scope, read } = await aMarkableEvening(opened());
    await startEvening(opened(), scope, NOW);
    await settleEvening(opened(), scope.eveningId, 'sent', NOW);
    const { classId, childId } = await read();
    expect(await statusOf(classId, childId)).toBe('silent');
    await stop(scope);
    expect(await statusOf(classId, childId)).toBe('not_today');
  });

  it('has nothing more sent that day, and nothing drawn for it', async () => {
    const { scope, read } = await aMarkableEvening(opened());
    await remindLater(opened(), scope, { at: evening(MONDAY, 40), now: NOW });
    await stop(scope);
    const { classId, remindAt } = await read();
    expect(remindAt).toBeNull();
    const now = evening(MONDAY, 80);
    const [candidate] = await listNudgeCandidates(opened(), { classId, day: MONDAY, now });
    expect(candidate).toMatchObject({ declined: true, reminded: false });
    const due = await listDueReminders(opened(), evening(MONDAY, 41));
    expect(due.filter(({ eveningId }) => eveningId === scope.eveningId)).toEqual([]);
    expect(await listUnmarkedDrills(opened(), { classId, day: MONDAY })).toEqual([]);
  });
}

function goingOn(opened: () => Store) {
  const stop = (scope: HelperScope) => stopEvening(opened(), scope, NOW);
  const quiet = async (work: () => Promise<unknown>) => {
    const before = await dumpAll(opened());
    await work();
    expect(await dumpAll(opened())).toEqual(before);
  };

  it('twice changes nothing, nor after everything is marked', async () => {
    const { scope } = await aMarkableEvening(opened());
    await stop(scope);
    await quiet(() => stopEvening(opened(), scope, evening(MONDAY, 20)));
    const other = await aMarkableEvening(opened());
    for (const part of [0, 1, 2]) {
      await closePart(opened(), other.scope, { part, verdict: ALL_RIGHT, now: NOW });
    }
    await quiet(() => stop(other.scope));
  });

  it('keeps a half-marked part for going on after all', async () => {
    const { scope, read } = await aMarkableEvening(opened());
    const at = { part: 0, now: NOW };
    await showAnswer(opened(), scope, { ...at, card: 0 });
    await judgeCard(opened(), scope, { ...at, card: 0, right: false });
    const { marking } = await read();
    await stop(scope);
    expect((await read()).marking).toEqual(marking);
    await startEvening(opened(), scope, NOW);
    expect(await read()).toMatchObject({ stopped: false, started: true, marking });
  });

  it('is taken back by whoever marks an open part, and not by changing a mark', async () => {
    const { scope, read } = await aMarkableEvening(opened());
    await closePart(opened(), scope, { part: 0, verdict: ALL_RIGHT, now: NOW });
    await stop(scope);
    await openMarking(opened(), scope, { part: 0, now: NOW });
    await toggleMissed(opened(), scope, { part: 0, card: 1, now: NOW });
    await closePart(opened(), scope, { part: 0, verdict: { kind: 'tapped' }, now: NOW });
    expect(await read()).toMatchObject({ stopped: true, results: [{ right: 4 }, null, null] });
    await closePart(opened(), scope, { part: 2, verdict: ALL_RIGHT, now: NOW });
    expect((await read()).stopped).toBe(false);
  });

  it('drops a correction that was begun; the marks stay', async () => {
    const { scope, read } = await aMarkableEvening(opened());
    await closePart(opened(), scope, { part: 0, verdict: ALL_RIGHT, now: NOW });
    await openMarking(opened(), scope, { part: 0, now: NOW });
    await toggleMissed(opened(), scope, { part: 0, card: 1, now: NOW });
    await stop(scope);
    expect(await read()).toMatchObject({ marking: null, results: [{ right: 5 }, null, null] });
  });
}
