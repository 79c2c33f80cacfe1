import {
  dropDraft,
  getScheme,
  loadDraft,
  moveScheme,
  planInForceAt,
  removeSchemeWeek,
  repeatSchemeWeek,
  retireScheme,
  type Store,
  saveSchemeWeek,
  startScheme,
  type TeacherScope,
} from '../../db/index.ts';
import { MONDAY, MORNING, PLAN, TUESDAY } from '../support/term.ts';

const now = MORNING;
const second = { week: 2, of: 2, now } as const;

/** A term of two weeks from Monday on; every class that a scoped verb is tried on has it. */
export const TERM = { firstDay: MONDAY, weeks: [PLAN, PLAN], instead: null, now } as const;

/** A call of every verb about the draft and the term. Each wants a class with {@link TERM}. */
export const TERM_VERBS: Readonly<
  Record<string, (store: Store, scope: TeacherScope) => Promise<unknown>>
> = {
  dropDraft: (store, scope) => dropDraft(store, scope, now),
  getScheme: (store, scope) => getScheme(store, scope),
  loadDraft: (store, scope) => loadDraft(store, scope, { plan: PLAN, source: 'scheme', now }),
  moveScheme: (store, scope) => moveScheme(store, scope, { from: MONDAY, to: TUESDAY, now }),
  planInForceAt: (store, scope) => planInForceAt(store, scope, now),
  removeSchemeWeek: (store, scope) => removeSchemeWeek(store, scope, second),
  repeatSchemeWeek: (store, scope) => repeatSchemeWeek(store, scope, second),
  retireScheme: (store, scope) => retireScheme(store, scope, now),
  saveSchemeWeek: (store, scope) => saveSchemeWeek(store, scope, { week: 1, plan: PLAN, now }),
  startScheme: (store, scope) => startScheme(store, scope, TERM),
};
