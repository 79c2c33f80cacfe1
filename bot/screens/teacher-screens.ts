import type { ClassTeacher, OpenInvite, SchoolClass, TeacherRole } from '../../db/index.ts';
import { BUTTONS } from '../texts/buttons.ts';
import * as texts from '../texts/teachers.ts';
import { lines, name } from '../texts/words.ts';
import { back } from './class-screens.ts';
import { pageRow } from './page-row.ts';
import { pageOf } from './pages.ts';
import { type Button, button, type Screen } from './screen.ts';
import { undoButton } from './undo.ts';

/** Classes on one page. */
const CLASSES_A_PAGE = 7;
/** Co-teachers that have a button of their own; no class has nearly as many. */
const MOST_BUTTONS = 4;

/** Who teaches a class, as the screen is drawn from it. */
export interface TeachersView {
  readonly schoolClass: SchoolClass;
  readonly teachers: readonly ClassTeacher[];
  readonly open: readonly OpenInvite[];
}

/** Stands for the open link of a role in a button; `none` when there is none. */
export function signOfLink(open: readonly OpenInvite[], role: TeacherRole): string {
  const invite = open.find((each) => each.role === role);
  return invite ? invite.expiresAt.getTime().toString(36) : 'none';
}

/** The teachers of a class, and what the asking one may do. `news` is what was just done. */
export function teachersScreen(
  view: TeachersView,
  news: { readonly said: string; readonly actId: string } | null = null,
): Screen {
  const { schoolClass, teachers, open } = view;
  const { id: classId } = schoolClass;
  const isLead = teachers.some(({ isYou, role }) => isYou && role === 'lead');
  const list = texts.teacherList(schoolClass, teachers, open);
  return {
    text: news ? lines(news.said, list) : list,
    buttons: [
      ...(isLead
        ? leadRows(view)
        : [[button(BUTTONS.leaveClass, { kind: 'askToLeave', classId })]]),
      ...(news ? [[undoButton(news.actId)]] : []),
      [button(BUTTONS.classes, { kind: 'classes', page: 0 }), back(classId)],
    ],
  };
}

function leadRows({ schoolClass, teachers, open }: TeachersView): Button[][] {
  const { id: classId } = schoolClass;
  const invite = (label: string, role: TeacherRole) =>
    button(label, { kind: 'inviteTeacher', classId, role, was: signOfLink(open, role) });
  const cancel = (label: string, role: TeacherRole) =>
    open.some((each) => each.role === role)
      ? [button(label, { kind: 'cancelInvite', classId, role })]
      : [];
  const others = teachers.filter(({ isYou }) => !isYou).slice(0, MOST_BUTTONS);
  return [
    ...others.map((each, at) => [
      button(texts.removeTeacherButton(schoolClass, each, at + 1), {
        kind: 'removeTeacher',
        classId,
        teacher: each.teacherId,
      }),
    ]),
    [invite(BUTTONS.inviteTeacher, 'co'), ...cancel(BUTTONS.cancelLink, 'co')],
    [invite(BUTTONS.handOver, 'lead'), ...cancel(BUTTONS.cancelHandOver, 'lead')],
    [button(BUTTONS.archiveClass, { kind: 'archiveClass', classId })],
  ];
}

/** Asked once, because only a new link leads back. */
export function askToLeaveScreen(schoolClass: SchoolClass): Screen {
  const { id: classId } = schoolClass;
  return {
    text: texts.askToLeaveClass(schoolClass),
    buttons: [
      [button(BUTTONS.reallyLeave, { kind: 'leaveClass', classId })],
      [button(BUTTONS.back, { kind: 'teachers', classId })],
    ],
  };
}

/** After a class is archived. */
export function archivedClassScreen(
  schoolClass: Pick<SchoolClass, 'title'>,
  actId: string,
): Screen {
  return {
    text: texts.classArchived(schoolClass),
    buttons: [[undoButton(actId)], [button(BUTTONS.classes, { kind: 'classes', page: 0 })]],
  };
}

/** A teacher's classes, to choose one or to make another. `news` is what was just done. */
export function classesScreen(
  classes: readonly SchoolClass[],
  at = 0,
  news: string | null = null,
): Screen {
  const { shown, page, pages } = pageOf(classes, at, CLASSES_A_PAGE);
  const list = texts.classList(classes.length, page, pages);
  return {
    text: news === null ? list : lines(news, list),
    buttons: [
      ...shown.map(({ id: classId, title }) => [
        button(name(title), { kind: 'openClass', classId }),
      ]),
      ...pageRow({ page, pages }, (to) => ({ kind: 'classes', page: to })),
      [button(BUTTONS.newClass, { kind: 'newClass' })],
    ],
  };
}
