import {
  type ChildPast,
  type FactId,
  type FactMemory,
  MEMORY_MODEL,
  type Month,
  monthDue,
  rebuildMemory,
} from '../../drills/index.ts';
import { localTimeAt } from '../calendar/zone.ts';
import { listBreaks } from '../classes/breaks.ts';
import type { Store } from '../connection/db.ts';
import { type FamilyScope, readTie } from '../helpers/relation.ts';
import { currentMarks } from '../memory/current-marks.ts';
import { readBase } from '../memory/memory-base.ts';
import { childPast } from './child-past.ts';

/** Twelve weeks are what the picture of a child's own progress holds. */
const WEEKS = 12;

/** A child's own past as its family looks back on a month. `before` is what was known of each fact when the month began. */
export interface OwnMonth {
  readonly child: { readonly number: number; readonly nickname: string };
  readonly month: Month;
  readonly past: ChildPast;
  readonly before: ReadonlyMap<FactId, FactMemory>;
}

/** The month that an evening practised now closes for a child of this helper; null on most days. */
export async function monthToShow(
  store: Store,
  { now, ...scope }: FamilyScope & { now: Date },
): Promise<Month | null> {
  const { schoolClass } = await readTie(store, scope);
  const { day } = localTimeAt(now, schoolClass.zone);
  const breaks = await listBreaks(store, schoolClass.id, day);
  return monthDue(day, { weekdays: schoolClass.weekdays, breaks });
}

/** Reads a child's own past for one of its helpers. A child the helper does not sit beside now is `not_found`. */
export async function readOwnMonth(
  store: Store,
  { month, now, ...scope }: FamilyScope & { month: Month; now: Date },
): Promise<OwnMonth> {
  const { schoolClass, nickname, number } = await readTie(store, scope);
  const { childId } = scope;
  const past = await childPast(store, schoolClass, { childId, weeks: WEEKS, now });
  const marks = (await currentMarks(store, childId)).filter(({ day }) => day < month.first);
  const base = await readBase(store, childId, MEMORY_MODEL);
  const before = rebuildMemory(marks, MEMORY_MODEL, base);
  return { child: { number, nickname }, month, past, before };
}
