import {
  activatePlan,
  addBreak,
  addChildren,
  childrenGivenSlips,
  closePart,
  countSlips,
  declineEvening,
  getBook,
  getClass,
  getEvening,
  getPlans,
  type HelperScope,
  issueSlips,
  keepSlips,
  listChildren,
  openMarking,
  recordPages,
  remindLater,
  removeBreak,
  retireBook,
  type Store,
  saveDraftPlan,
  setBook,
  startEvening,
  type TeacherScope,
  toggleMissed,
  updateClass,
  writeSlips,
} from '../../db/index.ts';
import { evening, MONDAY, MORNING, PLAN, TUESDAY } from '../support/term.ts';

/** What a teacher-side verb may be pointed at besides the class itself. */
export interface ClassThings {
  readonly breakId: string;
  readonly childId: string;
}

type TeacherVerb = (store: Store, scope: TeacherScope, things: ClassThings) => Promise<unknown>;
type HelperVerb = (store: Store, scope: HelperScope) => Promise<unknown>;

const now = MORNING;
const later = evening(MONDAY, 10);
const BOOK = { title: 'Pebble Path', firstPage: 1, lastPage: 40, pagesADay: 2 };

/** A call of every verb that takes a TeacherScope. A new one belongs here. */
export const TEACHER_VERBS: Readonly<Record<string, TeacherVerb>> = {
  activatePlan: (store, scope) => activatePlan(store, scope, now),
  addBreak: (store, scope) =>
    addBreak(store, scope, { break: { first: MONDAY, last: TUESDAY }, title: 'Fair', now }),
  addChildren: (store, scope) => addChildren(store, scope, { nicknames: ['Juniper'], now }),
  childrenGivenSlips: (store, scope) => childrenGivenSlips(store, scope, 0),
  countSlips: (store, scope) => countSlips(store, scope),
  getBook: (store, scope) => getBook(store, scope),
  getClass: (store, scope) => getClass(store, scope),
  getPlans: (store, scope) => getPlans(store, scope),
  issueSlips: (store, scope, { childId }) => issueSlips(store, scope, { childIds: [childId], now }),
  keepSlips: (store, scope, { childId }) => {
    const child = { id: childId, number: 1, nickname: 'Wren' };
    return keepSlips(store, scope, { slips: [{ child, code: 'A'.repeat(22) }], now });
  },
  listChildren: (store, scope) => listChildren(store, scope),
  removeBreak: (store, scope, { breakId }) => removeBreak(store, scope, { breakId, now }),
  retireBook: (store, scope) => retireBook(store, scope, now),
  saveDraftPlan: (store, scope) => saveDraftPlan(store, scope, { plan: PLAN, now }),
  setBook: (store, scope) => setBook(store, scope, { book: BOOK, now }),
  updateClass: (store, scope) =>
    updateClass(store, scope, { changes: { title: 'Heron class' }, now }),
  writeSlips: (store, scope, { childId }) => writeSlips(store, scope, [childId]),
};

/** A call of every verb that takes a HelperScope. A new one belongs here. */
export const HELPER_VERBS: Readonly<Record<string, HelperVerb>> = {
  closePart: (store, scope) =>
    closePart(store, scope, { part: 0, verdict: { kind: 'tapped' }, now: later }),
  declineEvening: (store, scope) => declineEvening(store, scope, later),
  getEvening: (store, scope) => getEvening(store, scope),
  openMarking: (store, scope) => openMarking(store, scope, { part: 2, now: later }),
  recordPages: (store, scope) => recordPages(store, scope, { pages: 2, now: later }),
  remindLater: (store, scope) => remindLater(store, scope, { at: evening(MONDAY, 40), now: later }),
  startEvening: (store, scope) => startEvening(store, scope, later),
  toggleMissed: (store, scope) => toggleMissed(store, scope, { part: 0, card: 1, now: later }),
};

/**
 * Verbs without an owner's scope, and why: they act for the engine, for a code, for an account by its own id, or on values
 * alone.
 */
export const UNSCOPED: Readonly<Record<string, readonly string[]>> = {
  'values only': [
    'AppError',
    'checkClassSettings',
    'instantAt',
    'isEveningTime',
    'isTitle',
    'localTimeAt',
    'parseZone',
    'problemOf',
    'storedDay',
    'storedTime',
    'toSchoolClass',
  ],
  'opening a store': ['claimStore', 'openEmbedded', 'openServer'],
  'a code is the key': [
    'acceptSlip',
    'acceptTeacherInvite',
    'hasTeachers',
    'issueTeacherInvite',
    'readJoinedSlip',
    'readSlip',
  ],
  'an account’s own id is the key': [
    'createClass',
    'dropExpectation',
    'expectText',
    'findEvening',
    'findHelperByChat',
    'findTeacherByChat',
    'getWay',
    'leaveAll',
    'listClasses',
    'listFamilyChildren',
    'markReachable',
    'markUnreachable',
    'noteSeen',
    'readExpectation',
    'setEveningTime',
    'setWay',
  ],
  'the planners’ and the engine’s own work': [
    'bookInUse',
    'childrenOfClass',
    'claimDelivery',
    'claimUpdates',
    'countOutstanding',
    'currentMarks',
    'digestDays',
    'findFile',
    'findFollower',
    'finishUpdate',
    'forgetCopy',
    'forgetFile',
    'getActivePlan',
    'getRunningClass',
    'giveUpAttempts',
    'isDigestOwed',
    'listBreaks',
    'listCopies',
    'listDueChildren',
    'listDueReminders',
    'listNudgeCandidates',
    'listPastEvenings',
    'listRunningClasses',
    'listUnmarkedDrills',
    'nextPages',
    'nextTryAt',
    'oweAgain',
    'oweDigest',
    'oweHelpers',
    'oweTeachers',
    'pagesDone',
    'pauseSending',
    'planEvening',
    'postponeDelivery',
    'previewDrill',
    'purgeUpdates',
    'readDelivery',
    'readEvening',
    'readMemory',
    'readWeek',
    'rebuildAll',
    'refreshAllMemory',
    'refreshMemory',
    'retryUpdate',
    'returnAbandoned',
    'returnUpdates',
    'saveFile',
    'setAsideUpdate',
    'settleDelivery',
    'storeUpdates',
    'takeSendSlot',
    'wakeWaiting',
  ],
};
