import { expect, it } from 'vitest';
import {
  getScheme,
  moveScheme,
  removeSchemeWeek,
  repeatSchemeWeek,
  retireScheme,
  type Store,
  saveSchemeWeek,
  startScheme,
  undoAct,
} from '../../db/index.ts';
import { addDays, type WeekPlan } from '../../drills/index.ts';
import { refusalOf } from '../support/code-of.ts';
import { aClass } from '../support/people.ts';

import { dumpAll } from '../support/raw-rows.ts';
import { evening, MONDAY, MORNING, PLAN, TUESDAY } from '../support/term.ts';
import { aTerm, plan, WEEKS } from './a-term.ts';

const rungsOf = (weeks: readonly WeekPlan[] = []) => weeks.map(({ parts: [part] }) => part?.rung);
const nextMonday = addDays(MONDAY, 7);

/** A term as its teacher changes it. */
export function termSuite(opened: () => Store) {
  it('has its weeks in order, and there is none before one is started', async () => {
    const { scope } = await aClass(opened());
    expect(await getScheme(opened(), scope)).toBeNull();
    const term = await aTerm(opened());
    expect(await term.read()).toMatchObject({ firstDay: MONDAY, weeks: WEEKS, changedAt: MORNING });
  });

  it('is not started when another one is in use than was thought, nor with weeks that cannot be sent', async () => {
    const { scope, read } = await aTerm(opened());
    const now = MORNING;
    const again = { firstDay: TUESDAY, weeks: WEEKS, instead: null, now };
    expect(await startScheme(opened(), scope, again)).toBeNull();
    const before = await dumpAll(opened());
    const instead = (await read())?.id ?? null;
    const tooMany = Array.from({ length: 21 }, () => plan('bonds.to10'));
    for (const [weeks, refusal] of [
      [[], 'invalid: term weeks'],
      [tooMany, 'invalid: term weeks'],
      [[{ parts: [] }], 'invalid: week plan'],
    ] as const) {
      const starting = startScheme(opened(), scope, { ...again, weeks, instead });
      expect(await refusalOf(starting)).toBe(refusal);
    }
    expect(await dumpAll(opened())).toEqual(before);
  });

  it('takes another plan for a week, and none that is faulty or for a week that is not there', async () => {
    const { scope, read } = await aTerm(opened());
    const now = evening(MONDAY);
    await saveSchemeWeek(opened(), scope, { week: 2, plan: PLAN, now });
    expect((await read())?.weeks).toEqual(WEEKS.with(1, PLAN));
    expect((await read())?.changedAt).toEqual(now);
    const saving = (week: number, faulty: WeekPlan = PLAN) =>
      refusalOf(saveSchemeWeek(opened(), scope, { week, plan: faulty, now }));
    expect(await saving(5)).toBe('not_found: term week');
    expect(await saving(0)).toBe('not_found: term week');
    expect(await saving(1, { parts: [] })).toBe('invalid: week plan');
  });

  it('repeats a week once, however often the button is tapped', async () => {
    const { scope, read } = await aTerm(opened());
    const wanted = { week: 2, of: 4, now: MORNING };
    expect(await repeatSchemeWeek(opened(), scope, wanted)).toBe(true);
    expect(await repeatSchemeWeek(opened(), scope, wanted)).toBe(false);
    expect(rungsOf((await read())?.weeks)).toEqual([
      'bonds.to10',
      'doubles.to10',
      'doubles.to10',
      'halves.to10',
      'clock.half',
    ]);
  });

  it.each([
    ['longer than twenty weeks', 20, repeatSchemeWeek, 'invalid: term weeks'],
    ['without a week', 1, removeSchemeWeek, 'invalid: only week'],
  ] as const)('is never %s', async (_what, of, verb, refusal) => {
    const { scope } = await aClass(opened());
    const weeks = Array.from({ length: of }, () => plan('bonds.to10'));
    const wish = { firstDay: MONDAY, weeks, instead: null, now: MORNING };
    expect(await startScheme(opened(), scope, wish)).not.toBeNull();
    expect(await refusalOf(verb(opened(), scope, { week: 1, of, now: MORNING }))).toBe(refusal);
    expect((await getScheme(opened(), scope))?.weeks).toHaveLength(of);
  });

  it('is moved from the day it begins on, once', async () => {
    const { scope, read } = await aTerm(opened());
    const move = { from: MONDAY, to: nextMonday, now: MORNING };
    expect(await moveScheme(opened(), scope, move)).toBe(true);
    expect(await moveScheme(opened(), scope, move)).toBe(false);
    expect((await read())?.firstDay).toBe(nextMonday);
  });
}

/** Taking back what was done to a term. */
export function termUndoSuite(opened: () => Store) {
  const undo = (actId: string | null, teacherId: string) =>
    undoAct(opened(), { teacherId, actId: actId ?? '', now: evening(MONDAY) });

  it('give a week back that was taken out, in its place', async () => {
    const { scope, read } = await aTerm(opened());
    const act = await removeSchemeWeek(opened(), scope, { week: 2, of: 4, now: MORNING });
    expect(rungsOf((await read())?.weeks)).toEqual(['bonds.to10', 'halves.to10', 'clock.half']);
    expect(await removeSchemeWeek(opened(), scope, { week: 2, of: 4, now: MORNING })).toBeNull();
    await undo(act, scope.teacherId);
    expect((await read())?.weeks).toEqual(WEEKS);
  });

  it('bring back a term that was ended, or that another one took the place of', async () => {
    const { scope, read } = await aTerm(opened());
    const first = await read();
    const ended = await retireScheme(opened(), scope, MORNING);
    expect(await read()).toBeNull();
    expect(await retireScheme(opened(), scope, MORNING)).toBeNull();
    await undo(ended, scope.teacherId);
    expect((await read())?.id).toBe(first?.id);
    const second = await startScheme(opened(), scope, {
      firstDay: TUESDAY,
      weeks: WEEKS.slice(0, 1),
      instead: first?.id ?? null,
      now: MORNING,
    });
    expect((await read())?.weeks).toHaveLength(1);
    await undo(second, scope.teacherId);
    expect((await read())?.weeks).toEqual(WEEKS);
  });

  it('are in conflict once the term is another one, and change nothing', async () => {
    const { scope, started } = await aTerm(opened());
    const removed = await removeSchemeWeek(opened(), scope, { week: 2, of: 4, now: MORNING });
    await retireScheme(opened(), scope, MORNING);
    const before = await dumpAll(opened());
    for (const act of [removed, started]) {
      expect(await refusalOf(undo(act, scope.teacherId))).toBe('conflict: term');
    }
    expect(await dumpAll(opened())).toEqual(before);
  });
}
