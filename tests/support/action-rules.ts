import type { Action, ActionKind, ActionOf } from '../../bot/callback/actions.ts';
import { OFFERED, packPreview } from '../../bot/screens/preview-state.ts';

/**
 * Whose an action is.
 *
 * - `family`: of those who help the child, or the evening's child, it names
 * - `teacher`: of the teachers of the class it names
 * - `lead`: of that class's lead teacher alone
 * - `bearer`: of whoever holds the code it names
 * - `self`: of everybody, about nobody but themselves
 */
export type Owner = 'family' | 'teacher' | 'lead' | 'bearer' | 'self';

/** Real ids of the right one's things. */
export interface RightThings {
  readonly classId: string;
  readonly secondClassId: string;
  readonly childId: string;
  readonly evening: string;
  readonly book: string;
  readonly greeting: string;
  readonly act: string;
  /** A co-teacher of the class. */
  readonly coTeacher: string;
  readonly breakDay: string;
  readonly code: string;
}

type FieldsOf<K extends ActionKind> = Omit<ActionOf<K>, 'kind'>;
type FieldName = { [K in ActionKind]: keyof FieldsOf<K> }[ActionKind];

/** Who may do an action, and the values it is tried with where the usual ones do not fit. */
interface Rule<K extends ActionKind> {
  readonly owner: Owner;
  readonly with?: (things: RightThings) => Partial<FieldsOf<K>>;
  /** Why a wrong person may be answered without being refused. Nothing is changed or told all the same. */
  readonly quiet?: string;
}

/** What a button's field holds, unless the action's rule says otherwise. The compiler asks for a value for each new field. */
function usual(things: RightThings): Readonly<Record<FieldName, string | number>> {
  const { classId, childId, evening, book, greeting, act, coTeacher, breakDay, code } = things;
  return {
    classId,
    child: childId,
    evening,
    next: evening,
    book,
    greeting,
    act,
    teacher: coTeacher,
    first: breakDay,
    code,
    number: 1,
    page: 0,
    part: 0,
    card: 0,
    missed: 0,
    said: 3,
    pages: 1,
    weekday: 2,
    on: 1,
    what: 'roster',
    slips: '0',
    index: 0,
    paper: 0,
    to: 'every',
    way: 'words',
    day: 'now',
    of: 'all',
    sign: 'x',
    span: 0,
    message: '1',
    role: 'co',
    was: 'x',
    zone: 'Europe.Paris',
    curriculum: 'caps',
    grade: '3',
    place: 'GB-ENG',
    from: '0',
    off: '0',
    country: 'all',
    strand: 'doubles',
    rung: 'doubles.to5',
    rungs: 2,
    cards: 8,
    seconds: 4,
    at: packPreview(OFFERED),
    weeks: 6,
    share: 0,
    week: 1,
    later: 1,
    heading: 0,
    column: 0,
    stamp: 'x',
    language: 'de',
    age: 14,
  };
}

const family = { owner: 'family' } as const;
const teacher = { owner: 'teacher' } as const;
const lead = { owner: 'lead' } as const;
const self = { owner: 'self' } as const;
const waiting = {
  owner: 'teacher',
  quiet: 'what waits for the person is looked up first',
} as const;

/** The rule for each action there is. The compiler asks for one when an action is added. */
export const ACTION_RULES: { readonly [K in ActionKind]: Rule<K> } = {
  agree: { owner: 'bearer' },
  noticeIn: { owner: 'bearer' },
  chooseLanguage: self,
  classLanguages: teacher,
  classLanguage: teacher,
  disagree: self,
  stay: self,
  chooseWay: self,
  joinAs: { owner: 'family', with: () => ({ to: 'parent' }) },
  joinTime: { owner: 'family', with: () => ({ to: '18.00' }) },
  joinWay: family,
  joinNext: { owner: 'family', with: () => ({ to: 'way' }) },
  settings: self,
  timeChoices: self,
  chooseTime: { owner: 'self', with: () => ({ to: '18.00' }) },
  wayChoices: self,
  settleWay: self,
  setSwitch: { owner: 'self', with: () => ({ what: 'quiet' }) },
  shareAsk: family,
  shareLink: { owner: 'family', with: () => ({ was: 'none' }) },
  siblingAges: teacher,
  siblingAge: teacher,
  start: family,
  later: family,
  notToday: family,
  allRight: family,
  mark: family,
  toggle: family,
  done: family,
  said: { owner: 'family', with: () => ({ part: 1 }) },
  pages: family,
  fix: family,
  fixPages: family,
  stopToday: family,
  showAnswer: family,
  cardRight: family,
  cardNotYet: family,
  cardBack: family,
  nextChild: family,
  openClass: teacher,
  times: teacher,
  schoolDay: { owner: 'teacher', with: () => ({ on: 0 }) },
  digestDay: teacher,
  askFor: teacher,
  children: teacher,
  askLinks: teacher,
  makeLinks: teacher,
  child: teacher,
  renameChild: teacher,
  askChildLink: teacher,
  childLink: teacher,
  moveChild: teacher,
  moveChildTo: { owner: 'teacher', with: ({ secondClassId }) => ({ to: secondClassId }) },
  archiveChild: teacher,
  archivedChildren: teacher,
  bringBack: { owner: 'teacher', with: () => ({ number: 3 }) },
  fileClasses: self,
  fileClass: waiting,
  fileColumns: waiting,
  fileColumn: waiting,
  fileAdd: waiting,
  breaks: teacher,
  removeBreak: teacher,
  print: teacher,
  printSlips: teacher,
  printCards: teacher,
  printSheets: teacher,
  printSquares: teacher,
  books: teacher,
  oneBook: teacher,
  moveBook: { owner: 'teacher', with: () => ({ to: 1 }) },
  putAwayBook: teacher,
  askClassPage: teacher,
  bookPace: teacher,
  askNewBook: teacher,
  askBook: teacher,
  askOwnBook: teacher,
  bookPlaces: teacher,
  askChildPage: teacher,
  childBooks: teacher,
  undo: teacher,
  undoList: self,
  classNow: teacher,
  digestOf: teacher,
  digestFacts: teacher,
  digestStrands: teacher,
  digestFamilies: teacher,
  digestFile: { owner: 'teacher', with: () => ({ what: 'table' }) },
  digestPaper: teacher,
  proposals: teacher,
  acceptSteps: teacher,
  childPages: teacher,
  childPage: teacher,
  childPicture: teacher,
  childFacts: teacher,
  childReport: teacher,
  makeReport: teacher,
  classReports: teacher,
  makeReports: teacher,
  greeting: teacher,
  timeGreeting: { owner: 'teacher', with: () => ({ to: 'every' }) },
  showGreeting: teacher,
  removeGreeting: teacher,
  useRecording: waiting,
  dropRecording: self,
  ownWay: teacher,
  setOwnWay: { owner: 'teacher', with: () => ({ to: 'fewer' }) },
  teachers: teacher,
  inviteTeacher: { owner: 'lead', with: () => ({ was: 'none' }) },
  cancelInvite: lead,
  removeTeacher: lead,
  askToLeave: teacher,
  leaveClass: { owner: 'teacher', quiet: 'who has left already sees their own classes' },
  archiveClass: lead,
  classes: self,
  newClass: self,
  newZone: self,
  chooseZone: teacher,
  firstPlan: teacher,
  firstPlanFor: teacher,
  cancel: self,
  breaksAt: teacher,
  holidays: teacher,
  addHolidays: teacher,
  holidayPlaces: teacher,
  choosePlace: teacher,
  plan: teacher,
  planPart: teacher,
  planAdd: teacher,
  planStrand: teacher,
  planSteps: { owner: 'teacher', with: () => ({ of: 'usual' }) },
  planRung: teacher,
  planCards: teacher,
  planSeconds: teacher,
  planRemove: teacher,
  planTakeOut: teacher,
  planApart: teacher,
  planUse: teacher,
  planDrop: teacher,
  planSource: { owner: 'teacher', with: () => ({ from: 'last' }) },
  preview: teacher,
  previewEnd: teacher,
  term: teacher,
  termNew: teacher,
  termMake: teacher,
  termWeek: teacher,
  termRepeat: { owner: 'teacher', with: () => ({ of: 2 }) },
  termRemove: { owner: 'teacher', with: () => ({ week: 2, of: 2 }) },
  termShift: teacher,
  termEnd: teacher,
  curriculum: teacher,
  grades: teacher,
  chooseGrade: teacher,
  eraseAsk: family,
  erase: family,
  eraseUndo: family,
  eraseNot: self,
  pauseOpen: self,
  pauseUntil: { owner: 'self', with: () => ({ day: '2026-10-05' }) },
  pauseAsk: self,
  pauseEnd: self,
  drillDays: self,
  drillDay: self,
  everyDay: self,
  everyDayNow: family,
  fewerEvenings: teacher,
  keepDaily: teacher,
  // Last, because whoever has left can do nothing else: each other action would be tried by itself, which takes long.
  leaveChild: family,
  leave: self,
};

/** Every kind of action, in the order of the list. */
export const ACTION_KINDS = Object.keys(ACTION_RULES) as readonly ActionKind[];

/** An action as the right one's own button carries it. */
export function rightAction(
  kind: ActionKind,
  things: RightThings,
  fields: readonly string[],
): Action {
  const rule: Rule<ActionKind> = ACTION_RULES[kind];
  const values = { ...usual(things), ...rule.with?.(things) };
  const own = Object.entries(values).filter(([name]) => fields.includes(name));
  // The compiler has checked names and values apart; packing it checks them together.
  return { kind, ...Object.fromEntries(own) } as Action;
}
