import {
  AppError,
  archiveChild,
  bringBackChild,
  getAdjustment,
  getChild,
  getClass,
  getPlans,
  listActs,
  listArchived,
  listChildren,
  listClasses,
  moveChild,
  type TeacherScope,
} from '../../db/index.ts';
import { sendScreen } from '../chat/show.ts';
import * as screens from '../screens/children-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { cancelButton } from '../screens/set-up-screens.ts';
import * as texts from '../texts/children.ts';
import { expect } from './expectations.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';
import { turn } from './turn.ts';

/** The list of a class's children and what is done for one of them, links apart. */
export const childrenTaps: TapHandlers<
  | 'children'
  | 'child'
  | 'renameChild'
  | 'moveChild'
  | 'moveChildTo'
  | 'archiveChild'
  | 'archivedChildren'
  | 'bringBack'
> = {
  children: (tap, { classId, page }) =>
    turn(tap, classId, (scope) => readChildren(tap, scope, page)),
  child: (tap, { classId, number }) => turn(tap, classId, (scope) => readChild(tap, scope, number)),
  renameChild: async (tap, { classId, number }) => {
    const { deps, userId } = tap;
    const child = await getChild(
      deps.store,
      await teacherScope(deps.store, userId, classId),
      number,
    );
    await expect(deps, userId, { kind: 'nickname', data: { classId, number } });
    await tap.answer();
    await sendScreen(deps, userId, { text: texts.askNickname(child), buttons: [[cancelButton()]] });
  },
  moveChild: (tap, { classId, number, page }) =>
    turn(tap, classId, async (scope) => {
      const { store } = tap.deps;
      const child = await getChild(store, scope, number);
      const classes = await listClasses(store, scope.teacherId);
      const others = classes.filter(({ id }) => id !== classId);
      return screens.moveScreen(classId, child, others, page);
    }),
  moveChildTo: (tap, { classId, number, to }) =>
    turn(tap, classId, (scope) => move(tap, scope, number, to)),
  archiveChild: (tap, { classId, number }) =>
    turn(tap, classId, (scope) => archive(tap, scope, number)),
  archivedChildren: (tap, { classId, page }) =>
    turn(tap, classId, (scope) => readArchived(tap, scope, page)),
  bringBack: (tap, { classId, number }) =>
    turn(tap, classId, async (scope) => {
      const { store, clock } = tap.deps;
      const archived = await listArchived(store, scope);
      const child = archived.find((row) => row.number === number);
      // Tapped twice, or brought back with Undo: the list says where things stand.
      if (!child) return readArchived(tap, scope, 0);
      await bringBackChild(store, scope, { number, now: clock.now() });
      return readArchived(tap, scope, 0, texts.broughtBack(child.nickname));
    }),
};

/** The page of the list; past the end, the last one. */
export async function readChildren(tap: Tap, scope: TeacherScope, page: number): Promise<Screen> {
  const { store } = tap.deps;
  const archived = await listArchived(store, scope);
  const children = await listChildren(store, scope);
  return screens.childrenScreen(await getClass(store, scope), children, page, archived.length);
}

/** A child's screen as things stand. */
export async function readChild(tap: Tap, scope: TeacherScope, number: number): Promise<Screen> {
  const { store } = tap.deps;
  const child = await getAdjustment(store, scope, number);
  const page = screens.pageOfChild(await listChildren(store, scope), number);
  return screens.childScreen(await getClass(store, scope), child, page);
}

async function archive(tap: Tap, scope: TeacherScope, number: number): Promise<Screen> {
  const { store, clock } = tap.deps;
  const children = await listChildren(store, scope);
  const child = children.find((row) => row.number === number);
  if (child) {
    const actId = await archiveChild(store, scope, { number, now: clock.now() });
    return screens.goneScreen(scope.classId, texts.childArchived(child), actId);
  }
  // A tap that comes twice, or is handled again because its screen failed, shows what the first one did.
  const gone = (await listArchived(store, scope)).find((row) => row.number === number);
  if (!gone) throw new AppError('not_found', 'child');
  const acts = await listActs(store, { teacherId: scope.teacherId, now: clock.now() });
  const act = acts.find((each) => each.kind === 'childArchived' && each.before.childId === gone.id);
  return screens.goneScreen(scope.classId, texts.childArchived(gone), act?.id ?? null);
}

async function move(
  tap: Tap,
  scope: TeacherScope,
  number: number,
  toClassId: string,
): Promise<Screen> {
  const { store, clock } = tap.deps;
  const now = clock.now();
  const isHere = (await listChildren(store, scope)).some((row) => row.number === number);
  const made = isHere ? await moveChild(store, scope, { number, toClassId, now }) : null;
  const acts = await listActs(store, { teacherId: scope.teacherId, now });
  const act = acts
    .flatMap((each) => (each.kind === 'childMoved' ? [each] : []))
    .find(({ id, classId, before }) =>
      made === null ? classId === scope.classId && before.number === number : id === made,
    );
  if (!act) throw new AppError('not_found', 'child');
  const to = await getClass(store, { ...scope, classId: act.before.toClassId });
  const { active } = await getPlans(store, { ...scope, classId: to.id });
  const { toNumber } = act.before;
  const text = texts.childMoved(act.nickname ?? '', {
    to,
    number: toNumber,
    hasPlan: active !== null,
  });
  return screens.goneScreen(scope.classId, text, act.id);
}

async function readArchived(
  tap: Tap,
  scope: TeacherScope,
  page: number,
  news: string | null = null,
): Promise<Screen> {
  const { store } = tap.deps;
  const schoolClass = await getClass(store, scope);
  return screens.archivedScreen(schoolClass, await listArchived(store, scope), page, news);
}
