import type { ClassGrade, SchoolClass } from '../../db/index.ts';
import { gradesOf, type Profile } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { bold, lines, name, type Text } from './words.ts';

/** A class's grade and curriculum: `Year 2, England`; null while no grade is chosen. Grades stay as they were published. */
export function gradeName({ curriculum, grade }: ClassGrade): string | null {
  if (curriculum === 'own') return null;
  const chosen = gradesOf(curriculum).find(({ id }) => id === grade);
  if (!chosen) return null;
  return say('grades-name', { grade: chosen.label, curriculum: say(`grades-${curriculum}`) });
}

/** Choosing the curriculum by which steps are usual. */
export function chooseCurriculum(schoolClass: SchoolClass): Text {
  const grade = gradeName(schoolClass);
  return lines(
    bold(say('grades-title', { class: name(schoolClass.title) })),
    grade ? say('grades-now', { grade }) : say('grades-none'),
    say('grades-only-sorts'),
    say('grades-which-curriculum'),
  );
}

/** Choosing the grade of a curriculum. */
export function chooseGrade(profile: Profile): Text {
  const curriculum = profile.title;
  return lines(bold(say('grades-which', { curriculum })), say('grades-only-sorts'));
}
