import { type Field, id, int, word } from './fields.ts';

/**
 * Everything a button can ask for: a two-letter tag and its fields, in the order they are written. Cards stay on phones for
 * days and across releases, so a tag never changes its meaning: retire it and take a new one.
 */
export const ACTIONS = {
  // A helper joining.
  /** `language` is the one the notice was read in. */
  agree: { tag: 'ag', fields: { code: word, language: word } },
  /** The notice once more, in another language. */
  noticeIn: { tag: 'gl', fields: { code: word, language: word } },
  disagree: { tag: 'dg', fields: {} },
  leave: { tag: 'lv', fields: {} },
  /** Ends a helper's part with one child of several. */
  leaveChild: { tag: 'fk', fields: { child: id } },
  stay: { tag: 'sy', fields: {} },
  chooseLanguage: { tag: 'gm', fields: { language: word } },
  /** The class's language of instruction: the list, and a choice. */
  classLanguages: { tag: 'gc', fields: { classId: id } },
  classLanguage: { tag: 'gd', fields: { classId: id, language: word } },
  /** `way` is how the evening is shown from now on. */
  chooseWay: { tag: 'wy', fields: { way: word } },
  // How often the drill comes. `day` is the day on which it comes again.
  pauseOpen: { tag: 'ns', fields: {} },
  pauseUntil: { tag: 'np', fields: { day: word } },
  pauseAsk: { tag: 'nq', fields: {} },
  pauseEnd: { tag: 'nr', fields: {} },
  drillDays: { tag: 'nd', fields: {} },
  /** `on` is what the day shall be, 0 or 1, so that a tap that comes twice turns the day once. */
  drillDay: { tag: 'ne', fields: { weekday: int, on: int } },
  everyDay: { tag: 'ny', fields: {} },
  everyDayNow: { tag: 'nv', fields: { evening: id } },
  fewerEvenings: { tag: 'nl', fields: { classId: id, page: int } },
  keepDaily: { tag: 'nk', fields: { classId: id, number: int, on: int, page: int } },
  // The three short choices after agreeing. `to` is a relation, a time with a dot, or the step that comes next.
  joinAs: { tag: 'fa', fields: { child: id, to: word } },
  joinTime: { tag: 'fb', fields: { child: id, to: word } },
  joinWay: { tag: 'fc', fields: { child: id, way: word } },
  joinNext: { tag: 'fd', fields: { child: id, to: word } },
  // A family's settings.
  settings: { tag: 'fe', fields: {} },
  timeChoices: { tag: 'fg', fields: {} },
  chooseTime: { tag: 'fh', fields: { to: word } },
  wayChoices: { tag: 'fi', fields: {} },
  settleWay: { tag: 'fq', fields: { way: word } },
  /** `on` is what the switch shall be, 0 or 1, so that a tap that comes twice turns it once. */
  setSwitch: { tag: 'fj', fields: { what: word, on: int } },
  // A link for one more helper. `was` stands for the one made last, so that a tap that comes twice makes one.
  shareAsk: { tag: 'fl', fields: { child: id } },
  shareLink: { tag: 'fm', fields: { child: id, was: word } },
  // From which age on a brother or sister may help.
  siblingAges: { tag: 'fn', fields: { classId: id } },
  siblingAge: { tag: 'fo', fields: { classId: id, age: int } },
  // Erasing what is kept about a child.
  eraseAsk: { tag: 'yc', fields: { child: id } },
  erase: { tag: 'ye', fields: { child: id } },
  eraseUndo: { tag: 'yu', fields: { child: id } },
  eraseNot: { tag: 'yn', fields: {} },
  // An evening.
  start: { tag: 'st', fields: { evening: id } },
  later: { tag: 'lt', fields: { evening: id } },
  notToday: { tag: 'nt', fields: { evening: id } },
  allRight: { tag: 'ar', fields: { evening: id, part: int } },
  mark: { tag: 'mk', fields: { evening: id, part: int } },
  /** `missed` is what the button shows, 0 or 1, so that a tap that comes twice turns the card once. */
  toggle: { tag: 'tg', fields: { evening: id, part: int, card: int, missed: int } },
  done: { tag: 'dn', fields: { evening: id, part: int } },
  said: { tag: 'sd', fields: { evening: id, part: int, said: int } },
  pages: { tag: 'pg', fields: { evening: id, pages: int } },
  fix: { tag: 'fx', fields: { evening: id } },
  fixPages: { tag: 'fp', fields: { evening: id } },
  stopToday: { tag: 'os', fields: { evening: id } },
  // One card at a time. `card` is the one that was on the screen, so that a tap that comes twice judges one card.
  showAnswer: { tag: 'oa', fields: { evening: id, part: int, card: int } },
  cardRight: { tag: 'og', fields: { evening: id, part: int, card: int } },
  cardNotYet: { tag: 'on', fields: { evening: id, part: int, card: int } },
  cardBack: { tag: 'ob', fields: { evening: id, part: int, card: int } },
  /** `next` is the evening of a brother or sister. */
  nextChild: { tag: 'ox', fields: { evening: id, next: id } },
  // A class.
  openClass: { tag: 'oc', fields: { classId: id } },
  times: { tag: 'tm', fields: { classId: id } },
  /** `on` is what the day shall be, 0 or 1, so that a tap that comes twice turns the day once. */
  schoolDay: { tag: 'sc', fields: { classId: id, weekday: int, on: int } },
  digestDay: { tag: 'dd', fields: { classId: id, weekday: int } },
  askFor: { tag: 'as', fields: { classId: id, what: word } },
  children: { tag: 'kl', fields: { classId: id, page: int } },
  askLinks: { tag: 'la', fields: { classId: id } },
  /** `slips` is how many the class was ever given, so that a tap that comes twice makes one list. */
  makeLinks: { tag: 'lm', fields: { classId: id, slips: word } },
  // A child of a class, by its number there.
  child: { tag: 'kd', fields: { classId: id, number: int } },
  renameChild: { tag: 'kr', fields: { classId: id, number: int } },
  askChildLink: { tag: 'kq', fields: { classId: id, number: int } },
  childLink: { tag: 'kn', fields: { classId: id, number: int, slips: word } },
  moveChild: { tag: 'km', fields: { classId: id, number: int, page: int } },
  moveChildTo: { tag: 'kt', fields: { classId: id, number: int, to: id } },
  archiveChild: { tag: 'ka', fields: { classId: id, number: int } },
  archivedChildren: { tag: 'kv', fields: { classId: id, page: int } },
  bringBack: { tag: 'kb', fields: { classId: id, number: int } },
  // A class list sent as a file.
  fileClasses: { tag: 'kg', fields: { page: int } },
  fileClass: { tag: 'kf', fields: { classId: id } },
  fileColumns: { tag: 'kc', fields: { classId: id, page: int } },
  /** `heading` is 1 when the first row is no child. */
  fileColumn: { tag: 'kh', fields: { classId: id, column: int, heading: int } },
  /** `stamp` stands for the names that are shown, so that a late tap does not add those of another file. */
  fileAdd: { tag: 'ki', fields: { classId: id, stamp: word } },
  breaks: { tag: 'br', fields: { classId: id } },
  removeBreak: { tag: 'rb', fields: { classId: id, index: int, first: word } },
  /** `paper` is a place in the list of papers. */
  print: { tag: 'wp', fields: { classId: id, paper: int } },
  printSlips: { tag: 'wj', fields: { classId: id, paper: int, slips: word } },
  printCards: { tag: 'wc', fields: { classId: id, paper: int } },
  printSheets: { tag: 'ws', fields: { classId: id, paper: int } },
  printSquares: { tag: 'wq', fields: { classId: id, paper: int } },
  // Workbooks.
  books: { tag: 'va', fields: { classId: id } },
  oneBook: { tag: 'vb', fields: { classId: id, book: id } },
  /** `to` is the place the book shall have, counted from 0, so that a tap that comes twice moves it once. */
  moveBook: { tag: 'vc', fields: { classId: id, book: id, to: int } },
  putAwayBook: { tag: 'vd', fields: { classId: id, book: id } },
  askClassPage: { tag: 've', fields: { classId: id, book: id } },
  bookPace: { tag: 'vf', fields: { classId: id, book: id, pages: int } },
  askNewBook: { tag: 'vg', fields: { classId: id } },
  askBook: { tag: 'vh', fields: { classId: id, book: id } },
  askOwnBook: { tag: 'vo', fields: { classId: id, child: id } },
  bookPlaces: { tag: 'vp', fields: { classId: id, page: int } },
  askChildPage: { tag: 'vs', fields: { classId: id, child: id } },
  childBooks: { tag: 'vw', fields: { classId: id, child: id } },
  // Taking back what was done.
  undo: { tag: 'un', fields: { act: id } },
  undoList: { tag: 'ku', fields: { page: int } },
  // How a class stands. `day` is a digest's own day, or `now` for the seven days up to today.
  classNow: { tag: 'qn', fields: { classId: id } },
  digestOf: { tag: 'qd', fields: { classId: id, day: word } },
  digestFacts: { tag: 'qf', fields: { classId: id, day: word } },
  digestStrands: { tag: 'qs', fields: { classId: id, day: word } },
  digestFamilies: { tag: 'qr', fields: { classId: id, day: word, page: int } },
  digestFile: { tag: 'qx', fields: { classId: id, day: word, what: word } },
  digestPaper: { tag: 'qi', fields: { classId: id, day: word, paper: int } },
  proposals: { tag: 'qp', fields: { classId: id, day: word } },
  /** `of` is a strand or `all`; `sign` stands for the change that is shown, so that a late tap makes no other. */
  acceptSteps: { tag: 'qa', fields: { classId: id, day: word, of: word, sign: word } },
  // One child's page and reports. `span` is a place in the list of spans, `paper` one in the list of papers.
  childPages: { tag: 'qc', fields: { classId: id, page: int } },
  childPage: { tag: 'qk', fields: { classId: id, number: int } },
  childPicture: { tag: 'qz', fields: { classId: id, number: int } },
  childFacts: { tag: 'qq', fields: { classId: id, number: int } },
  childReport: { tag: 'qo', fields: { classId: id, number: int, span: int, paper: int } },
  makeReport: { tag: 'qm', fields: { classId: id, number: int, span: int, paper: int } },
  classReports: { tag: 'qe', fields: { classId: id, span: int, paper: int } },
  makeReports: { tag: 'qg', fields: { classId: id, span: int, paper: int } },
  // The teacher's greeting. Its buttons carry the greeting they are about.
  greeting: { tag: 'jg', fields: { classId: id } },
  /** `to` is `first` or `every`, or the last day of a week. */
  timeGreeting: { tag: 'jw', fields: { classId: id, greeting: id, to: word } },
  showGreeting: { tag: 'jp', fields: { classId: id, greeting: id } },
  removeGreeting: { tag: 'jx', fields: { classId: id, greeting: id } },
  /** `message` is the message a recording came in. */
  useRecording: { tag: 'jr', fields: { classId: id, message: word } },
  dropRecording: { tag: 'jn', fields: { message: word } },
  // How one child's evenings differ from the class's.
  ownWay: { tag: 'ja', fields: { classId: id, number: int } },
  setOwnWay: { tag: 'jb', fields: { classId: id, number: int, to: word } },
  // Who teaches a class, and a teacher's classes.
  teachers: { tag: 'ea', fields: { classId: id } },
  /** `was` stands for the open link that was shown, so that a tap that comes twice makes one link. */
  inviteTeacher: { tag: 'ei', fields: { classId: id, role: word, was: word } },
  cancelInvite: { tag: 'ec', fields: { classId: id, role: word } },
  removeTeacher: { tag: 'er', fields: { classId: id, teacher: id } },
  askToLeave: { tag: 'ev', fields: { classId: id } },
  leaveClass: { tag: 'el', fields: { classId: id } },
  archiveClass: { tag: 'ed', fields: { classId: id } },
  classes: { tag: 'es', fields: { page: int } },
  // Setting a class up. In `zone` a dot stands for the slash.
  newClass: { tag: 'ew', fields: {} },
  newZone: { tag: 'en', fields: { zone: word } },
  chooseZone: { tag: 'ez', fields: { classId: id, zone: word } },
  /** `curriculum` is one of ours, `guess` or `all`. */
  firstPlan: { tag: 'ef', fields: { classId: id, curriculum: word } },
  firstPlanFor: { tag: 'eg', fields: { classId: id, curriculum: word, grade: word } },
  /** Leaves a question unanswered. */
  cancel: { tag: 'ex', fields: {} },
  // Breaks and public holidays. `place` is an ISO 3166 code.
  breaksAt: { tag: 'eb', fields: { classId: id, page: int } },
  /** `from` numbers the day the list begins with, `off` the holidays that are not ticked; both in base 36. */
  holidays: { tag: 'eh', fields: { classId: id, place: word, from: word, off: word, page: int } },
  addHolidays: { tag: 'em', fields: { classId: id, place: word, from: word, off: word } },
  /** `country` is a code, or `all` for the list of countries. */
  holidayPlaces: { tag: 'ep', fields: { classId: id, country: word, page: int } },
  choosePlace: { tag: 'et', fields: { classId: id, place: word } },
  // A week plan, or a week of the term. `part` is a place in it, packed by plan-place.
  plan: { tag: 'pl', fields: { classId: id } },
  planPart: { tag: 'pp', fields: { classId: id, part: int } },
  planAdd: { tag: 'pa', fields: { classId: id } },
  planStrand: { tag: 'ps', fields: { classId: id, part: int, strand: word } },
  /** `of` is which of the strand's steps: `usual`, `all`, or a group of counting runs. */
  planSteps: { tag: 'pz', fields: { classId: id, part: int, strand: word, of: word, page: int } },
  planRung: { tag: 'pr', fields: { classId: id, part: int, rung: word } },
  planCards: { tag: 'pn', fields: { classId: id, part: int, cards: int } },
  planSeconds: { tag: 'pt', fields: { classId: id, part: int, seconds: int } },
  planRemove: { tag: 'px', fields: { classId: id, part: int, rung: word } },
  planTakeOut: { tag: 'zo', fields: { classId: id, part: int, rung: word } },
  /** `rungs` is how many the part mixes, so that a tap that comes twice takes one part apart. */
  planApart: { tag: 'zk', fields: { classId: id, part: int, rungs: int } },
  planUse: { tag: 'pu', fields: { classId: id } },
  planDrop: { tag: 'zd', fields: { classId: id } },
  /** `from` is where a whole plan is taken from: `last` week, the `digest`, the `term`. */
  planSource: { tag: 'zf', fields: { classId: id, from: word } },
  /** `at` is how far the preview is, and what was tapped in it (see preview-state). */
  preview: { tag: 'zv', fields: { classId: id, at: word } },
  previewEnd: { tag: 'zb', fields: { classId: id } },
  // A term. `was` stands for the one that is in use, so that a late tap changes no other.
  term: { tag: 'zm', fields: { classId: id, page: int } },
  /** `share` is a place in the list of shares of the year. */
  termNew: { tag: 'zg', fields: { classId: id, weeks: int, share: int } },
  termMake: { tag: 'zy', fields: { classId: id, weeks: int, share: int, from: word, was: word } },
  termWeek: { tag: 'zw', fields: { classId: id, week: int } },
  /** `of` is how many weeks the term has, so that a tap that comes twice changes it once. */
  termRepeat: { tag: 'zi', fields: { classId: id, week: int, of: int } },
  termRemove: { tag: 'zx', fields: { classId: id, week: int, of: int } },
  /** `from` is the day on which the term begins, `later` 1 or 0. */
  termShift: { tag: 'zh', fields: { classId: id, from: word, later: int } },
  termEnd: { tag: 'ze', fields: { classId: id, was: word } },
  // The curriculum and grade that steps are sorted by.
  curriculum: { tag: 'cu', fields: { classId: id } },
  grades: { tag: 'gr', fields: { classId: id, curriculum: word } },
  chooseGrade: { tag: 'cg', fields: { classId: id, curriculum: word, grade: word } },
} as const satisfies Record<
  string,
  { tag: string; fields: Record<string, Field<string> | Field<number>> }
>;

/** Tags that buttons of earlier releases carry. They are never used again. */
export const RETIRED_TAGS: readonly string[] = [
  'cl',
  'ml',
  'wd',
  'ch',
  'pc',
  'ln',
  'di',
  'bk',
  'xb',
];

type Actions = typeof ACTIONS;
type ValueOf<F> = F extends Field<infer T> ? T : never;

/** The kinds of action there are. */
export type ActionKind = keyof Actions;

/** One kind of action with its values. */
export type ActionOf<K extends ActionKind> = { readonly kind: K } & {
  readonly [F in keyof Actions[K]['fields']]: ValueOf<Actions[K]['fields'][F]>;
};

/** What a button asks for. */
export type Action = { [K in ActionKind]: ActionOf<K> }[ActionKind];
