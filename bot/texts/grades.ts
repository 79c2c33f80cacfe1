import type { ClassGrade, SchoolClass } from '../../db/index.ts';
import { gradesOf, type Profile, type ProfileId } from '../../drills/index.ts';
import { bold, lines, name, type Text } from './words.ts';

/** Each curriculum by a name that fits on a button beside a grade. */
const CURRICULA: Readonly<Record<Exclude<ProfileId, 'own'>, string>> = {
  england: 'England',
  ccss: 'Common Core',
  caps: 'South Africa',
  acara: 'Australia',
};

const ONLY_SORTS = 'This only sorts the steps you are shown: your school’s own curriculum decides.';

/** A class's grade and curriculum: `Year 2, England`; null while no grade is chosen. */
export function gradeName({ curriculum, grade }: ClassGrade): string | null {
  if (curriculum === 'own') return null;
  const chosen = gradesOf(curriculum).find(({ id }) => id === grade);
  return chosen ? `${chosen.label}, ${CURRICULA[curriculum]}` : null;
}

/** Choosing the curriculum by which steps are usual. */
export function chooseCurriculum(schoolClass: SchoolClass): Text {
  const grade = gradeName(schoolClass);
  return lines(
    bold(`${name(schoolClass.title)}: usual steps`),
    grade ? `Now: ${grade}.` : 'Now: no grade, every step alike.',
    ONLY_SORTS,
    'Which curriculum is nearest to yours?',
  );
}

/** Choosing the grade of a curriculum. */
export function chooseGrade(profile: Profile): Text {
  return lines(bold(`${profile.title}: which grade?`), ONLY_SORTS);
}
