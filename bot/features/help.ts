import {
  childrenOfClass,
  findEvening,
  findTeacherByChat,
  getPlans,
  listClasses,
  localTimeAt,
  type SchoolClass,
} from '../../db/index.ts';
import { back } from '../screens/class-screens.ts';
import { type Button, button, type Screen } from '../screens/screen.ts';
import { classesScreen } from '../screens/teacher-screens.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { practiceStopped, stranger } from '../texts/family.ts';
import * as texts from '../texts/help.ts';
import { lines } from '../texts/words.ts';
import { asItComes, pacesByChild, pauseOf } from './as-it-comes.ts';
import { nextEvening } from './next-evening.ts';
import { type Family, readFamily } from './read-family.ts';
import type { Typed } from './say.ts';

/**
 * What fits where the sender is: the next thing to do for a teacher, where today's drill is for a family. `asked` is false for
 * a message that nobody had asked for, which is said first.
 */
export async function help(message: Typed, asked: boolean): Promise<void> {
  const screens = await helpFor(message);
  if (screens.length === 0) return message.reply(stranger(message.deps.teachers));
  for (const { text, buttons } of screens) {
    await message.reply(asked ? text : lines(texts.notAsked(), text), buttons);
  }
}

/** One screen for each thing that the sender is; none for a stranger. */
async function helpFor(message: Typed): Promise<readonly Screen[]> {
  const { store } = message.deps;
  const helped = await readFamily(store, message.userId);
  const family = helped && (await familyHelp(message, helped));
  const teacher = await findTeacherByChat(store, message.userId);
  const own = teacher ? await teacherHelp(message, teacher.id) : null;
  return [family, own].filter((screen) => screen !== null);
}

async function familyHelp(
  { deps }: Typed,
  { helperId, children, stopped }: Family,
): Promise<Screen> {
  const { store, clock } = deps;
  const paces = await pacesByChild(deps, helperId);
  const stands = [];
  for (const child of children) {
    const { day } = localTimeAt(clock.now(), child.schoolClass.zone);
    const evening = await findEvening(store, { helperId, childId: child.id, day });
    stands.push({ child: asItComes(child, paces.get(child.id)), isHere: evening !== null });
  }
  const [only] = children.length === 1 ? children : [];
  const text = lines(
    stopped.length > 0 ? practiceStopped(stopped) : null,
    stands.length > 0 ? texts.helpForFamily(stands) : null,
    only ? pauseOf(paces.get(only.id)) : null,
  );
  return { text, buttons: [] };
}

async function teacherHelp({ deps }: Typed, teacherId: string): Promise<Screen> {
  const { store, clock } = deps;
  const classes = await listClasses(store, teacherId);
  const [only] = classes;
  if (!only) {
    return {
      text: texts.helpWithoutClass(),
      buttons: [[button(BUTTONS.newClass, { kind: 'newClass' })]],
    };
  }
  if (classes.length > 1) {
    return { ...classesScreen(classes), text: texts.helpWithClasses(classes.length) };
  }
  const children = await childrenOfClass(store, only.id);
  const { active } = await getPlans(store, { teacherId, classId: only.id });
  const joined = children.filter(({ helpers }) => helpers > 0).length;
  const stage = stageOf({ children: children.length, joined, hasPlan: active !== null });
  const { next } = await nextEvening(store, only, clock.now());
  return {
    text: texts.helpWithClass(only, stage, { waiting: children.length - joined, next }),
    buttons: [...nextSteps(only, stage).map((each) => [each]), [back(only.id)]],
  };
}

function stageOf(at: { children: number; joined: number; hasPlan: boolean }): texts.ClassStage {
  if (at.children === 0) return 'no_children';
  if (!at.hasPlan) return 'no_plan';
  return at.joined === 0 ? 'nobody_joined' : 'running';
}

function nextSteps({ id: classId }: SchoolClass, stage: texts.ClassStage): Button[] {
  switch (stage) {
    case 'no_children':
      return [button(BUTTONS.addChildren, { kind: 'askFor', classId, what: 'roster' })];
    case 'no_plan':
      return [
        button(BUTTONS.firstPlan, { kind: 'firstPlan', classId, curriculum: 'guess' }),
        button(BUTTONS.plan, { kind: 'plan', classId }),
      ];
    case 'nobody_joined':
      return [button(BUTTONS.print, { kind: 'print', classId, paper: 0 })];
    case 'running':
      return [button(BUTTONS.classNow, { kind: 'classNow', classId })];
  }
}
