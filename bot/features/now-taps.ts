import {
  getClass,
  getPlans,
  instantAt,
  listBreaks,
  listChildren,
  listPastEvenings,
  localTimeAt,
  type SchoolClass,
  type TeacherScope,
} from '../../db/index.ts';
import {
  addDays,
  type EveningStatus,
  isSchoolDay,
  nextSchoolDay,
  type SchoolDay,
  weekdayOf,
} from '../../drills/index.ts';
import type { BotDeps } from '../deps.ts';
import { childPagesScreen, classNowScreen } from '../screens/now-screens.ts';
import type { Screen } from '../screens/screen.ts';
import type { ClassNow } from '../texts/class-now.ts';
import { digestFor } from './digest-source.ts';
import type { TapHandlers } from './tap.ts';
import { turn } from './turn.ts';

/** How a class stands today, and the way to each child's page. */
export const nowTaps: TapHandlers<'classNow' | 'childPages'> = {
  classNow: (tap, { classId }) => turn(tap, classId, (scope) => readNow(tap.deps, scope)),
  childPages: (tap, { classId, page }) =>
    turn(tap, classId, async (scope) => {
      const { store, clock } = tap.deps;
      const schoolClass = await getClass(store, scope);
      const children = await listChildren(store, scope);
      const { day: today } = localTimeAt(clock.now(), schoolClass.zone);
      const statuses = await statusesOn(tap.deps, classId, today);
      const practised = new Set(
        [...statuses].flatMap(([childId, status]) => (status === 'practised' ? [childId] : [])),
      );
      return childPagesScreen(schoolClass, children, practised, page);
    }),
};

/** A class's standing today. */
export async function readNow(deps: BotDeps, scope: TeacherScope): Promise<Screen> {
  const { store } = deps;
  const { schoolClass, today, summary } = await digestFor(deps, scope, 'now');
  const children = await listChildren(store, scope);
  const { active } = await getPlans(store, scope);
  const statuses = await statusesOn(deps, scope.classId, today);
  const of = (status: EveningStatus) => children.filter(({ id }) => statuses.get(id) === status);
  const stand = {
    title: schoolClass.title,
    day: today,
    practised: of('practised').map(({ nickname }) => nickname),
    notToday: of('not_today').length,
    waiting: of('silent').length,
    unsent: of('unsent').length,
    evening: await eveningOf(deps, schoolClass, today),
    plan: active?.plan ?? null,
    children: children.length,
    week: summary,
  };
  return classNowScreen(scope.classId, stand, lastDigestDay(schoolClass, deps.clock.now()));
}

/** The day of the digest that came last; null before the class's first. */
function lastDigestDay(schoolClass: SchoolClass, now: Date): SchoolDay | null {
  const { zone, digestWeekday, digestTime, digestSince } = schoolClass;
  const { day } = localTimeAt(now, zone);
  const ago = (weekdayOf(day) - digestWeekday + 7) % 7;
  const latest = addDays(day, -ago);
  const last = now < instantAt(latest, digestTime, zone) ? addDays(latest, -7) : latest;
  return instantAt(last, digestTime, zone) < digestSince ? null : last;
}

/** How each child's evening of a day stands, by child; a child without one is not in it. */
async function statusesOn(
  { store }: BotDeps,
  classId: string,
  day: SchoolDay,
): Promise<ReadonlyMap<string, EveningStatus>> {
  const evenings = await listPastEvenings(store, { classId, from: day, until: day });
  return new Map(evenings.map(({ childId, status }) => [childId, status]));
}

async function eveningOf(
  { store, clock }: BotDeps,
  schoolClass: SchoolClass,
  today: SchoolDay,
): Promise<ClassNow['evening']> {
  const { id, weekdays, eveningTime: time, zone } = schoolClass;
  const calendar = { weekdays, breaks: await listBreaks(store, id, today) };
  if (!isSchoolDay(today, calendar)) return { kind: 'none', next: nextSchoolDay(today, calendar) };
  return { kind: clock.now() < instantAt(today, time, zone) ? 'ahead' : 'past', time };
}
