import * as acts from '../../../bot/texts/acts.ts';
import * as children from '../../../bot/texts/children.ts';
import * as classFiles from '../../../bot/texts/class-file.ts';
import * as moved from '../../../bot/texts/moved.ts';
import type { Text } from '../../../bot/texts/words.ts';
import type { KeptAct, StoredAct } from '../../../db/index.ts';
import { family, kingfisher, listed } from '../support/kingfisher.ts';

/** The modules whose texts are here. */
export const CHILDREN_MODULES = [acts, children, classFiles, moved] as const;

/** A nickname with letters from right to left, and one with two words. */
const NICKNAME = '👩‍🚀 שרה';
const HERON = { ...kingfisher, title: 'Heron class 🐦' };
const child = listed(1, NICKNAME);

const STORED: readonly StoredAct[] = [
  { kind: 'childrenAdded', before: { childIds: ['a'] } },
  { kind: 'childrenAdded', before: { childIds: ['a', 'b'] } },
  { kind: 'childArchived', before: { childId: 'a' } },
  { kind: 'childMoved', before: { childId: 'a', number: 1, toNumber: 2, toClassId: 'b' } },
];
const kept: readonly KeptAct[] = STORED.map((act, at) => ({
  ...act,
  id: `act-${at}`,
  classId: kingfisher.id,
  classTitle: kingfisher.title,
  zone: kingfisher.zone,
  nickname: at > 1 ? NICKNAME : null,
  at: new Date('2026-09-14T09:05:00Z'),
}));

const many = Array.from({ length: 40 }, (_, at) =>
  listed(at + 1, `Wren ${at + 1}`, at < 17 ? 1 : 0),
);
const COLUMNS = [
  { column: 0, heading: null, sample: '' },
  { column: 1, heading: 'First name', sample: NICKNAME },
  { column: 27, heading: '', sample: 'Wren' },
  { column: 39, heading: 'x'.repeat(4_000), sample: 'y'.repeat(4_000) },
];
const PROBLEMS = [
  { kind: 'long', line: 2, value: NICKNAME.repeat(9), length: 45 },
  { kind: 'twice', line: 3, value: NICKNAME, firstLine: 2 },
  ...Array.from({ length: 9 }, () => ({ kind: 'present', line: 4, value: 'Otter' }) as const),
] as const;

/** What every function says that makes words about children, class lists and what was taken back. */
export const childrenTexts = (): Readonly<Record<string, readonly (Text | string | null)[]>> => ({
  actWords: STORED.flatMap((act) => [acts.actWords(act, NICKNAME), acts.actWords(act, null)]),
  actsToUndo: [acts.actsToUndo([], 0, 1), acts.actsToUndo(kept, 0, 1), acts.actsToUndo(kept, 1, 3)],
  actButton: kept.flatMap((act) => [acts.actButton(act, true), acts.actButton(act, false)]),
  takenBack: STORED.flatMap((act) =>
    [true, false].map((again) => acts.takenBack({ classId: 'c', act, again }, NICKNAME)),
  ),
  undoIsForTeachers: [acts.undoIsForTeachers()],
  childList: [
    children.childList(HERON, []),
    children.childList(HERON, many),
    children.childList(HERON, [
      child,
      listed(2, 'Otter', 0),
      { ...listed(3, 'Robin'), reachable: 0 },
      { ...listed(4, 'Finch', 0), left: true },
    ]),
  ],
  someOf: [children.someOf([child]), children.someOf([child, child]), children.someOf(many, 6)],
  childLabel: [child, listed(2, 'Otter', 0), { ...child, reachable: 0 }].map(children.childLabel),
  numbered: [children.numbered(child)],
  childHome: [
    child,
    listed(2, 'Otter', 0),
    { ...listed(2, 'Otter', 0), left: true },
    { ...listed(3, 'Robin', 2), reachable: 0 },
    { ...listed(3, 'Robin', 2), reachable: 1, eveningTime: kingfisher.eveningTime },
  ].map((each) => children.childHome(HERON, each)),
  askToMakeLink: [children.askToMakeLink(child)],
  askNickname: [children.askNickname(child)],
  badNickname: [children.badNickname('', 0), children.badNickname('x'.repeat(4_000), 4_000)],
  renamed: [children.renamed(NICKNAME, 'Otter')],
  askWhichClass: [0, 1, 12].map((others) => children.askWhichClass(child, others)),
  childMoved: [true, false].map((hasPlan) =>
    children.childMoved(NICKNAME, { to: HERON, number: 7, hasPlan }),
  ),
  childArchived: [children.childArchived(child)],
  archivedList: [[], [child], many].map((archived) => children.archivedList(HERON, archived)),
  broughtBack: [children.broughtBack(NICKNAME)],
  badFile: [
    ...(['big', 'rows', 'columns', 'old', 'unknown', 'empty'] as const).map((problem) =>
      classFiles.badFile(problem),
    ),
    classFiles.badFile('quote', 3),
  ],
  whichClassList: [classFiles.whichClassList()],
  listPreview: COLUMNS.flatMap((from) =>
    [[NICKNAME], many.map(({ nickname }) => nickname), ['Otto Baker', 'Wren Cook', 'Robin']].map(
      (nicknames) => classFiles.listPreview({ title: HERON.title, nicknames, from }),
    ),
  ),
  listProblems: COLUMNS.map((from) => classFiles.listProblems(PROBLEMS, from)),
  listEmpty: COLUMNS.map(classFiles.listEmpty),
  listTooMany: [classFiles.listTooMany(40, 30)],
  whichColumn: [classFiles.whichColumn()],
  listGone: [classFiles.listGone()],
  columnLabel: COLUMNS.map(classFiles.columnLabel),
  addAllButton: [1, 24].map(classFiles.addAllButton),
  movedToClass: [true, false].map((hasPlan) => moved.movedToClass(family(NICKNAME), hasPlan)),
});
