import type { SchoolClass } from '../../db/index.ts';
import { type Rung, rungsOf, type Strand } from '../../drills/index.ts';
import { BUTTONS, usualButton } from '../texts/buttons.ts';
import type { Legend } from '../texts/steps.ts';
import { toPlan } from './plan-screens.ts';
import { type Button, button } from './screen.ts';
import { usualSteps } from './usual-steps.ts';

/** Which steps of a strand are listed: `usual`, `all`, or a group of counting runs by its id. */
export interface StepList {
  readonly strand: Strand;
  readonly of: string;
  readonly page: number;
}

/** What every list of steps is drawn from. */
export interface Listing {
  readonly classId: string;
  /** The place in the plan that a step is chosen for. */
  readonly part: number;
  readonly list: StepList;
  /** The class's grade in words; null while none is chosen. */
  readonly grade: string | null;
  /** The strand's steps that are usual in the grade. */
  readonly usual: readonly Rung[];
}

/** The steps of a strand that are usual in a class's grade, easier ones first; none while no grade is chosen. */
export function usualOf(schoolClass: SchoolClass, strand: Strand): readonly Rung[] {
  const usual = usualSteps(schoolClass);
  return rungsOf(strand).filter(({ id }) => usual.has(id));
}

/** For which grade the sign on the buttons stands, and whether it is on any of the steps shown. */
export function legendOf({ grade, usual }: Listing, shown: readonly Rung[]): Legend {
  return { grade, isSeen: shown.some((rung) => usual.includes(rung)) };
}

/** Chooses a step; one that is usual is marked. */
export function stepButton({ classId, part, usual }: Listing, rung: Rung, label: string): Button {
  const choice = { kind: 'planRung', classId, part, rung: rung.id } as const;
  return button(usualButton(label, usual.includes(rung)), choice);
}

/** Opens another list of steps. */
export function listButton({ classId, part }: Listing, label: string, list: StepList): Button {
  return button(label, { kind: 'planSteps', classId, part, ...list });
}

/** The ways out of a list: the other lists of the strand, the other strands, and the plan. */
export function waysOut(listing: Listing): Button[][] {
  const { classId, part, list, usual } = listing;
  const to = (label: string, of: string) => listButton(listing, label, { ...list, of, page: 0 });
  const strands = button(BUTTONS.allStrands, { kind: 'planStrand', classId, part, strand: 'all' });
  return [
    [
      ...(usual.length > 0 && list.of !== 'usual' ? [to(BUTTONS.usualSteps, 'usual')] : []),
      ...(list.of === 'all' ? [] : [to(BUTTONS.allSteps, 'all')]),
      strands,
    ],
    [toPlan(classId)],
  ];
}
