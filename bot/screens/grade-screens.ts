import type { SchoolClass } from '../../db/index.ts';
import { PROFILES, type Profile } from '../../drills/index.ts';
import { BUTTONS, choiceButton } from '../texts/buttons.ts';
import * as texts from '../texts/grades.ts';
import { toPlan } from './plan-screens.ts';
import { button, rows, type Screen } from './screen.ts';

/** What a button says for a class without a grade. No curriculum calls a grade so. */
export const NO_GRADE = 'none';

/** By which curriculum steps are usual; the one without grades is chosen at once. */
export function curriculumScreen(schoolClass: SchoolClass): Screen {
  const { id: classId } = schoolClass;
  const buttons = PROFILES.map(({ id: curriculum, title, grades }) => {
    const isChosen = schoolClass.curriculum === curriculum;
    return grades.length > 0
      ? button(choiceButton(title, isChosen), { kind: 'grades', classId, curriculum })
      : button(choiceButton(BUTTONS.noCurriculum, isChosen), {
          kind: 'chooseGrade',
          classId,
          curriculum,
          grade: NO_GRADE,
        });
  });
  return {
    text: texts.chooseCurriculum(schoolClass),
    buttons: [...buttons.map((each) => [each]), [toPlan(classId, 0)]],
  };
}

/** Which grade of a curriculum the class is in. */
export function gradeScreen(schoolClass: SchoolClass, profile: Profile): Screen {
  const { id: classId } = schoolClass;
  const curriculum = profile.id;
  const buttons = profile.grades.map(({ id: grade, label }) => {
    const isChosen = schoolClass.curriculum === curriculum && schoolClass.grade === grade;
    const choice = { kind: 'chooseGrade', classId, curriculum, grade } as const;
    return button(choiceButton(label, isChosen), choice);
  });
  return {
    text: texts.chooseGrade(profile),
    buttons: [
      ...rows(buttons, 2),
      [button(BUTTONS.otherCurriculum, { kind: 'curriculum', classId })],
      [toPlan(classId, 0)],
    ],
  };
}
