import { and, desc, eq, inArray, lte, type SQL } from 'drizzle-orm';
import {
  DRILL_RATES,
  type FamilyPace,
  type SchoolDay,
  START_PACE,
  WEEKDAYS,
} from '../../drills/index.ts';
import { storedDay } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { child, pace } from '../schema/index.ts';

/** A family's pace as it is stored. `saidAt` is when the family or a teacher last said something about it. */
export interface StoredPace {
  readonly pace: FamilyPace;
  readonly step: number;
  readonly saidAt: Date | null;
}

const NOTHING_STORED: StoredPace = { pace: START_PACE, step: 0, saidAt: null };

/** Reads families' paces as they are, or as they were at the end of a day. A child without a row has the start's. */
export type PaceReader = (childId: string) => StoredPace;

/** The paces of some children. */
export function pacesOf(store: Store, childIds: readonly string[]): Promise<PaceReader> {
  return read(store, inArray(pace.childId, [...childIds]));
}

/** The paces of a class's children, at the end of a day when one is named. */
export function classPaces(
  store: Store,
  { classId, at }: { classId: string; at?: SchoolDay },
): Promise<PaceReader> {
  const ofClass = store.db.select({ id: child.id }).from(child).where(eq(child.classId, classId));
  const until = at === undefined ? undefined : lte(pace.day, at);
  return read(store, and(inArray(pace.childId, ofClass), until));
}

async function read({ db }: Store, which: SQL | undefined): Promise<PaceReader> {
  const rows = await db
    .selectDistinctOn([pace.childId])
    .from(pace)
    .where(which)
    .orderBy(pace.childId, desc(pace.step));
  const found = new Map(rows.map((row) => [row.childId, storedPace(row)]));
  return (childId) => found.get(childId) ?? NOTHING_STORED;
}

function storedPace(row: typeof pace.$inferSelect): StoredPace {
  const rate = DRILL_RATES.find((candidate) => candidate === row.rate);
  if (!rate) throw new TypeError('stored rate is none of ours');
  const { announcedOn: on, announcedFrom: from, days, kept, step, saidAt } = row;
  return {
    step,
    saidAt,
    pace: {
      rate,
      rateFrom: dayOrNull(row.rateFrom),
      announced: on === null || from === null ? null : { on: storedDay(on), from: storedDay(from) },
      kept,
      heard: dayOrNull(row.heard),
      pausedUntil: dayOrNull(row.pausedUntil),
      days: days === null ? null : WEEKDAYS.filter((weekday) => days.includes(weekday)),
      // Told by who helps the child, and stored there alone.
      stopped: false,
    },
  };
}

function dayOrNull(text: string | null): SchoolDay | null {
  return text === null ? null : storedDay(text);
}
