import type { SchoolClass } from '../../db/index.ts';
import { type Rung, type RungId, rungsOf, type Strand } from '../../drills/index.ts';
import { BUTTONS, choiceButton, usualButton } from '../texts/buttons.ts';
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

/** For which place in a plan (see plan-place) a step is chosen, and the steps that stand there now. */
export interface Choosing {
  readonly part: number;
  readonly present: readonly RungId[];
}

/** What every list of steps is drawn from. */
export interface Listing extends Choosing {
  readonly classId: string;
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

/** Chooses a step; one that is usual is marked, and the one that is there now is ticked. */
export function stepButton(listing: Listing, rung: Rung, label: string): Button {
  const { classId, part, usual, present } = listing;
  const choice = { kind: 'planRung', classId, part, rung: rung.id } as const;
  const marked = usualButton(label, usual.includes(rung));
  return button(choiceButton(marked, present.includes(rung.id)), choice);
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
    [toPlan(classId, part)],
  ];
}
