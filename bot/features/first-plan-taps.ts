import {
  AppError,
  getClass,
  loadDraft,
  localTimeAt,
  type SchoolClass,
  type TeacherScope,
  updateClass,
} from '../../db/index.ts';
import { firstPlan, gradesOf, type Profile, profileById } from '../../drills/index.ts';
import { firstPlanScreen } from '../screens/set-up-screens.ts';
import { noFirstPlan } from '../texts/set-up.ts';
import { readPlanScreen } from './read-plan.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';

/** A plan to begin with, made from the steps usual in the class's grade at this time of the school year. */
export const firstPlanTaps: TapHandlers<'firstPlan' | 'firstPlanFor'> = {
  firstPlan: async (tap, { classId, curriculum }) => {
    const scope = await teacherScope(tap.deps.store, tap.userId, classId);
    const schoolClass = await getClass(tap.deps.store, scope);
    const { grade } = schoolClass;
    if (curriculum === 'guess' && grade !== null) return offer(tap, scope, schoolClass);
    await tap.answer();
    const profile = curriculum === 'guess' ? guessed(schoolClass) : profileById(curriculum);
    await tap.show(firstPlanScreen(schoolClass, graded(profile)));
  },
  firstPlanFor: async (tap, { classId, curriculum, grade }) => {
    const { store, clock } = tap.deps;
    const scope = await teacherScope(store, tap.userId, classId);
    const profile = profileById(curriculum);
    if (!profile) throw new AppError('invalid', 'curriculum');
    const changes = { curriculum: profile.id, grade };
    await offer(tap, scope, await updateClass(store, scope, { changes, now: clock.now() }));
  },
};

/** Puts the plan into the draft and shows it, to be looked at before it is used. */
async function offer(tap: Tap, scope: TeacherScope, schoolClass: SchoolClass): Promise<void> {
  const { store, clock } = tap.deps;
  const now = clock.now();
  const { curriculum, grade, zone } = schoolClass;
  const { day } = localTimeAt(now, zone);
  const plan = firstPlan({ curriculum, grade: grade ?? '', day });
  if (plan.parts.length === 0) {
    await tap.answer(noFirstPlan(), 'alert');
    return tap.show(await readPlanScreen(store, scope, now));
  }
  const act = await loadDraft(store, scope, { plan, source: 'teacher', now });
  await tap.answer();
  await tap.show(await readPlanScreen(store, scope, now, act));
}

/** The curriculum that is asked for where a time zone is, as a first guess. From memory; the teacher can choose another. */
const BY_ZONE: readonly (readonly [RegExp, Profile['id']])[] = [
  [/^Europe\/London$/, 'england'],
  [/^Africa\/Johannesburg$/, 'caps'],
  [/^Australia\//, 'acara'],
  [
    /^(?:America\/(?:New_York|Detroit|Chicago|Denver|Phoenix|Los_Angeles|Anchorage)|Pacific\/Honolulu|US\/)/,
    'ccss',
  ],
];

function guessed({ zone, curriculum }: SchoolClass): Profile | null {
  const own = graded(profileById(curriculum));
  const guess = BY_ZONE.find(([zones]) => zones.test(zone))?.[1];
  return own ?? (guess ? profileById(guess) : null);
}

function graded(profile: Profile | null): Profile | null {
  return profile && gradesOf(profile.id).length > 0 ? profile : null;
}
