import type { ClassGrade } from '../../db/index.ts';
import {
  type Grade,
  gradesOf,
  isUsual,
  type RungId,
  type Statement,
  usualRungs,
} from '../../drills/index.ts';

/** The steps that are usual in a class's grade, each with what it rests on; none while no grade is chosen. */
export function usualSteps({ curriculum, grade }: ClassGrade): ReadonlyMap<RungId, Statement> {
  if (grade === null) return new Map();
  return new Map(
    usualRungs(curriculum, grade).flatMap(({ rung, statement }) =>
      statement ? [[rung, statement] as const] : [],
    ),
  );
}

/** The grades of a class's curriculum in which a step is usual, while a grade is chosen. */
export function usualGrades({ curriculum, grade }: ClassGrade, rung: RungId): readonly Grade[] {
  if (grade === null) return [];
  return gradesOf(curriculum).filter(({ id }) => isUsual(curriculum, id, rung));
}
