import {
  addDays,
  type ChildWeek,
  type FamilyPace,
  HISTORY_DAYS,
  paceStand,
  type SchoolDay,
  SILENCE_DAYS,
  silentRun,
  type Weekday,
  type WeekInput,
} from '../../drills/index.ts';
import { localTimeAt } from '../calendar/zone.ts';
import { childrenOfClass, type ListedChild } from '../children/list-children.ts';
import { getRunningClass } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { listPastEvenings, type PastEvening } from '../evenings/history.ts';
import { classPaces } from '../pace/read-pace.ts';
import { readEvenings } from './evening-records.ts';
import { readClassMemory } from './read-class-memory.ts';

/** An evening sent less long ago than this and not marked yet is not shown as one without an answer. */
const ANSWER_MS = 2 * 60 * 60_000;

/**
 * Everything a digest is computed from: the marks that count, of the school days named; the scores of four weeks; what the
 * children remember at `now`. As many queries for sixty children as for one.
 *
 * An evening may be marked until its own day is over, so one of today, in the class's zone at `now`, never counts as silence.
 * Unmarked, it has a record as `silent` once it was sent two hours ago; before that it has none.
 */
export async function readWeek(
  store: Store,
  input: { classId: string; days: readonly SchoolDay[]; now: Date },
): Promise<WeekInput> {
  const { classId, days, now } = input;
  const first = days.at(0);
  const last = days.at(-1);
  const children = await childrenOfClass(store, classId);
  const { zone, weekdays } = await getRunningClass(store, classId);
  const { day: today } = localTimeAt(now, zone);
  if (!first || !last) return { days: [], today, children: children.map(emptyWeek) };
  const from = addDays(last, -Math.max(SILENCE_DAYS, HISTORY_DAYS));
  const past = byChild(await listPastEvenings(store, { classId, from, until: last }));
  const oldest = addDays(last, 1 - HISTORY_DAYS);
  const evenings = await readEvenings(
    store,
    { classId, first: oldest, last },
    { classId, first, last },
  );
  const isEarlier = ({ status, day }: PastEvening) =>
    status === 'practised' && day >= oldest && day < first;
  const memory = await readClassMemory(store, classId);
  // Of the week under way things as they are, of a past one as they were.
  const at = last < addDays(today, -6) ? last : today;
  const paceOf = await classPaces(store, { classId, at });
  const isOver = (each: PastEvening) => each.status !== 'silent' || each.day < today;
  const answerable = new Date(now.getTime() - ANSWER_MS);
  const isTold = (each: PastEvening) => each.status !== 'silent' || each.plannedAt <= answerable;
  return {
    days,
    today,
    children: children.map((child) => {
      const own = past.get(child.id) ?? [];
      return {
        ...emptyWeek(child),
        ...paceAt(paceOf(child.id).pace, own.filter(isOver), at, weekdays),
        evenings: own.filter((each) => each.day >= first && isTold(each)).map(evenings.record),
        earlier: own.filter(isEarlier).map(evenings.scores),
        memory: memory.get(child.id) ?? new Map(),
      };
    }),
  };
}

/**
 * What a family's pace is or was, and its silence: what came before the family last said how often the drill shall
 * come is none any more.
 */
function paceAt(
  pace: FamilyPace,
  evenings: readonly PastEvening[],
  at: SchoolDay,
  weekdays: readonly Weekday[],
): Pick<ChildWeek, 'silentRun' | 'pace'> {
  const stand = paceStand(pace, at, weekdays);
  const { heard } = pace;
  const run = silentRun(evenings.filter(({ day }) => heard === null || day > heard));
  return { silentRun: run, ...(stand ? { pace: stand } : {}) };
}

function byChild(evenings: readonly PastEvening[]): Map<string, PastEvening[]> {
  const past = new Map<string, PastEvening[]>();
  for (const evening of evenings) {
    past.set(evening.childId, [...(past.get(evening.childId) ?? []), evening]);
  }
  return past;
}

function emptyWeek(child: ListedChild): ChildWeek {
  return {
    childId: child.id,
    number: child.number,
    nickname: child.nickname,
    joined: child.helpers > 0,
    left: child.left,
    reachable: child.reachable > 0,
    silentRun: 0,
    evenings: [],
    earlier: [],
    memory: new Map(),
  };
}
