import {
  type Clock,
  currentBook,
  previewDrill,
  type Store,
  type TeacherScope,
} from '../../db/index.ts';
import { checkPlan } from '../../drills/index.ts';
import { sendScreen } from '../chat/show.ts';
import { type Preview, previewScreen } from '../screens/preview-screen.ts';
import { NEW_PREVIEW, OFFERED, unpackPreview } from '../screens/preview-state.ts';
import { planProblem } from '../texts/plan.ts';
import { previewOver } from '../texts/preview.ts';
import { readPlanScreen, workingPlan } from './read-plan.ts';
import type { TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';
import { readTermStand } from './term-stand.ts';

/** A preview of the plan as a family gets it. */
export const previewTaps: TapHandlers<'preview' | 'previewEnd'> = {
  preview: async (tap, { classId, at }) => {
    const { deps, userId } = tap;
    const scope = await teacherScope(deps.store, userId, classId);
    const { plan } = await workingPlan(deps.store, scope);
    const [problem] = checkPlan(plan);
    if (problem) return tap.answer(planProblem(problem), 'alert');
    const preview = await readPreview(deps, scope);
    await tap.answer();
    // A message that has shown a picture cannot become a text again, so the plan's own message is left alone.
    if (at === NEW_PREVIEW) return sendScreen(deps, userId, previewScreen(preview, OFFERED, deps));
    await tap.show(previewScreen(preview, unpackPreview(at), deps));
  },
  previewEnd: async (tap, { classId }) => {
    const { deps, userId } = tap;
    const scope = await teacherScope(deps.store, userId, classId);
    const plan = await readPlanScreen(deps.store, scope, deps.clock.now());
    await tap.answer();
    await tap.show({ text: previewOver(), buttons: [] });
    await sendScreen(deps, userId, plan);
  },
};

/** The drill of a child that is not there: its seed is the class's, and no mark is known of it. */
export async function readPreview(
  { store, clock }: { readonly store: Store; readonly clock: Clock },
  scope: TeacherScope,
): Promise<Preview> {
  const { schoolClass, next: day } = await readTermStand(store, scope, clock.now());
  const { plan, isDraft } = await workingPlan(store, scope);
  const book = await currentBook(store, scope);
  return {
    schoolClass,
    day,
    drill: await previewDrill(store, { childId: schoolClass.id, day, plan }),
    isDraft,
    book: book && {
      title: book.title,
      from: book.firstPage,
      to: Math.min(book.firstPage + book.pagesADay - 1, book.lastPage),
      last: book.lastPage,
      next: null,
    },
  };
}
