import {
  AppError,
  archiveClass,
  cancelInvite,
  findTeacherByChat,
  getClass,
  inviteColleague,
  leaveClass,
  listActs,
  listClasses,
  listOpenInvites,
  listTeachers,
  removeTeacher,
  type TeacherRole,
  type TeacherScope,
} from '../../db/index.ts';
import { sendScreen } from '../chat/show.ts';
import type { Screen } from '../screens/screen.ts';
import * as screens from '../screens/teacher-screens.ts';
import * as texts from '../texts/teachers.ts';
import { INVITE_PREFIX } from './start-command.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';
import { turn } from './turn.ts';

/** Who teaches a class: inviting, handing over, removing, leaving, archiving. */
export const teacherTaps: TapHandlers<
  | 'teachers'
  | 'inviteTeacher'
  | 'cancelInvite'
  | 'removeTeacher'
  | 'askToLeave'
  | 'leaveClass'
  | 'archiveClass'
> = {
  teachers: (tap, { classId }) => turn(tap, classId, (scope) => readTeachers(tap, scope)),
  inviteTeacher: async (tap, { classId, role, was }) => {
    const scope = await teacherScope(tap.deps.store, tap.userId, classId);
    await invite(tap, scope, { role: roleOf(role), was });
  },
  cancelInvite: (tap, { classId, role }) =>
    turn(tap, classId, async (scope) => {
      const { store, clock } = tap.deps;
      await cancelInvite(store, scope, { role: roleOf(role), now: clock.now() });
      return readTeachers(tap, scope);
    }),
  removeTeacher: (tap, { classId, teacher: teacherId }) =>
    turn(tap, classId, async (scope) => {
      const { store, clock } = tap.deps;
      const there = (await listTeachers(store, scope)).some((each) => each.teacherId === teacherId);
      // Tapped twice: the list says where things stand.
      if (!there) return readTeachers(tap, scope);
      const actId = await removeTeacher(store, scope, { teacherId, now: clock.now() });
      return readTeachers(tap, scope, { said: texts.teacherRemoved(), actId });
    }),
  askToLeave: (tap, { classId }) =>
    turn(tap, classId, async (scope) =>
      screens.askToLeaveScreen(await getClass(tap.deps.store, scope)),
    ),
  leaveClass: async (tap, { classId }) => {
    const { store, clock } = tap.deps;
    const scope = await teacherScope(store, tap.userId, classId);
    const isThere = (await listClasses(store, scope.teacherId)).some(({ id }) => id === classId);
    if (isThere) await leaveClass(store, scope, clock.now());
    await tap.answer();
    await tap.show(
      screens.classesScreen(await listClasses(store, scope.teacherId), 0, texts.classLeft()),
    );
  },
  archiveClass: archive,
};

async function invite(
  tap: Tap,
  scope: TeacherScope,
  { role, was }: { role: TeacherRole; was: string },
): Promise<void> {
  const { deps, userId } = tap;
  const now = deps.clock.now();
  const schoolClass = await getClass(deps.store, scope);
  const open = await listOpenInvites(deps.store, scope, now);
  if (screens.signOfLink(open, role) !== was) {
    await tap.answer(texts.linkMade(), 'alert');
    return tap.show(await readTeachers(tap, scope));
  }
  const code = await inviteColleague(deps.store, scope, { role, now });
  await tap.answer();
  const linkOf = await deps.linksOf(scope.classId);
  const link = linkOf(INVITE_PREFIX + code);
  const text = texts.teacherLink(schoolClass, role, link);
  await sendScreen(deps, userId, { text, buttons: [] });
  await tap.show(await readTeachers(tap, scope));
}

async function archive(tap: Tap, { classId }: { classId: string }): Promise<void> {
  const { store, clock } = tap.deps;
  const now = clock.now();
  const teacher = await findTeacherByChat(store, tap.userId);
  if (!teacher) throw new AppError('not_found', 'class');
  const acts = await listActs(store, { teacherId: teacher.id, now });
  const done = acts.find((act) => act.kind === 'classArchived' && act.classId === classId);
  // Tapped twice: what the first tap did is shown again.
  if (done) {
    await tap.answer();
    return tap.show(screens.archivedClassScreen({ title: done.classTitle }, done.id));
  }
  const scope = { teacherId: teacher.id, classId };
  const schoolClass = await getClass(store, scope);
  const actId = await archiveClass(store, scope, now);
  await tap.answer();
  await tap.show(screens.archivedClassScreen(schoolClass, actId));
}

async function readTeachers(
  { deps }: Tap,
  scope: TeacherScope,
  news: { said: string; actId: string } | null = null,
): Promise<Screen> {
  const { store, clock } = deps;
  const view = {
    schoolClass: await getClass(store, scope),
    teachers: await listTeachers(store, scope),
    open: await listOpenInvites(store, scope, clock.now()),
  };
  return screens.teachersScreen(view, news);
}

function roleOf(text: string): TeacherRole {
  return text === 'lead' ? 'lead' : 'co';
}
