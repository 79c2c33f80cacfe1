import { and, eq, inArray, isNotNull } from 'drizzle-orm';
import {
  chooseDrillDay,
  everySchoolDay,
  type FamilyPace,
  pauseDrill,
  pauseProblem,
  type SchoolDay,
  startAgain,
  type Weekday,
} from '../../drills/index.ts';
import { localTimeAt } from '../calendar/zone.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { getEvening, type HelperScope } from '../evenings/get-evening.ts';
import { type FamilyChild, listFamilyChildren } from '../helpers/find-helper.ts';
import { callBack, callOff } from '../ledger/call-off.ts';
import { evening, ledger } from '../schema/index.ts';
import { changePace } from './change-pace.ts';
import { pacesOf } from './read-pace.ts';

/** What the ledger says of a message that was called off because its family paused. */
const CALLED_OFF = 'paused';

/** A helper's child and how often its drill comes. `today` is the date in its class's zone. */
export interface ChildPace {
  readonly child: FamilyChild;
  readonly pace: FamilyPace;
  readonly today: SchoolDay;
}

/** Who says something about the pace of all of their children. */
export interface PaceWord {
  readonly helperId: string;
  readonly now: Date;
}

/** How often the drill comes, for each child a helper sits beside now, in the order joined. */
export async function readFamilyPaces(
  store: Store,
  { helperId, now }: PaceWord,
): Promise<ChildPace[]> {
  const children = await listFamilyChildren(store, helperId);
  const paceOf = await pacesOf(
    store,
    children.map(({ id }) => id),
  );
  return children.map((child) => ({
    child,
    pace: paceOf(child.id).pace,
    today: localTimeAt(now, child.schoolClass.zone).day,
  }));
}

/**
 * Nothing more comes for any of a helper's children, to any of their helpers, until the day `until`: what is waiting to be sent
 * tonight and a reminder asked for are called off. A day that is over or more than 120 days ahead is `invalid` (`pause`).
 */
export async function pauseDrills(
  store: Store,
  { until, ...word }: PaceWord & { readonly until: SchoolDay },
): Promise<void> {
  await forEachChild(store, word, async (inner, { child: { id }, today }, change) => {
    if (pauseProblem(until, today)) throw new AppError('invalid', 'pause');
    await change((pace) => pauseDrill(pace, until, today));
    const kinds = inArray(ledger.kind, ['evening', 'nudge', 'reminder']);
    const which = [eq(ledger.subjectId, id), kinds] as const;
    await callOff(inner, { which, because: CALLED_OFF, now: word.now });
    await inner.db
      .update(evening)
      .set({ remindAt: null })
      .where(and(eq(evening.childId, id), isNotNull(evening.remindAt)));
  });
}

/** Ends a pause at once. Tonight's drill goes out after all when it was called off and is not too late. */
export async function startDrillsAgain(store: Store, word: PaceWord): Promise<void> {
  await forEachChild(store, word, async (inner, { child: { id }, today }, change) => {
    await change((pace) => startAgain(pace, today));
    const which = [eq(ledger.subjectId, id), eq(ledger.kind, 'evening')] as const;
    await callBack(inner, { which, because: CALLED_OFF, now: word.now });
  });
}

/**
 * Takes a weekday in or out, for all children of a helper, from the next evening on. A weekday a child's class has no school on
 * changes nothing for it; the last one of a child cannot be taken out (`invalid`, `drill days`), for none of them then.
 */
export async function setDrillDay(
  store: Store,
  { weekday, on, ...word }: PaceWord & { readonly weekday: Weekday; readonly on: boolean },
): Promise<void> {
  await forEachChild(store, word, async (_inner, { child: { schoolClass }, today }, change) => {
    const choice = { weekday, on, ofClass: schoolClass.weekdays, today };
    await change((pace) => {
      const chosen = chooseDrillDay(pace, choice);
      if (!chosen) throw new AppError('invalid', 'drill days');
      return chosen;
    });
  });
}

/** Every school day again, for all children of a helper. */
export async function setEveryDay(store: Store, word: PaceWord): Promise<void> {
  await forEachChild(store, word, async (_inner, { today }, change) => {
    await change((pace) => everySchoolDay(pace, today));
  });
}

/** Every school day again, for the child of one evening. Another family's evening is `not_found`. */
export async function bringBackDaily(store: Store, scope: HelperScope, now: Date): Promise<void> {
  await inTransaction(store, async (inner) => {
    const { childId, zone } = await getEvening(inner, scope);
    const { day } = localTimeAt(now, zone);
    const change = { childId, day, now, isWord: true };
    await changePace(inner, change, (pace) => everySchoolDay(pace, day));
  });
}

type Change = (change: (before: FamilyPace) => FamilyPace) => Promise<FamilyPace>;

/** All children or none; in the order of their ids, so that two helpers of the same children wait for each other. */
async function forEachChild(
  store: Store,
  { helperId, now }: PaceWord,
  work: (inner: Store, of: ChildPace, change: Change) => Promise<void>,
): Promise<void> {
  await inTransaction(store, async (inner) => {
    const children = await readFamilyPaces(inner, { helperId, now });
    if (children.length === 0) throw new AppError('not_found', 'child');
    for (const each of children.toSorted((a, b) => (a.child.id < b.child.id ? -1 : 1))) {
      const of = { childId: each.child.id, day: each.today, now, isWord: true };
      await work(inner, each, (change) => changePace(inner, of, change));
    }
  });
}
