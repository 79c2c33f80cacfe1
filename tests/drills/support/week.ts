import type { ChildWeek, EveningRecord, FactId, PartScore, RungId } from '../../../drills/index.ts';
import { rungById } from '../../../drills/index.ts';
import { day } from './day.ts';

/** Monday to Friday of one school week. */
export const WEEK = ['2026-09-07', '2026-09-08', '2026-09-09', '2026-09-10', '2026-09-11'].map(day);

/** The Friday on which the week is told. */
export const FRIDAY = day('2026-09-11');

/** One child of the class list, joined and reachable unless said otherwise. */
export function child(number: number, rest: Partial<ChildWeek> = {}): ChildWeek {
  return {
    childId: `child-${number}`,
    number,
    nickname: `Wren ${number}`,
    joined: true,
    left: false,
    reachable: true,
    silentRun: 0,
    evenings: [],
    earlier: [],
    memory: new Map(),
    ...rest,
  };
}

/** The marked evening of the week's day `at`, counted from 0. */
export function practised(at: number, rest: Partial<EveningRecord> = {}): EveningRecord {
  return { ...unmarked(at, 'practised'), ...rest };
}

/** An evening of the week's day `at` without marks. */
export function unmarked(at: number, status: EveningRecord['status']): EveningRecord {
  const on = WEEK[at];
  if (on === undefined) throw new Error(`the week has no day ${at}`);
  return { day: on, status, parts: [], facts: [], runs: [], pages: null };
}

/** One marked part. */
export function score(id: RungId, right: number, asked: number): PartScore {
  const rung = rungById(id);
  if (rung === null) throw new Error(`no such rung: ${id}`);
  return { strand: rung.strand, rung: id, right, asked };
}

/** Marks of facts: `missed` ones and `right` ones. */
export function facts(marks: { missed?: FactId[]; right?: FactId[] }): EveningRecord['facts'] {
  const { missed = [], right = [] } = marks;
  return [
    ...missed.map((fact) => ({ fact, right: false })),
    ...right.map((fact) => ({ fact, right: true })),
  ];
}
