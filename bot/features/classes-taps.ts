import {
  AppError,
  findTeacherByChat,
  listClasses,
  parseZone,
  updateClass,
} from '../../db/index.ts';
import { timesScreen } from '../screens/class-screens.ts';
import { zoneCode } from '../screens/set-up-screens.ts';
import { classesScreen } from '../screens/teacher-screens.ts';
import { cancelled, classGoneOn, nothingAsked } from '../texts/set-up.ts';
import { lines } from '../texts/words.ts';
import { readHome } from './class-home.ts';
import { expected, fulfilled, type Wish } from './expectations.ts';
import { askClassTitle, makeClass } from './new-class.ts';
import { typed } from './say.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { turn } from './turn.ts';

/** A teacher's classes, making one, and leaving a question unanswered. */
export const classesTaps: TapHandlers<
  'classes' | 'newClass' | 'newZone' | 'chooseZone' | 'cancel'
> = {
  classes: async (tap, { page }) => {
    const classes = await classesOf(tap);
    await tap.answer();
    await tap.show(classesScreen(classes, page));
  },
  newClass: async (tap) => {
    await classesOf(tap);
    await tap.answer();
    await askClassTitle(tap.deps, tap.userId);
  },
  newZone: async (tap, { zone: code }) => {
    const { deps, userId } = tap;
    const wish = await expected(deps, userId);
    const zone = parseZone(zoneCode.read(code));
    if (wish?.kind !== 'new_zone' || !zone) return tap.answer(classGoneOn(), 'alert');
    await tap.answer();
    await makeClass(typed(deps, userId, ''), { title: wish.data.title, zone });
  },
  chooseZone: (tap, { classId, zone: code }) =>
    turn(tap, classId, async (scope) => {
      const { deps, userId } = tap;
      const zone = parseZone(zoneCode.read(code));
      if (!zone) throw new AppError('invalid', 'zone');
      const now = deps.clock.now();
      const schoolClass = await updateClass(deps.store, scope, { changes: { zone }, now });
      const wish = await expected(deps, userId);
      const wasAsked = wish?.kind === 'class' && wish.data.question === 'zone';
      if (wasAsked && wish.data.classId === classId) await fulfilled(deps, userId);
      return timesScreen(schoolClass);
    }),
  cancel,
};

/** Drops the open question; the screen is the class it was about. */
async function cancel(tap: Tap): Promise<void> {
  const { deps, userId } = tap;
  const wish = await expected(deps, userId);
  await fulfilled(deps, userId);
  await tap.answer(wish ? undefined : nothingAsked());
  const teacher = await findTeacherByChat(deps.store, userId);
  if (!teacher) return tap.show({ text: lines(cancelled()), buttons: [] });
  const classes = await listClasses(deps.store, teacher.id);
  const about = wish && classOf(wish);
  const asked =
    classes.find(({ id }) => id === about) ?? (classes.length === 1 ? classes[0] : null);
  if (!asked) return tap.show(classesScreen(classes, 0, cancelled()));
  const home = await readHome(deps.store, { teacherId: teacher.id, classId: asked.id });
  await tap.show({ ...home, text: lines(cancelled(), home.text) });
}

function classOf({ data }: Wish): string | null {
  return 'classId' in data ? data.classId : null;
}

async function classesOf({ deps, userId }: Tap) {
  const teacher = await findTeacherByChat(deps.store, userId);
  if (!teacher) throw new AppError('not_found', 'class');
  return listClasses(deps.store, teacher.id);
}
