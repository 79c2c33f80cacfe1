import * as buttons from '../../../bot/texts/buttons.ts';
import * as cardWords from '../../../bot/texts/cards.ts';
import * as errors from '../../../bot/texts/errors.ts';
import * as evenings from '../../../bot/texts/evening.ts';
import * as families from '../../../bot/texts/family.ts';
import * as general from '../../../bot/texts/general.ts';
import * as grades from '../../../bot/texts/grades.ts';
import * as limits from '../../../bot/texts/limits.ts';
import * as prints from '../../../bot/texts/print.ts';
import * as rosters from '../../../bot/texts/roster.ts';
import * as steps from '../../../bot/texts/steps.ts';
import * as teachers from '../../../bot/texts/teacher.ts';
import * as ways from '../../../bot/texts/way.ts';
import type { Text } from '../../../bot/texts/words.ts';
import { AppError, type OpenSlip, storedDay, WAYS } from '../../../db/index.ts';
import { PROFILES, RUNGS, STRANDS } from '../../../drills/index.ts';
import { pebblePath } from '../support/books.ts';
import { bonds, clocks, finished, fives, gaps, scored, view } from '../support/evening.ts';
import { family, kingfisher, listed } from '../support/kingfisher.ts';
import { BOOK_MODULES, bookTexts } from './book-texts.ts';
import { CHILDREN_MODULES, childrenTexts } from './children-texts.ts';
import { DIGEST_MODULES, digestTexts } from './digest-texts.ts';
import { GREETING_MODULES, greetingTexts } from './greeting-texts.ts';
import { LANGUAGES_MODULES, languagesTexts } from './languages-texts.ts';
import { PACE_MODULES, paceTexts } from './pace-texts.ts';
import { PLAN_MODULES, planTexts } from './plan-texts.ts';
import { RIGHTS_MODULES, rightsTexts } from './rights-texts.ts';
import { SETTINGS_MODULES, settingsTexts } from './settings-texts.ts';
import { TEACHERS_MODULES, teachersTexts } from './teachers-texts.ts';
import { TURNS_MODULES, turnsTexts } from './turns-texts.ts';

/** A nickname with everything that can go wrong: an emoji of three code points, then letters from right to left. */
export const NICKNAME = '👩‍🚀 שרה';

export const MODULES: Readonly<Record<string, unknown>>[] = [
  ...BOOK_MODULES,
  ...CHILDREN_MODULES,
  ...GREETING_MODULES,
  buttons,
  cardWords,
  ...DIGEST_MODULES,
  errors,
  evenings,
  families,
  general,
  grades,
  limits,
  ...PACE_MODULES,
  ...PLAN_MODULES,
  ...RIGHTS_MODULES,
  ...SETTINGS_MODULES,
  ...LANGUAGES_MODULES,
  prints,
  rosters,
  steps,
  teachers,
  ...TEACHERS_MODULES,
  ...TURNS_MODULES,
  ways,
];

const titled = { ...kingfisher, title: 'Kingfisher class 🐦' };
const child = family(NICKNAME);
const slip: OpenSlip = { slipId: 's', childId: 'c', nickname: NICKNAME, classTitle: titled.title };

const views = [
  view({ nickname: NICKNAME }),
  view({ nickname: NICKNAME, book: null, started: true, results: [scored(bonds), null, null] }),
  view({ nickname: NICKNAME, marking: { part: 0, missed: [1, 2] } }),
  finished({ nickname: NICKNAME }),
  finished({ nickname: NICKNAME, pages: 4 }),
  finished({ nickname: NICKNAME, book: null, pages: null }),
];

export type Said = Text | string | null;
const evening = (say: (each: (typeof views)[number]) => readonly Said[]) => views.flatMap(say);

const eveningTexts = (): Readonly<Record<string, readonly Said[]>> => ({
  heading: evening((each) => [evenings.heading(each)]),
  offer: evening((each) => [evenings.offer(each)]),
  nudge: evening((each) => [evenings.nudge(each)]),
  reminder: evening((each) => [evenings.reminder(each)]),
  laterAt: evening((each) => [evenings.laterAt(each, '18:00')]),
  notToday: evening((each) => [evenings.notToday(each)]),
  partTask: evening((each) => [0, 1, 2].map((index) => evenings.partTask(each, index))),
  partInWords: [bonds, gaps, clocks, fives].map((part) => cardWords.partInWords(part)),
  marking: evening((each) => [0, 1, 2].map((index) => evenings.marking(each, index))),
  cardLabel: [bonds, gaps, clocks].flatMap((part) => [
    cardWords.cardLabel(part, 0, true),
    cardWords.cardLabel(part, 1, false),
  ]),
  solved: [cardWords.solved('double 7', '14')],
  askPages: evening((each) => [evenings.askPages(each)]),
  result: evening((each) => [evenings.result(each)]),
  elsewhere: evening((each) => [evenings.elsewhere(each, true), evenings.elsewhere(each, false)]),
  closed: evening((each) => [evenings.closed(each)]),
  partResultLine: evening((each) => [0, 1, 9].map((index) => evenings.partResultLine(each, index))),
  ownEveningsOnly: [evenings.ownEveningsOnly()],
  comparison: [[], [0], [4], [2]].map((earlier) =>
    evenings.comparison(scored(bonds, { right: 2, earlier })),
  ),
  askWhatToFix: evening((each) => [evenings.askWhatToFix(each)]),
  continuedElsewhere: evening((each) => [evenings.continuedElsewhere(each)]),
});

const familyTexts = (): Readonly<Record<string, readonly Said[]>> => ({
  notice: [families.notice(slip)],
  disagreed: [families.disagreed()],
  joined: [families.joined(slip, child), families.joined(slip, undefined)],
  stranger: [families.stranger(), families.stranger('open')],
  teacherHelpsNobody: [families.teacherHelpsNobody()],
  practiceStopped: [['Wren'], ['Wren', 'Otto', 'x'.repeat(30)]].map(families.practiceStopped),
  nothingToday: [families.nothingToday(child)],
  timeSet: [families.timeSet('18:15')],
  badTime: ['', 'מחר', 'x'.repeat(4_000)].map((typed) => families.badTime(typed, '06:00', '20:00')),
  tooLateToRemind: [families.tooLateToRemind('20:20', '20:45')],
  askToLeave: [families.askToLeave([child, family('Otto')])],
  left: [families.left()],
  staying: [families.staying()],
});

const GRADED = PROFILES.flatMap(({ id, grades: named }) =>
  named.map((grade) => ({ ...titled, curriculum: id, grade: grade.id })),
);
const LEGENDS = [
  { grade: null, isSeen: false },
  { grade: 'Year 2, England', isSeen: true },
  { grade: 'Year 2, England', isSeen: false },
];
const runs = RUNGS.filter((rung) => rung.kind === 'run');

const gradeTexts = (): Readonly<Record<string, readonly Said[]>> => ({
  gradeName: [...GRADED, titled].map(grades.gradeName),
  chooseCurriculum: [...GRADED, titled].map(grades.chooseCurriculum),
  chooseGrade: PROFILES.map(grades.chooseGrade),
});

const stepTexts = (): Readonly<Record<string, readonly Said[]>> => ({
  chooseStrand: [null, 'Year 2, England'].flatMap((grade) =>
    [false, true].map((isMixed) => steps.chooseStrand(grade, isMixed)),
  ),
  chooseStep: STRANDS.flatMap((strand) =>
    LEGENDS.flatMap((legend) => [1, 3].map((pages) => steps.chooseStep(strand, legend, 0, pages))),
  ),
  chooseGroup: LEGENDS.map(steps.chooseGroup),
  chooseLimit: runs.flatMap((run) => LEGENDS.map((legend) => steps.chooseLimit(run, legend))),
  stepLabel: RUNGS.map(steps.stepLabel),
  wholeStepLabel: RUNGS.map(steps.wholeStepLabel),
  groupLabel: runs.map(steps.groupLabel),
  limitLabel: runs.map(steps.limitLabel),
});

const teacherTexts = (): Readonly<Record<string, readonly Said[]>> => ({
  welcomeTeacher: [teachers.welcomeTeacher()],
  ask: (
    ['title', 'zone', 'roster', 'evening', 'nudge', 'digest', 'break', 'greeting'] as const
  ).map(teachers.ask),
  classHome: [
    teachers.classHome({ schoolClass: titled, children: 1, joined: 0, hasPlan: false, book: null }),
    teachers.classHome({
      schoolClass: titled,
      children: 9,
      joined: 3,
      hasPlan: true,
      book: pebblePath,
    }),
  ],
  noClass: [teachers.noClass()],
  times: [teachers.times(titled)],
  rosterProblems: [
    rosters.rosterProblems([
      { kind: 'long', line: 1, value: NICKNAME.repeat(9), length: 45 },
      { kind: 'twice', line: 3, value: NICKNAME, firstLine: 2 },
      ...Array.from({ length: 9 }, () => ({ kind: 'present', line: 4, value: 'Otto' }) as const),
    ]),
  ],
  moreProblems: [0, 1, 3].map(rosters.moreProblems),
  linksMade: [rosters.linksMade()],
  rosterEmpty: [rosters.rosterEmpty()],
  rosterTooMany: [rosters.rosterTooMany(40, 30)],
  joinLinks: [
    rosters.joinLinks([{ child: listed(1, NICKNAME), code: 'abc' }], (code) => `https://${code}`),
  ],
  askToMakeLinks: [0, 1, 12].map(rosters.askToMakeLinks),
  badClassTime: [teachers.badClassTime('half\nsix')],
  badZone: [teachers.badZone('Nowhere')],
  stored: [teachers.stored()],
  rosterAdded: [['Wren'], ['Wren', 'Otto Baker', 'Robin Cook']].map(rosters.rosterAdded),
  rosterProblem: (['Line', 'Row'] as const).map((place) =>
    rosters.rosterProblem({ kind: 'present', line: 4, value: NICKNAME }, place),
  ),
  fullNameCaution: [['Wren'], ['Otto Baker'], ['Otto Baker', 'Robin Cook']].map(
    rosters.fullNameCaution,
  ),
  classMade: [teachers.classMade()],
});

const printTexts = (): Readonly<Record<string, readonly Said[]>> => ({
  paperName: (['a4', 'letter'] as const).map(prints.paperName),
  printButton: (['a4', 'letter'] as const).map(prints.printButton),
  printScreen: [0, 1, 12].map((number) =>
    prints.printScreen(titled, { missing: number, offline: number }),
  ),
  slipsSent: [1, 12].map((children) => prints.slipsSent(children, storedDay('2026-11-12'))),
  cardsSent: [prints.cardsSent()],
  sheetsSent: [0, 1, 12].map(prints.sheetsSent),
  squaresSent: [prints.squaresSent()],
  noSlips: [prints.noSlips()],
  noPlan: [prints.noPlan()],
  noDays: [prints.noDays()],
  mistypedCode: [27, 28].map(prints.mistypedCode),
});

const buttonTexts = (): Readonly<Record<string, readonly Said[]>> => ({
  timeButton: (['evening', 'nudge', 'digest'] as const).map((what) =>
    buttons.timeButton(what, '17:30'),
  ),
  choiceButton: [true, false].map((chosen) => buttons.choiceButton('Mon', chosen)),
  usualButton: [true, false].map((isUsual) => buttons.usualButton('doubles', isUsual)),
  gradeButton: ['Year 2, England', null].map(buttons.gradeButton),
  digestDayButton: [true, false].map((chosen) => buttons.digestDayButton('Mon', chosen)),
  amountButton: [-5, -1, 1, 5].map((by) => buttons.amountButton(by, 'cards')),
  secondsButton: ([-1, 1] as const).map(buttons.secondsButton),
  takeOutButton: [buttons.takeOutButton('halves')],
});

/** What every function that makes words says, by the function's name. */
export const allTexts = (): Readonly<Record<string, readonly Said[]>> => ({
  ...buttonTexts(),
  ...eveningTexts(),
  ...familyTexts(),
  ...paceTexts(),
  ...planTexts(),
  ...printTexts(),
  ...gradeTexts(),
  ...stepTexts(),
  ...teacherTexts(),
  ...childrenTexts(),
  ...greetingTexts(),
  ...rightsTexts(),
  ...languagesTexts(),
  ...settingsTexts(NICKNAME),
  errorText: [errors.errorText(new AppError('invalid', 'title'))],
  ourFault: [errors.ourFault()],
  tryingAgain: [errors.tryingAgain()],
  staleButton: [errors.staleButton()],
  codesPaused: [1, 39].map(limits.codesPaused),
  leftOut: [limits.leftOut()],
  noFiles: [general.noFiles()],
  privateOnly: [general.privateOnly()],
  ...bookTexts(NICKNAME),
  ...teachersTexts(NICKNAME),
  ...turnsTexts(NICKNAME),
  ...digestTexts(),
  chooseWay: [ways.chooseWay(), ways.chooseWay([NICKNAME, 'Otter'])],
  wayChosen: WAYS.map(ways.wayChosen),
  wayLabel: WAYS.map(ways.wayLabel),
});
