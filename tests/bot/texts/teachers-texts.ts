import * as breaks from '../../../bot/texts/breaks.ts';
import * as news from '../../../bot/texts/class-news.ts';
import * as help from '../../../bot/texts/help.ts';
import * as setUp from '../../../bot/texts/set-up.ts';
import * as teachers from '../../../bot/texts/teachers.ts';
import type { Text } from '../../../bot/texts/words.ts';
import { type ClassTeacher, storedDay } from '../../../db/index.ts';
import { PROFILES } from '../../../drills/index.ts';
import { family, kingfisher } from '../support/kingfisher.ts';

type Texts = Readonly<Record<string, readonly (Text | string | null)[]>>;

const since = new Date('2026-09-14T08:00:00Z');
const you: ClassTeacher = {
  teacherId: 't',
  role: 'lead',
  isYou: true,
  since,
  isReachable: true,
};
const other: ClassTeacher = { ...you, teacherId: 'u', role: 'co', isYou: false };
const open = (['co', 'lead'] as const).map((role) => ({ role, expiresAt: since }));
const day = storedDay('2026-10-12');
const halfTerm = { id: 'x', title: 'Half term', first: day, last: storedDay('2026-10-16') };
const week = [day, storedDay('2026-10-13')];
const PROBLEMS = ['shape', 'date', 'slash', 'order', 'long', 'weekday'] as const;

const AWAITED: readonly help.AwaitedAnswer[] = [
  ...(['new_title', 'new_zone', 'title', 'zone', 'roster', 'evening', 'nudge'] as const),
  ...(['digest', 'break', 'greeting', 'book_new', 'book_change', 'book_page'] as const),
  ...(['nickname', 'recording', 'file', 'file_list'] as const),
];

/** The modules these come from. */
export const TEACHERS_MODULES: Readonly<Record<string, unknown>>[] = [
  breaks,
  help,
  news,
  setUp,
  teachers,
];

/** What every function about teachers, breaks, help and setting up says, for a child of this nickname. */
export function teachersTexts(nickname: string): Texts {
  const view = { title: 'Kingfisher class 🐦', isArchived: true, nicknames: [nickname, 'Otter'] };
  return {
    ...breakTexts(),
    ...helpTexts(nickname),
    ...teacherTexts(),
    classStopped: [news.classStopped(view)],
    classResumed: [news.classResumed(view)],
    classStoppedForTeacher: [news.classStoppedForTeacher(view)],
    classResumedForTeacher: [news.classResumedForTeacher(view)],
    handedOver: [news.handedOver(view)],
  };
}

const words = { place: 'South Africa', of: 8, chosen: 7, page: 0, pages: 2 };

const breakTexts = (): Texts => ({
  askBreak: [breaks.askBreak()],
  breakList: [
    breaks.breakList(kingfisher, []),
    breaks.breakList(kingfisher, [halfTerm], { page: 1, pages: 2 }),
  ],
  breakButton: [breaks.breakButton(halfTerm)],
  breakAdded: [[], week.slice(0, 1), week].flatMap((days) =>
    [true, false].map((is) =>
      breaks.breakAdded(halfTerm, days, { isOver: is, isToday: !is, isNew: is }),
    ),
  ),
  breakRemoved: [breaks.breakRemoved(halfTerm)],
  badBreak: PROBLEMS.map((problem) =>
    breaks.badBreak(problem, problem === 'long' ? '130' : '2026-10-12', day),
  ),
  holidayList: [
    breaks.holidayList(kingfisher, words),
    breaks.holidayList(kingfisher, { ...words, of: 0, chosen: 0, pages: 1 }),
  ],
  holidayButton: [true, false].map((is) => breaks.holidayButton(day, 'Heritage Day', is)),
  addHolidaysButton: [1, 6].map(breaks.addHolidaysButton),
  holidaysAdded: [0, 1, 6].map(breaks.holidaysAdded),
  choosePlace: [breaks.choosePlace(null, 0, 15), breaks.choosePlace('Germany', 0, 1)],
});

function helpTexts(nickname: string): Texts {
  const child = family(nickname);
  return {
    helpWithoutClass: [help.helpWithoutClass()],
    helpWithClass: (['no_children', 'no_plan', 'nobody_joined', 'running'] as const).flatMap(
      (stage) =>
        [0, 1, 7].map((waiting) => help.helpWithClass(kingfisher, stage, { waiting, next: day })),
    ),
    helpWithClasses: [help.helpWithClasses(2)],
    helpForFamily: [1, 4].map((children) =>
      help.helpForFamily(
        Array.from({ length: children }, (_, at) => ({ child, isHere: at % 2 === 0 })),
      ),
    ),
    notAsked: [help.notAsked()],
    stillExpected: AWAITED.map(help.stillExpected),
  };
}

const teacherTexts = (): Texts => ({
  zoneButton: [setUp.zoneButton('America/New_York', '05:00')],
  severalZones: [setUp.severalZones(['America/Monterrey', 'Europe/London'])],
  chooseFirstGrade: [null, ...PROFILES.slice(0, 1)].map((profile) =>
    setUp.chooseFirstGrade(kingfisher, profile),
  ),
  cancelled: [setUp.cancelled()],
  zoneQuestion: [setUp.zoneQuestion()],
  noFirstPlan: [setUp.noFirstPlan()],
  nothingAsked: [setUp.nothingAsked()],
  classGoneOn: [setUp.classGoneOn()],
  teacherList: [
    teachers.teacherList(kingfisher, [you], []),
    teachers.teacherList(kingfisher, [you, other], open),
    teachers.teacherList(kingfisher, [{ ...you, role: 'co' }, other], []),
  ],
  teacherLink: (['co', 'lead'] as const).map((role) =>
    teachers.teacherLink(kingfisher, role, 'https://x'),
  ),
  removeTeacherButton: [teachers.removeTeacherButton(kingfisher, other, 1)],
  teacherRemoved: [teachers.teacherRemoved()],
  linkMade: [teachers.linkMade()],
  askToLeaveClass: [teachers.askToLeaveClass(kingfisher)],
  classLeft: [teachers.classLeft()],
  classArchived: [teachers.classArchived(kingfisher)],
  joinedClass: (['co', 'lead'] as const).map((role) => teachers.joinedClass(kingfisher, role)),
  classList: [teachers.classList(0, 0, 1), teachers.classList(9, 0, 2)],
  byInvitation: [teachers.byInvitation()],
});
