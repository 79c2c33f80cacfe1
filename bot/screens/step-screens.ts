import type { SchoolClass } from '../../db/index.ts';
import { canMix, type Rung, rungById, rungsOf, STRANDS, type Strand } from '../../drills/index.ts';
import { unpackPlace } from '../callback/plan-place.ts';
import { BUTTONS, choiceButton, usualButton } from '../texts/buttons.ts';
import { gradeName } from '../texts/grades.ts';
import { strandName } from '../texts/part-title.ts';
import { chooseStep, chooseStrand, stepLabel } from '../texts/steps.ts';
import { pageOf } from './pages.ts';
import { toPlan } from './plan-screens.ts';
import { runGroups } from './run-groups.ts';
import { runGroupScreen, runGroupsScreen } from './run-screens.ts';
import { button, rows, type Screen } from './screen.ts';
import {
  type Choosing,
  type Listing,
  legendOf,
  listButton,
  type StepList,
  stepButton,
  usualOf,
  waysOut,
} from './step-listing.ts';

/** Steps one page offers at most: what a phone shows without scrolling. */
export const STEPS_A_PAGE = 10;

/**
 * What a part practises, at the place it has or will have. A strand with usual steps is marked, and that of the present step
 * ticked. For a step to be mixed in, only strands that mix with the part are offered.
 */
export function chooseStrandScreen(schoolClass: SchoolClass, choosing: Choosing): Screen {
  const { id: classId } = schoolClass;
  const { part, present } = choosing;
  const { slot } = unpackPlace(part);
  const here = present.flatMap((id) => rungById(id)?.strand ?? []);
  const first = slot > 0 ? here[0] : undefined;
  const strands = STRANDS.filter((strand) => first === undefined || canMix(first, strand)).map(
    (strand) => {
      const label = usualButton(strandName(strand), usualOf(schoolClass, strand).length > 0);
      const isPresent = here.includes(strand);
      return button(choiceButton(label, isPresent), { kind: 'planStrand', classId, part, strand });
    },
  );
  return {
    text: chooseStrand(gradeName(schoolClass), slot > 0),
    buttons: [...rows(strands, 2), [toPlan(classId, part)]],
  };
}

/** Which step of a strand a part practises: those usual in the class's grade first, where there are any. */
export function firstStepsScreen(
  schoolClass: SchoolClass,
  choosing: Choosing,
  strand: Strand,
): Screen {
  return stepsScreen(schoolClass, choosing, { strand, of: 'usual', page: 0 });
}

/**
 * One list of a strand's steps, easier ones first. All the steps of counting are many, so they are found by their group. A list
 * that is not there (any more) shows all steps.
 */
export function stepsScreen(schoolClass: SchoolClass, choosing: Choosing, list: StepList): Screen {
  const usual = usualOf(schoolClass, list.strand);
  const grade = gradeName(schoolClass);
  const listing = { classId: schoolClass.id, ...choosing, list, grade, usual };
  if (list.of === 'usual' && usual.length > 0) return pagedScreen(listing, usual);
  const all = { ...listing, list: { ...list, of: 'all' } };
  if (list.strand !== 'counting') return pagedScreen(all, rungsOf(list.strand));
  const group = runGroups().find(({ id }) => id === list.of);
  return group ? runGroupScreen(listing, group) : runGroupsScreen(all);
}

function pagedScreen(listing: Listing, steps: readonly Rung[]): Screen {
  const { list } = listing;
  const { shown, page, pages } = pageOf(steps, list.page, STEPS_A_PAGE);
  const turn = (label: string, to: number) => listButton(listing, label, { ...list, page: to });
  const turns = [
    ...(page > 0 ? [turn(BUTTONS.easier, page - 1)] : []),
    ...(page < pages - 1 ? [turn(BUTTONS.harder, page + 1)] : []),
  ];
  return {
    text: chooseStep(list.strand, legendOf(listing, shown), page, pages),
    buttons: [
      ...shown.map((rung) => [stepButton(listing, rung, stepLabel(rung))]),
      ...(turns.length > 0 ? [turns] : []),
      ...waysOut(listing),
    ],
  };
}
