import { AppError, getClass, updateClass } from '../../db/index.ts';
import { profileById } from '../../drills/index.ts';
import { curriculumScreen, gradeScreen, NO_GRADE } from '../screens/grade-screens.ts';
import { readPlanScreen } from './read-plan.ts';
import type { TapHandlers } from './tap.ts';
import { turn } from './turn.ts';

/** Everything a teacher can tap about the curriculum and grade that steps are sorted by. */
export const gradeTaps: TapHandlers<'curriculum' | 'grades' | 'chooseGrade'> = {
  curriculum: (tap, { classId }) =>
    turn(tap, classId, async (scope) => curriculumScreen(await getClass(tap.deps.store, scope))),
  grades: (tap, { classId, curriculum }) =>
    turn(tap, classId, async (scope) => {
      const schoolClass = await getClass(tap.deps.store, scope);
      const profile = profileById(curriculum);
      return profile ? gradeScreen(schoolClass, profile) : curriculumScreen(schoolClass);
    }),
  chooseGrade: (tap, { classId, curriculum, grade }) =>
    turn(tap, classId, async (scope) => {
      const profile = profileById(curriculum);
      if (!profile) throw new AppError('invalid', 'curriculum');
      const changes = { curriculum: profile.id, grade: grade === NO_GRADE ? null : grade };
      await updateClass(tap.deps.store, scope, { changes, now: tap.deps.clock.now() });
      return readPlanScreen(tap.deps.store, scope, tap.deps.clock.now());
    }),
};
