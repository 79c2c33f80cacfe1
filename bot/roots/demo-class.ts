import {
  AppError,
  activatePlan,
  addBook,
  type Clock,
  findTeacherByChat,
  issueTeacherInvite,
  listChildren,
  listClasses,
  type Store,
  saveDraftPlan,
  type TeacherScope,
  updateClass,
} from '../../db/index.ts';
import type { WeekPlan } from '../../drills/index.ts';
import type { RehearsalClient } from '../../rehearsal/client.ts';
import { INVITE_PREFIX } from '../features/start-command.ts';
import { BUTTONS } from '../texts/buttons.ts';

/** The invented class teacher's phone. */
export const DEMO_TEACHER = 1001;

/** The invented families: a phone, and the children its owner helps. Two helpers share Kestrel. */
export const DEMO_FAMILIES: readonly { readonly id: number; readonly helps: readonly string[] }[] =
  [
    { id: 2001, helps: ['Wren', 'Juniper'] },
    { id: 2002, helps: ['Otto', 'Mabel'] },
    { id: 2003, helps: ['Kestrel'] },
    { id: 2004, helps: ['Kestrel'] },
    { id: 2005, helps: ['Pip'] },
    { id: 2006, helps: ['Saffron'] },
    { id: 2007, helps: ['Bramble'] },
    { id: 2008, helps: ['Indigo'] },
    { id: 2009, helps: ['Tamsin'] },
    { id: 2010, helps: ['Ziggy'] },
    { id: 2011, helps: ['Clover'] },
  ];

/** What the invented class practises. */
export const DEMO_PLAN: WeekPlan = {
  parts: [
    { rung: 'bonds.to10', cards: 10, seconds: 3 },
    { rung: 'takeaway.to10', cards: 8, seconds: 3 },
    { rung: 'doubles.to10', cards: 6, seconds: 3 },
    { rung: 'clock.mixed', cards: 6, seconds: 5 },
    { rung: 'counting.fives', cards: 10, seconds: 3 },
  ],
};

/** The grade in which most of the plan is usual. */
const GRADE = { curriculum: 'england', grade: '1' } as const;

/** What the demo is played on. `settle` lets the bot answer. */
export interface DemoStage {
  readonly store: Store;
  readonly clock: Clock;
  readonly client: RehearsalClient;
  readonly zone: string;
  settle(): Promise<void>;
}

/**
 * Loads Kingfisher class of Harbour Lane School: twelve children, two families with two of them, one child with two helpers.
 * Played through the chat like anybody would, so that each phone has its history; only the grade, the plan and the workbook
 * are set directly.
 */
export async function loadDemoClass(stage: DemoStage): Promise<TeacherScope> {
  await addPhones(stage.client);
  const scope = await makeClass(stage);
  const links = await pasteRoster(stage, scope);
  for (const family of DEMO_FAMILIES) {
    for (const nickname of family.helps) {
      await stage.client.openLink(family.id, links.get(nickname) ?? '');
      await stage.settle();
      await stage.client.tapLabel(family.id, BUTTONS.agree);
      await stage.settle();
    }
  }
  const now = stage.clock.now();
  await updateClass(stage.store, scope, { changes: GRADE, now });
  const book = { title: 'Pebble Path', firstPage: 1, lastPage: 64, pagesADay: 2 };
  await addBook(stage.store, scope, { book, now });
  await addBook(stage.store, scope, { book: { ...book, title: 'Pebble Path 2' }, now });
  await saveDraftPlan(stage.store, scope, { plan: DEMO_PLAN, now });
  await activatePlan(stage.store, scope, now);
  await say(stage, '/class');
  return scope;
}

async function addPhones(client: RehearsalClient): Promise<void> {
  await client.addAccount({ id: DEMO_TEACHER, name: 'Class teacher', note: 'teacher' });
  for (const { id, helps } of DEMO_FAMILIES) {
    const twin = DEMO_FAMILIES.filter((other) => other.helps[0] === helps[0]);
    const place = twin.length > 1 ? ` (${twin.findIndex((other) => other.id === id) + 1})` : '';
    await client.addAccount({
      id,
      name: `${helps.join(' & ')}’s helper${place}`,
      note: `helps ${helps.join(' and ')}`,
    });
  }
}

async function makeClass(stage: DemoStage): Promise<TeacherScope> {
  const { store, clock, client, zone } = stage;
  const invite = await issueTeacherInvite(store, clock.now());
  await client.openLink(DEMO_TEACHER, `${INVITE_PREFIX}${invite}`);
  await stage.settle();
  for (const text of ['/newclass', 'Kingfisher class, Harbour Lane School', zone]) {
    await say(stage, text);
  }
  const teacher = await findTeacherByChat(store, DEMO_TEACHER);
  const [schoolClass] = teacher ? await listClasses(store, teacher.id) : [];
  if (!teacher || !schoolClass) throw new AppError('not_found', 'demo class');
  return { teacherId: teacher.id, classId: schoolClass.id };
}

/** Pastes the roster, asks for links to send on and reads each child's off the list, as a teacher would. */
async function pasteRoster(stage: DemoStage, scope: TeacherScope): Promise<Map<string, string>> {
  const names = [...new Set(DEMO_FAMILIES.flatMap((family) => family.helps))];
  await stage.client.tapLabel(DEMO_TEACHER, BUTTONS.addChildren);
  await stage.settle();
  await say(stage, names.join('\n'));
  for (const label of [BUTTONS.missingLinks, BUTTONS.makeLinks]) {
    await stage.client.tapLabel(DEMO_TEACHER, label);
    await stage.settle();
  }
  const children = await listChildren(stage.store, scope);
  const chat = await stage.client.chat(DEMO_TEACHER);
  const text = chat.map((message) => message.text).join('\n');
  return new Map(
    children.map((child) => {
      const link = new RegExp(`^${child.number}\\. .+\\n(\\S+start=\\S+)$`, 'm').exec(text)?.[1];
      return [child.nickname, link ?? ''];
    }),
  );
}

async function say(stage: DemoStage, text: string): Promise<void> {
  await stage.client.say(DEMO_TEACHER, text);
  await stage.settle();
}
