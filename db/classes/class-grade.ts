import { gradesOf, type ProfileId, profileById } from '../../drills/index.ts';
import { AppError } from '../errors.ts';

/** By which curriculum and grade a class's steps are shown as usual. A class without a grade has every step alike. */
export interface ClassGrade {
  readonly curriculum: ProfileId;
  readonly grade: string | null;
}

/** Refuses a curriculum there is none of (`curriculum`) and a grade it does not name (`grade`). */
export function checkClassGrade({ curriculum, grade }: ClassGrade): ClassGrade {
  if (!profileById(curriculum)) throw new AppError('invalid', 'curriculum');
  if (grade !== null && !hasGrade(curriculum, grade)) throw new AppError('invalid', 'grade');
  return { curriculum, grade };
}

/** The grade a class keeps under another curriculum: its own where that names it, none where it does not. */
export function gradeKept(curriculum: ProfileId, grade: string | null): string | null {
  return grade !== null && profileById(curriculum) && hasGrade(curriculum, grade) ? grade : null;
}

/** A stored curriculum and grade. */
export function storedClassGrade(row: { curriculum: string; grade: string | null }): ClassGrade {
  const profile = profileById(row.curriculum);
  if (!profile) throw new TypeError('stored curriculum is none of ours');
  if (row.grade !== null && !hasGrade(profile.id, row.grade)) {
    throw new TypeError('stored grade is none of its curriculum');
  }
  return { curriculum: profile.id, grade: row.grade };
}

function hasGrade(curriculum: ProfileId, grade: string): boolean {
  return gradesOf(curriculum).some(({ id }) => id === grade);
}
