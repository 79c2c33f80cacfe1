/** What buttons say: two or three words, the same everywhere. */
export const BUTTONS = {
  agree: 'I agree',
  disagree: 'No, thank you',
  leave: 'Yes, stop for good',
  stay: 'No, keep going',
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
  plan: 'Week plan',
  children: 'Children',
  book: 'Workbook',
  breaks: 'Breaks',
  times: 'Days and times',
  zone: 'Time zone',
  classTitle: 'Title',
  digestNow: 'Digest so far',
  print: 'Print',
  printSlips: 'Join slips',
  printCards: 'Cards of this week',
  printSheets: 'Practice sheets',
  printSquares: 'Number squares',
  addChildren: 'Add children',
  missingLinks: 'Links for those not joined',
  makeLinks: 'Make new links',
  oneLink: 'New link for one child',
  addBreak: 'Add a break',
  changeBook: 'Set the workbook',
  retireBook: 'No workbook',
  addPart: 'Add a part',
  usePlan: 'Use from the next evening',
  removePart: 'Remove this part',
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
