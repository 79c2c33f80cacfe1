import { describe, expect, test } from 'vitest';
import { type ChildWeek, decideNudge, summariseWeek } from '../../../drills/index.ts';
import { child, FRIDAY, practised, unmarked, WEEK } from '../support/week.ts';

const weekOf = (...children: ChildWeek[]) => summariseWeek({ days: WEEK, today: FRIDAY, children });

describe('whom to phone', () => {
  test('the unreachable come first, then the longest silence, then who left, then who never joined', () => {
    const { calls } = weekOf(
      child(1, { joined: false }),
      child(2, { silentRun: 2 }),
      child(3, { silentRun: 6 }),
      child(4, { reachable: false, silentRun: 1 }),
      child(5, { silentRun: 1 }),
      child(6, { joined: false, left: true, silentRun: 2 }),
    );
    expect(calls.map(({ number, reason, evenings }) => [number, reason, evenings])).toEqual([
      [4, 'unreachable', 1],
      [3, 'silent', 6],
      [2, 'silent', 2],
      [6, 'left', 0],
      [1, 'not_joined', 0],
    ]);
  });

  test('a call names the child as the teacher knows it', () => {
    expect(weekOf(child(7, { nickname: 'Juniper', silentRun: 3 })).calls).toEqual([
      { childId: 'child-7', number: 7, nickname: 'Juniper', reason: 'silent', evenings: 3 },
    ]);
  });

  test('one silent evening is no reason to phone', () => {
    expect(weekOf(child(1, { silentRun: 1 })).calls).toEqual([]);
  });

  test('all are listed, by class list when equally urgent', () => {
    const { calls } = weekOf(
      ...[9, 3, 8, 1, 7, 5, 2].map((number) => child(number, { silentRun: 4 })),
    );
    expect(calls.map(({ number }) => number)).toEqual([1, 2, 3, 5, 7, 8, 9]);
  });

  test('two evenings in a row that were not delivered are a reason, with how many; one is none', () => {
    const unsent = (...days: number[]) => days.map((at) => unmarked(at, 'unsent'));
    const { calls } = weekOf(
      child(1, { evenings: [practised(0), ...unsent(1, 2, 3)] }),
      child(2, { evenings: [practised(0), practised(1), ...unsent(2)] }),
      child(3, { evenings: [...unsent(0, 1), practised(2)] }),
    );
    expect(calls).toMatchObject([{ number: 1, reason: 'undelivered', evenings: 3 }]);
  });

  test('an evening of the day itself may still be on its way', () => {
    const evenings = [practised(0), unmarked(3, 'unsent'), unmarked(4, 'unsent')];
    expect(weekOf(child(1, { evenings })).calls).toEqual([]);
  });

  test('a family is phoned from the very evening on that it is nudged no more', () => {
    const answered = { marked: false, declined: false, alreadyNudged: false, reminded: false };
    const state = { ...answered, paused: false };
    const runs = [0, 1, 2, 3, 4];
    const phoned = runs.filter((silentRun) => weekOf(child(1, { silentRun })).calls.length > 0);
    const unnudged = runs.filter(
      (silentRunBefore) => !decideNudge({ ...state, silentRunBefore }).nudge,
    );
    expect(phoned).toEqual([2, 3, 4]);
    expect(unnudged).toEqual(phoned);
  });

  test('a family that never joined is not called unreachable', () => {
    const { calls } = weekOf(child(1, { joined: false, reachable: false, silentRun: 4 }));
    expect(calls[0]).toMatchObject({ reason: 'not_joined', evenings: 0 });
  });
});
