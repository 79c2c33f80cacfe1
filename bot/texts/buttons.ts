/** What buttons say: two or three words, the same everywhere. */
export const BUTTONS = {
  agree: 'I agree',
  disagree: 'No, thank you',
  leave: 'Yes, stop for good',
  stay: 'No, keep going',
  erase: 'Yes, erase it',
  eraseNot: 'No, keep it',
  start: 'Start',
  later: 'Later (30 min)',
  notToday: 'Not today',
  afterAll: 'Practise after all',
  openHere: 'Continue here',
  allRight: 'All right',
  someMissed: 'Some missed',
  allSaid: 'All of them',
  stoppedEarlier: 'Stopped earlier',
  noneSaid: 'None yet',
  noPages: 'None',
  done: 'Done',
  fix: 'Change a mark',
  back: 'Back',
  earlierPage: 'Earlier',
  nextPage: 'Next',
  undo: 'Undo',
  plan: 'Week plan',
  children: 'Children',
  books: 'Workbooks',
  breaks: 'Breaks',
  times: 'Days and times',
  zone: 'Time zone',
  classTitle: 'Title',
  classNow: 'Class now',
  weekSoFar: 'Last seven days',
  childPages: 'Child by child',
  childPage: 'How it goes',
  childMore: 'Name, slip and more',
  childPicture: 'As a picture',
  reports: 'Reports (PDF)',
  byStrand: 'By strand',
  wobbles: 'Facts to look at',
  proposals: 'Proposals',
  families: 'Families',
  digestPicture: 'Picture',
  digestTable: 'Table',
  digestMap: 'Class map',
  digestTrend: 'Four weeks',
  sayTogether: 'Say together',
  report: 'Report (PDF)',
  makeReport: 'Make the PDF',
  greeting: 'Greeting',
  sendGreeting: 'Send a greeting',
  otherGreeting: 'Send another',
  firstEvening: 'First evening',
  everyEvening: 'Every evening',
  untilRemoved: 'Until I remove it',
  showGreeting: 'Show it again',
  removeGreeting: 'Remove',
  useIt: 'Use it',
  dontUse: 'No, leave it',
  ownWay: 'For this child only',
  classSteps: 'Class’s steps',
  fewerCards: 'Fewer cards',
  untimed: 'No timing',
  print: 'Print',
  slipsToPrint: 'Slips to print',
  printSlips: 'Join slips',
  printCards: 'Cards of this week',
  printSheets: 'Practice sheets',
  printSquares: 'Number squares',
  addChildren: 'Add children',
  missingLinks: 'Links for those not joined',
  makeLinks: 'Make new links',
  newLink: 'New link',
  makeLink: 'Make a new link',
  renameChild: 'Rename',
  moveChild: 'To another class',
  archiveChild: 'Archive',
  archivedChildren: 'Archived children',
  otherColumn: 'Another column',
  heading: 'Row 1: a heading',
  noHeading: 'Row 1: a child',
  addBreak: 'Add a break',
  moreBreaks: 'Add another',
  holidays: 'Public holidays',
  otherPlace: 'Another country or region',
  wholeCountry: 'The whole country',
  teachers: 'Teachers',
  inviteTeacher: 'Invite a co-teacher',
  handOver: 'Hand over the class',
  cancelLink: 'Cancel that link',
  cancelHandOver: 'Cancel handing over',
  leaveClass: 'Leave this class',
  reallyLeave: 'Yes, leave it',
  archiveClass: 'Archive this class',
  classes: 'Your classes',
  newClass: 'Make a class',
  firstPlan: 'Start with usual steps',
  cancel: 'Cancel',
  addBook: 'Add a workbook',
  whoIsWhere: 'Who is where',
  changeBook: 'Title and pages',
  putAway: 'Put it away',
  bookEarlier: 'Earlier in line',
  bookLater: 'Later in line',
  setClassPage: 'Set the class’s page',
  setChildPage: 'Set the page',
  addOwnBook: 'Add a workbook of its own',
  addPart: 'Add a part',
  usePlan: 'Put it in use',
  dropPlan: 'Drop the changes',
  fromLastWeek: 'As last week',
  fromDigest: 'As proposed',
  fromTerm: 'As the term',
  preview: 'Preview',
  previewEnd: 'End the preview',
  term: 'The term',
  newTerm: 'Make a term',
  anewTerm: 'Make it anew',
  endTerm: 'End the term',
  termEarlier: 'A week earlier',
  termLater: 'A week later',
  repeatWeek: 'Repeat this week',
  removeWeek: 'Take this week out',
  removePart: 'Remove this part',
  mixIn: 'Mix in another step',
  keepApart: 'Keep them apart',
  changeRung: 'Practise something else',
  allStrands: 'All strands',
  allSteps: 'All steps',
  usualSteps: 'Usual steps',
  easier: 'Easier steps',
  harder: 'Harder steps',
  noCurriculum: 'No curriculum',
  otherCurriculum: 'Another curriculum',
} as const;

/** A time that can be changed: `Drill 17:30`. */
export function timeButton(what: 'evening' | 'nudge' | 'digest', time: string): string {
  return `${{ evening: 'Drill', nudge: 'Nudge', digest: 'Digest' }[what]} ${time}`;
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
  return `Usual steps: ${grade ?? 'choose a grade'}`;
}

/** A weekday the digest may come on: `Digest ✓ Fri`. */
export function digestDayButton(weekday: string, chosen: boolean): string {
  return `Digest ${choiceButton(weekday, chosen)}`;
}

/** Takes one step out of a mixed part. */
export function takeOutButton(step: string): string {
  return `✗ ${step}`;
}

/** More or fewer of something, as in `+ 5 (cards)`. */
export function amountButton(by: number, of: 'cards' | 'numbers'): string {
  return `${signed(by)} (${of})`;
}

/** More or fewer seconds. */
export function secondsButton(by: 1 | -1): string {
  return `${signed(by)} second`;
}

function signed(by: number): string {
  return `${by < 0 ? '−' : '+'} ${Math.abs(by)}`;
}
