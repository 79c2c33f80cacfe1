import { type MessageKey, say } from '../language/index.ts';

const KEYS = {
  agree: 'buttons-agree',
  disagree: 'buttons-disagree',
  leave: 'buttons-leave',
  stay: 'buttons-stay',
  erase: 'buttons-erase',
  eraseNot: 'buttons-erase-not',
  start: 'buttons-start',
  later: 'buttons-later',
  notToday: 'buttons-not-today',
  afterAll: 'buttons-after-all',
  openHere: 'buttons-open-here',
  allRight: 'buttons-all-right',
  someMissed: 'buttons-some-missed',
  allSaid: 'buttons-all-said',
  stoppedEarlier: 'buttons-stopped-earlier',
  noneSaid: 'buttons-none-said',
  noPages: 'buttons-no-pages',
  done: 'buttons-done',
  fix: 'buttons-fix',
  back: 'buttons-back',
  earlierPage: 'buttons-earlier-page',
  nextPage: 'buttons-next-page',
  undo: 'buttons-undo',
  plan: 'buttons-plan',
  children: 'buttons-children',
  books: 'buttons-books',
  breaks: 'buttons-breaks',
  times: 'buttons-times',
  zone: 'buttons-zone',
  classTitle: 'buttons-class-title',
  classNow: 'buttons-class-now',
  weekSoFar: 'buttons-week-so-far',
  childPages: 'buttons-child-pages',
  childPage: 'buttons-child-page',
  childMore: 'buttons-child-more',
  childPicture: 'buttons-child-picture',
  reports: 'buttons-reports',
  byStrand: 'buttons-by-strand',
  wobbles: 'buttons-wobbles',
  proposals: 'buttons-proposals',
  families: 'buttons-families',
  digestPicture: 'buttons-digest-picture',
  digestTable: 'buttons-digest-table',
  digestMap: 'buttons-digest-map',
  digestTrend: 'buttons-digest-trend',
  sayTogether: 'buttons-say-together',
  report: 'buttons-report',
  makeReport: 'buttons-make-report',
  greeting: 'buttons-greeting',
  sendGreeting: 'buttons-send-greeting',
  otherGreeting: 'buttons-other-greeting',
  firstEvening: 'buttons-first-evening',
  everyEvening: 'buttons-every-evening',
  untilRemoved: 'buttons-until-removed',
  showGreeting: 'buttons-show-greeting',
  removeGreeting: 'buttons-remove-greeting',
  useIt: 'buttons-use-it',
  dontUse: 'buttons-dont-use',
  ownWay: 'buttons-own-way',
  classSteps: 'buttons-class-steps',
  fewerCards: 'buttons-fewer-cards',
  untimed: 'buttons-untimed',
  print: 'buttons-print',
  slipsToPrint: 'buttons-slips-to-print',
  printSlips: 'buttons-print-slips',
  printCards: 'buttons-print-cards',
  printSheets: 'buttons-print-sheets',
  printSquares: 'buttons-print-squares',
  addChildren: 'buttons-add-children',
  missingLinks: 'buttons-missing-links',
  makeLinks: 'buttons-make-links',
  newLink: 'buttons-new-link',
  makeLink: 'buttons-make-link',
  renameChild: 'buttons-rename-child',
  moveChild: 'buttons-move-child',
  archiveChild: 'buttons-archive-child',
  archivedChildren: 'buttons-archived-children',
  otherColumn: 'buttons-other-column',
  heading: 'buttons-heading',
  noHeading: 'buttons-no-heading',
  addBreak: 'buttons-add-break',
  moreBreaks: 'buttons-more-breaks',
  holidays: 'buttons-holidays',
  otherPlace: 'buttons-other-place',
  wholeCountry: 'buttons-whole-country',
  teachers: 'buttons-teachers',
  inviteTeacher: 'buttons-invite-teacher',
  handOver: 'buttons-hand-over',
  cancelLink: 'buttons-cancel-link',
  cancelHandOver: 'buttons-cancel-hand-over',
  leaveClass: 'buttons-leave-class',
  reallyLeave: 'buttons-really-leave',
  archiveClass: 'buttons-archive-class',
  classes: 'buttons-classes',
  newClass: 'buttons-new-class',
  firstPlan: 'buttons-first-plan',
  cancel: 'buttons-cancel',
  addBook: 'buttons-add-book',
  whoIsWhere: 'buttons-who-is-where',
  changeBook: 'buttons-change-book',
  putAway: 'buttons-put-away',
  bookEarlier: 'buttons-book-earlier',
  bookLater: 'buttons-book-later',
  setClassPage: 'buttons-set-class-page',
  setChildPage: 'buttons-set-child-page',
  addOwnBook: 'buttons-add-own-book',
  addPart: 'buttons-add-part',
  usePlan: 'buttons-use-plan',
  dropPlan: 'buttons-drop-plan',
  fromLastWeek: 'buttons-from-last-week',
  fromDigest: 'buttons-from-digest',
  fromTerm: 'buttons-from-term',
  preview: 'buttons-preview',
  previewEnd: 'buttons-preview-end',
  term: 'buttons-term',
  newTerm: 'buttons-new-term',
  anewTerm: 'buttons-anew-term',
  endTerm: 'buttons-end-term',
  termEarlier: 'buttons-term-earlier',
  termLater: 'buttons-term-later',
  repeatWeek: 'buttons-repeat-week',
  removeWeek: 'buttons-remove-week',
  removePart: 'buttons-remove-part',
  mixIn: 'buttons-mix-in',
  keepApart: 'buttons-keep-apart',
  changeRung: 'buttons-change-rung',
  allStrands: 'buttons-all-strands',
  allSteps: 'buttons-all-steps',
  usualSteps: 'buttons-usual-steps',
  easier: 'buttons-easier',
  harder: 'buttons-harder',
  noCurriculum: 'buttons-no-curriculum',
  otherCurriculum: 'buttons-other-curriculum',
} as const satisfies Readonly<Record<string, MessageKey>>;

/** One of the buttons whose label is the same everywhere. */
export type ButtonName = keyof typeof KEYS;

/**
 * What buttons say: two or three words, the same everywhere, in the language of whoever reads them. Each is read anew whenever
 * it is asked for, so a label must not be kept at module level.
 *
 * @example
 * BUTTONS.notToday; // 'Not today'
 */
export const BUTTONS: Readonly<Record<ButtonName, string>> = withGetters();

function withGetters(): Record<ButtonName, string> {
  const getters = Object.entries(KEYS).map(([button, key]) => [
    button,
    { get: () => say(key), enumerable: true },
  ]);
  return Object.defineProperties({} as Record<ButtonName, string>, Object.fromEntries(getters));
}

/** A time that can be changed: `Drill 17:30`. */
export function timeButton(what: 'evening' | 'nudge' | 'digest', time: string): string {
  return say(`buttons-time-${what}`, { time });
}

/** One of several choices. A chosen one carries a tick, not a colour. */
export function choiceButton(label: string, chosen: boolean): string {
  return chosen ? `✓ ${label}` : label;
}

/** Before whatever is usual in a class's grade: a sign, not a colour. */
export const USUAL_SIGN = '●';

/** Something that is usual in a class's grade or not: `● number bonds`. */
export function usualButton(label: string, isUsual: boolean): string {
  return isUsual ? `${USUAL_SIGN} ${label}` : label;
}

/** The grade that steps are sorted by, which can be changed; null while none is chosen. */
export function gradeButton(grade: string | null): string {
  return grade === null ? say('buttons-grade-none') : say('buttons-grade', { grade });
}

/** A weekday the digest may come on: `Digest ✓ Fri`. */
export function digestDayButton(weekday: string, chosen: boolean): string {
  return say('buttons-digest-day', { day: choiceButton(weekday, chosen) });
}

/** Takes one step out of a mixed part. */
export function takeOutButton(step: string): string {
  return `✗ ${step}`;
}

/** More or fewer of something, as in `+ 5 (cards)`. */
export function amountButton(by: number, of: 'cards' | 'numbers'): string {
  return say(`buttons-by-${of}`, { by: signed(by) });
}

/** More or fewer seconds. */
export function secondsButton(by: 1 | -1): string {
  return say('buttons-by-seconds', { by: signed(by) });
}

function signed(by: number): string {
  return `${by < 0 ? '−' : '+'} ${Math.abs(by)}`;
}
