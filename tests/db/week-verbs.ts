import {
  acceptProposal,
  activatePlan,
  getActivePlan,
  listClasses,
  readChildPast,
  type Store,
  type TeacherScope,
} from '../../db/index.ts';
import { MORNING, PLAN } from '../support/term.ts';

const now = MORNING;

/** A call of every verb about a week and a child's past that takes a TeacherScope. */
export const WEEK_VERBS: Readonly<
  Record<string, (store: Store, scope: TeacherScope) => Promise<unknown>>
> = {
  acceptProposal: async (store, scope) => {
    const classes = await listClasses(store, scope.teacherId);
    // The class has a draft only. A stranger meets the verb itself, whatever it is pointed at.
    const isOwn = classes.some(({ id }) => id === scope.classId);
    if (isOwn) await activatePlan(store, scope, now);
    const active = await getActivePlan(store, scope.classId);
    return acceptProposal(store, scope, { plan: PLAN, madeFrom: active?.id ?? scope.classId, now });
  },
  readChildPast: (store, scope) => readChildPast(store, scope, { number: 1, weeks: 6, now }),
};
