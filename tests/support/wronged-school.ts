import {
  acceptTeacherInvite,
  addBook,
  addBreak,
  addRoster,
  archiveChild,
  createClass,
  findHelperByChat,
  findTeacherByChat,
  getClass,
  inviteColleague,
  issueSlips,
  issueTeacherInvite,
  leaveAll,
  listClasses,
  removeTeacher,
  saveDraftPlan,
  setGreeting,
  startScheme,
  type TeacherScope,
} from '../../db/index.ts';
import type { Gate } from '../../rehearsal/server.ts';
import type { RightThings } from './action-rules.ts';
import { newPhone } from './phones.ts';
import { FRIDAY, openQuickStage, type QuickStage } from './quick-stage.ts';
import { readTable } from './raw-rows.ts';
import { day, PLAN } from './term.ts';
import type { World } from './world.ts';

/** Everybody who may try something. The numbers are their phones. */
export const PEOPLE = {
  'the lead teacher': 1001,
  'a co-teacher': 1002,
  'a co-teacher who was removed': 1003,
  'the teacher of another class': 1004,
  'the child’s helper': 10_000,
  'a helper who has left': 10_001,
  'another family’s helper': 10_010,
  'a stranger': 3001,
} as const;

/** One of {@link PEOPLE}. */
export type Person = keyof typeof PEOPLE;

/** A school on a Friday evening in which everybody is there who may try what is not theirs. */
export interface WrongedSchool {
  readonly world: World;
  readonly things: RightThings;
  /** The act of removing the co-teacher, which only the lead could do. */
  readonly removal: string;
  /** Words of the right ones that nobody else may be told. */
  readonly secrets: readonly string[];
}

const GREETING = 'A good week under the willow.';
const PASTIME = { title: 'Pebble Path', firstPage: 1, lastPage: 40, pagesADay: 2 };

/** Opens the school. The first family's evening is begun, and its first part is being marked. */
export async function openWrongedSchool(options: { gate?: Gate } = {}): Promise<WrongedSchool> {
  const stage = await openQuickStage({ families: 2, helpers: 2, ...options });
  const { world } = stage;
  const scope = await scopeOf(world);
  const removal = await addPeople(world, scope);
  const things = await fill(world, scope, stage);
  await world.goTo(FRIDAY.evening);
  await stage.family(0).tap('Start');
  await stage.family(0).tap('Some');
  await world.settle();
  const [evening] = (await readTable(world.store, 'evening')).filter(
    (row) => row.child_id === things.childId,
  );
  return {
    world,
    removal,
    things: { ...things, evening: String(evening?.id) },
    secrets: ['Wren1', 'Sorrel', 'Plover class', 'Fair on the green', GREETING],
  };
}

async function scopeOf({ store }: World): Promise<TeacherScope> {
  const lead = await findTeacherByChat(store, PEOPLE['the lead teacher']);
  if (!lead) throw new Error('the stage has a teacher');
  const [own] = await listClasses(store, lead.id);
  if (!own) throw new Error('the stage has a class');
  return { teacherId: lead.id, classId: own.id };
}

/** Returns the act of removing a co-teacher. */
async function addPeople(world: World, scope: TeacherScope): Promise<string> {
  let removal = '';
  const { store } = world;
  const now = world.now();
  for (const person of ['a co-teacher', 'a co-teacher who was removed'] as const) {
    const code = await inviteColleague(store, scope, { role: 'co', now });
    const joined = await acceptTeacherInvite(store, { code, chatId: PEOPLE[person], now });
    if (person !== 'a co-teacher') {
      removal = await removeTeacher(store, scope, { teacherId: joined.id, now });
    }
  }
  const code = await issueTeacherInvite(store, now);
  const chatId = PEOPLE['the teacher of another class'];
  const { id: teacherId } = await acceptTeacherInvite(store, { code, chatId, now });
  const settings = await settingsOf(world, scope);
  await createClass(store, { teacherId, settings: { ...settings, title: 'Heron class' }, now });
  const left = await findHelperByChat(store, PEOPLE['a helper who has left']);
  if (!left) throw new Error('the stage has a second helper');
  await leaveAll(store, { helperId: left.id, now });
  for (const id of [1002, 1003, 1004, 3001]) await (await newPhone(world, id)).say('/start');
  return removal;
}

async function settingsOf({ store }: World, scope: TeacherScope) {
  const { id: _id, digestSince: _since, ...settings } = await getClass(store, scope);
  return settings;
}

async function fill(
  world: World,
  scope: TeacherScope,
  stage: QuickStage,
): Promise<Omit<RightThings, 'evening'>> {
  const { store } = world;
  const now = world.now();
  const second = await createClass(store, {
    teacherId: scope.teacherId,
    settings: { ...(await settingsOf(world, scope)), title: 'Plover class' },
    now,
  });
  await addRoster(store, scope, { nicknames: ['Sorrel'], now });
  const act = await archiveChild(store, scope, { number: 3, now });
  const { id: book } = await addBook(store, scope, { book: PASTIME, now });
  await addBook(store, scope, { book: { ...PASTIME, title: 'Pebble Path 2' }, now });
  const fair = { first: day('2026-10-05'), last: day('2026-10-06') };
  await addBreak(store, scope, { break: fair, title: 'Fair on the green', now });
  const first = day('2026-09-21');
  const { id: greeting } = await setGreeting(store, scope, {
    words: { kind: 'text', body: GREETING, botId: null },
    times: { evenings: 'first', first, last: day('2026-09-25') },
    now,
  });
  await startScheme(store, scope, { firstDay: first, weeks: [PLAN, PLAN], instead: null, now });
  await saveDraftPlan(store, scope, { plan: PLAN, now });
  const childId = stage.school.families[0]?.childId ?? '';
  const [slip] = await issueSlips(store, scope, { childIds: [childId], now });
  const co = await findTeacherByChat(store, PEOPLE['a co-teacher']);
  return {
    classId: scope.classId,
    secondClassId: second.id,
    childId,
    book,
    greeting,
    act,
    coTeacher: co?.id ?? '',
    breakDay: fair.first,
    code: slip?.code ?? '',
  };
}
