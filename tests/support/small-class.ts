import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import {
  activatePlan,
  findTeacherByChat,
  issueTeacherInvite,
  listClasses,
  saveDraftPlan,
  type TeacherScope,
} from '../../db/index.ts';
import type { WeekPlan } from '../../drills/index.ts';
import { linksOn, newPhone } from './phones.ts';
import type { World } from './world.ts';

/** Five bonds, and fives counted aloud from some number on. */
const SHORT_PLAN: WeekPlan = {
  parts: [
    { rung: 'bonds.to10', cards: 5, seconds: 3 },
    { rung: 'counting.fives', cards: 5, seconds: 3 },
  ],
};

/** A class made through the chat. */
export interface SmallClass {
  readonly teacher: Phone;
  readonly scope: TeacherScope;
  /** Join links by nickname. */
  readonly links: ReadonlyMap<string, string>;
}

/** What a small class may differ in. */
export interface SmallClassOptions {
  readonly teacherId?: number;
  readonly zone?: string;
  readonly title?: string;
  readonly plan?: WeekPlan;
}

/** Makes a class without a workbook by typing and tapping, with a plan in use and a link for each child. Nobody has joined. */
export async function makeSmallClass(
  world: World,
  nicknames: readonly string[],
  options: SmallClassOptions = {},
): Promise<SmallClass> {
  const { teacherId = 1001, zone = 'Europe/London', title = 'Heron class' } = options;
  const plan = options.plan ?? SHORT_PLAN;
  const { store } = world;
  const teacher = await newPhone(world, teacherId);
  await teacher.open(world.app.linkOf(`t-${await issueTeacherInvite(store, world.now())}`));
  for (const text of ['/newclass', title, zone]) await teacher.say(text);
  await teacher.tap(BUTTONS.addChildren);
  await teacher.say(nicknames.join('\n'));
  await teacher.tap(BUTTONS.missingLinks);
  await teacher.tap(BUTTONS.makeLinks);
  const known = await findTeacherByChat(store, teacherId);
  const [schoolClass] = known ? await listClasses(store, known.id) : [];
  if (!known || !schoolClass) throw new Error('the class was not made');
  const scope = { teacherId: known.id, classId: schoolClass.id };
  await saveDraftPlan(store, scope, { plan, now: world.now() });
  await activatePlan(store, scope, world.now());
  return { teacher, scope, links: await linksOn(teacher) };
}

/** A helper with a phone, who has opened a child's link and agreed. */
export async function joinAs(world: World, id: number, link: string | undefined): Promise<Phone> {
  const phone = await newPhone(world, id);
  await phone.open(link ?? '');
  await phone.tap(BUTTONS.agree);
  return phone;
}
