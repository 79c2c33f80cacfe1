import {
  AppError,
  activatePlan,
  addBook,
  addBreak,
  addBreaks,
  addChildren,
  archiveClass,
  backOneCard,
  bringBackDaily,
  cancelInvite,
  changeBook,
  childrenGivenSlips,
  closePart,
  countSlips,
  currentBook,
  declineEvening,
  getBook,
  getClass,
  getEvening,
  getHolidayPlace,
  getPlans,
  getSiblingAge,
  type HelperScope,
  inviteColleague,
  issueSlips,
  judgeCard,
  keepSlips,
  leaveClass,
  listBooks,
  listChildren,
  listOpenInvites,
  listPaceStands,
  listTeachers,
  listTurns,
  moveBook,
  openMarking,
  putAwayBook,
  readPageProgress,
  recordPages,
  remindLater,
  removeBreak,
  removeTeacher,
  type Store,
  saveDraftPlan,
  setClassPage,
  setHolidayPlace,
  setKeptDaily,
  setPage,
  setSiblingAge,
  showAnswer,
  startEvening,
  stopEvening,
  type TeacherScope,
  toggleMissed,
  updateClass,
  writeSlips,
} from '../../db/index.ts';
import { evening, MONDAY, MORNING, PLAN, TUESDAY } from '../support/term.ts';
import { LIST_VERBS, type ListThings } from './child-verbs.ts';
import { GREETING_VERBS, type GreetingThings } from './greeting-verbs.ts';
import { TERM_VERBS } from './term-verbs.ts';
import { WEEK_VERBS } from './week-verbs.ts';

/** What a teacher-side verb may be pointed at besides the class itself. */
export interface ClassThings extends ListThings, GreetingThings {
  readonly breakId: string;
  readonly bookId: string;
  readonly childId: string;
}

type TeacherVerb = (store: Store, scope: TeacherScope, things: ClassThings) => Promise<unknown>;
type HelperVerb = (store: Store, scope: HelperScope) => Promise<unknown>;

const now = MORNING;
const later = evening(MONDAY, 10);
const BOOK = { title: 'Pebble Path', firstPage: 1, lastPage: 40, pagesADay: 2 };

/** Lets a refusal pass that only the class's own teacher can meet: `what` says which. */
async function reached(work: Promise<unknown>, what: string): Promise<unknown> {
  try {
    return await work;
  } catch (error) {
    if (error instanceof AppError && error.what === what) return null;
    throw error;
  }
}

/** A call of every verb that takes a TeacherScope. A new one belongs here. */
export const TEACHER_VERBS: Readonly<Record<string, TeacherVerb>> = {
  ...WEEK_VERBS,
  ...TERM_VERBS,
  ...LIST_VERBS,
  ...GREETING_VERBS,
  activatePlan: (store, scope) => activatePlan(store, scope, now),
  addBook: (store, scope, { childId }) => addBook(store, scope, { book: BOOK, childId, now }),
  addBreak: (store, scope) =>
    addBreak(store, scope, { break: { first: MONDAY, last: TUESDAY }, title: 'Fair', now }),
  addBreaks: (store, scope) => {
    const breaks = [{ break: { first: MONDAY, last: TUESDAY }, title: 'Fair' }];
    return addBreaks(store, scope, { breaks, now });
  },
  addChildren: (store, scope) => addChildren(store, scope, { nicknames: ['Juniper'], now }),
  archiveClass: (store, scope) => archiveClass(store, scope, now),
  cancelInvite: (store, scope) => cancelInvite(store, scope, { role: 'co', now }),
  changeBook: (store, scope, { bookId }) =>
    changeBook(store, scope, { bookId, changes: { pagesADay: 3 }, now }),
  childrenGivenSlips: (store, scope) => childrenGivenSlips(store, scope, 0),
  countSlips: (store, scope) => countSlips(store, scope),
  currentBook: (store, scope) => currentBook(store, scope),
  getBook: (store, scope, { bookId }) => getBook(store, scope, bookId),
  getClass: (store, scope) => getClass(store, scope),
  getHolidayPlace: (store, scope) => getHolidayPlace(store, scope),
  getPlans: (store, scope) => getPlans(store, scope),
  getSiblingAge: (store, scope) => getSiblingAge(store, scope),
  inviteColleague: (store, scope) => inviteColleague(store, scope, { role: 'co', now }),
  issueSlips: (store, scope, { childId }) => issueSlips(store, scope, { childIds: [childId], now }),
  keepSlips: (store, scope, { childId }) => {
    const child = { id: childId, number: 1, nickname: 'Wren' };
    return keepSlips(store, scope, { slips: [{ child, code: 'A'.repeat(22) }], now });
  },
  leaveClass: (store, scope) => reached(leaveClass(store, scope, now), 'lead leaves'),
  listBooks: (store, scope, { childId }) => listBooks(store, scope, childId),
  listChildren: (store, scope) => listChildren(store, scope),
  listOpenInvites: (store, scope) => listOpenInvites(store, scope, now),
  listPaceStands: (store, scope) => listPaceStands(store, scope, now),
  listTeachers: (store, scope) => listTeachers(store, scope),
  moveBook: (store, scope, { bookId }) => moveBook(store, scope, { bookId, to: 0 }),
  putAwayBook: (store, scope, { bookId }) => putAwayBook(store, scope, { bookId, now }),
  readPageProgress: (store, scope) => readPageProgress(store, scope, now),
  removeBreak: (store, scope, { breakId }) => removeBreak(store, scope, { breakId, now }),
  removeTeacher: (store, scope) =>
    reached(removeTeacher(store, scope, { teacherId: scope.teacherId, now }), 'co-teacher'),
  saveDraftPlan: (store, scope) => saveDraftPlan(store, scope, { plan: PLAN, now }),
  setClassPage: (store, scope, { bookId }) => setClassPage(store, scope, { bookId, page: 9, now }),
  setPage: (store, scope, { bookId, childId }) =>
    setPage(store, scope, { bookId, childId, page: 9, now }),
  setHolidayPlace: (store, scope) => setHolidayPlace(store, scope, 'ZA'),
  setSiblingAge: (store, scope) => setSiblingAge(store, scope, 14),
  setKeptDaily: (store, scope) => setKeptDaily(store, scope, { number: 1, on: true, now }),
  updateClass: (store, scope) =>
    updateClass(store, scope, { changes: { title: 'Heron class' }, now }),
  writeSlips: (store, scope, { childId }) => writeSlips(store, scope, [childId]),
};

/** A call of every verb that takes a HelperScope. A new one belongs here. */
export const HELPER_VERBS: Readonly<Record<string, HelperVerb>> = {
  backOneCard: (store, scope) => backOneCard(store, scope, { part: 0, card: 1, now: later }),
  bringBackDaily: (store, scope) => bringBackDaily(store, scope, later),
  closePart: (store, scope) =>
    closePart(store, scope, { part: 0, verdict: { kind: 'tapped' }, now: later }),
  declineEvening: (store, scope) => declineEvening(store, scope, later),
  getEvening: (store, scope) => getEvening(store, scope),
  judgeCard: (store, scope) =>
    judgeCard(store, scope, { part: 0, card: 0, right: true, now: later }),
  listTurns: (store, scope) => listTurns(store, scope),
  openMarking: (store, scope) => openMarking(store, scope, { part: 2, now: later }),
  recordPages: (store, scope) => recordPages(store, scope, { pages: 2, now: later }),
  remindLater: (store, scope) => remindLater(store, scope, { at: evening(MONDAY, 40), now: later }),
  showAnswer: (store, scope) => showAnswer(store, scope, { part: 0, card: 0, now: later }),
  startEvening: (store, scope) => startEvening(store, scope, later),
  stopEvening: (store, scope) => stopEvening(store, scope, later),
  toggleMissed: (store, scope) => toggleMissed(store, scope, { part: 0, card: 1, now: later }),
};

/**
 * Verbs without an owner's scope, and why: they act for the engine, for a code, for an account by its own id, or on values
 * alone.
 */
export const UNSCOPED: Readonly<Record<string, readonly string[]>> = {
  'values only': [
    'AppError',
    'CodesPaused',
    'crashedBy',
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
  'opening a store': ['claimStore', 'createTurnstile', 'knowBot', 'openEmbedded', 'openServer'],
  'a code is the key': [
    'acceptSlip',
    'acceptTeacherInvite',
    'becomeTeacher',
    'hasTeachers',
    'issueTeacherInvite',
    'readJoinedSlip',
    'readSlip',
  ],
  'an account’s own id is the key': [
    'claimPicture',
    'countPractised',
    'createClass',
    'getDisplay',
    'isQuiet',
    'leaveChild',
    'listDataUsed',
    'monthToShow',
    'readDataUsed',
    'readOwnMonth',
    'readSharing',
    'readTie',
    'setDisplay',
    'setRelation',
    'shareSlip',
    'dropExpectation',
    'expectText',
    'findEvening',
    'findHelperByChat',
    'findTeacherByChat',
    'getWay',
    'askErasure',
    'leaveAll',
    'listOwnChildren',
    'readHeldData',
    'undoErasure',
    'listActs',
    'listClasses',
    'listFamilyChildren',
    'markReachable',
    'markUnreachable',
    'noteSeen',
    'pauseDrills',
    'readExpectation',
    'readFamilyPaces',
    'setDrillDay',
    'setEveryDay',
    'startDrillsAgain',
    'setEveningTime',
    'setWay',
  ],
  'the planners’ and the engine’s own work': [
    'addDataUsed',
    'adjustmentOf',
    'childrenOfClass',
    'claimDelivery',
    'claimUpdates',
    'countOutstanding',
    'currentMarks',
    'digestDays',
    'findFile',
    'findFollowers',
    'eraseChild',
    'finishUpdate',
    'isUpkeepDue',
    'listErasable',
    'noteUpkeepDone',
    'purgeRecords',
    'readErasing',
    'summariseMarks',
    'forgetChatSlots',
    'forgetCopy',
    'forgetFile',
    'followTerm',
    'getActivePlan',
    'getRunningClass',
    'giveUpAttempts',
    'greetingOf',
    'greetingToSend',
    'isDigestOwed',
    'listBreaks',
    'listCopies',
    'moveCopy',
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
    'oweGreetingNotice',
    'oweHelpers',
    'oweTeachers',
    'pageProgressOf',
    'paceStandsOf',
    'pauseSending',
    'reviewPaces',
    'planEvening',
    'postponeDelivery',
    'previewDrill',
    'purgeCodeMisses',
    'purgeGreetings',
    'purgeUpdates',
    'readClassBot',
    'readClassNews',
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
    'schemeInUse',
    'setAsideUpdate',
    'settleDelivery',
    'storeUpdates',
    'takeSendSlot',
    'wakeWaiting',
  ],
  'the operator’s': ['dropDeadLetter', 'listDeadLetters', 'moveToBot', 'replayDeadLetter'],
};
