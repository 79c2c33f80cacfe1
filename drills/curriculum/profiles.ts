import type { RungId, Strand } from '../ladder/rung.ts';
import { RUNGS } from '../ladder/rungs.ts';
import { ACARA } from './acara.ts';
import { CAPS } from './caps/caps.ts';
import { CCSS } from './ccss/ccss.ts';
import { ENGLAND } from './england/england.ts';
import type { Curriculum, Grade, Statement } from './statement.ts';

/** The stored name of a profile. */
export type ProfileId = 'england' | 'ccss' | 'caps' | 'acara' | 'own';

/**
 * A curriculum as a suggestion of rungs. What a class practises is the school's business and its teacher's choice: a profile only
 * says what is usual, and forbids nothing.
 */
export interface Profile extends Curriculum {
  readonly id: ProfileId;
}

/** A rung that is usual in a grade, and the first statement it rests on; null in the profile `own`, which rests on none. */
export interface UsualRung {
  readonly rung: RungId;
  readonly statement: Statement | null;
}

const BY_ID: Readonly<Record<ProfileId, Profile>> = {
  england: { id: 'england', ...ENGLAND },
  ccss: { id: 'ccss', ...CCSS },
  caps: { id: 'caps', ...CAPS },
  acara: { id: 'acara', ...ACARA },
  own: { id: 'own', title: 'our own order', grades: [], statements: [] },
};

/**
 * Every profile. How statements were turned into rungs (ours): a rung is usual in a grade where its whole range lies inside what
 * a statement of that grade asks, in the head or on paper, with the rungs that lead up to it; where a range ends between two rungs, the
 * largest inside it is taken (counting to 120 gives counting to 100). A nought at the edge does not count against a rung. Where
 * counting has no stated limit, 100 is taken; doubling without one follows the year's adding. Work with objects or drawings,
 * numerals alone and division are not placed. `own` asks for nothing: it has no grades, and every rung.
 *
 * @example
 * PROFILES.map(({ id }) => id); // ['england', 'ccss', 'caps', 'acara', 'own']
 */
export const PROFILES: readonly Profile[] = Object.values(BY_ID);

/**
 * The profile stored under this id; null when there is none.
 *
 * @example
 * profileById('caps')?.title; // 'South Africa, CAPS and teaching plan 2022'
 */
export function profileById(id: string): Profile | null {
  return PROFILES.find((profile) => profile.id === id) ?? null;
}

/**
 * The grades a profile names, youngest first; none for `own`.
 *
 * @example
 * gradesOf('ccss')[0]; // { id: 'K', label: 'Kindergarten' }
 */
export function gradesOf(profile: ProfileId): readonly Grade[] {
  return BY_ID[profile].grades;
}

/**
 * The rungs usual in a grade, in ladder order, of one strand when it is given. The profile `own` gives every rung, whatever the
 * grade. Throws RangeError for a grade that the profile does not name.
 *
 * @example
 * usualRungs('ccss', 'K', 'bonds').map(({ rung }) => rung); // ['bonds.within5', 'bonds.make10']
 */
export function usualRungs(
  profile: ProfileId,
  grade: string,
  strand?: Strand,
): readonly UsualRung[] {
  const rungs = RUNGS.filter((rung) => strand === undefined || rung.strand === strand);
  if (profile === 'own') return rungs.map(({ id }) => ({ rung: id, statement: null }));
  const asked = statementsOf(BY_ID[profile], grade);
  return rungs.flatMap(({ id }) => {
    const statement = asked.find((each) => each.rungs.includes(id));
    return statement === undefined ? [] : [{ rung: id, statement }];
  });
}

/**
 * Whether a rung is usual in a grade. Always so in the profile `own`. Throws RangeError for a grade that the profile does not
 * name.
 *
 * @example
 * isUsual('caps', '1', 'clock.half'); // false
 */
export function isUsual(profile: ProfileId, grade: string, rung: RungId): boolean {
  if (profile === 'own') return true;
  return statementsOf(BY_ID[profile], grade).some(({ rungs }) => rungs.includes(rung));
}

function statementsOf({ title, grades, statements }: Profile, grade: string) {
  if (!grades.some(({ id }) => id === grade)) {
    const known = grades.map(({ id }) => id).join(', ');
    throw new RangeError(`${title} has no grade ${grade}; its grades are ${known}`);
  }
  return statements.filter((statement) => statement.grade === grade);
}
