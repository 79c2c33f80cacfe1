import {
  acceptSlip,
  acceptTeacherInvite,
  activatePlan,
  addChildren,
  type ClassSettings,
  createClass,
  findHelperByChat,
  issueSlips,
  issueTeacherInvite,
  openServer,
  type Store,
  saveDraftPlan,
  setAdjustment,
  setWay,
} from '../../db/index.ts';
import type { WeekPlan } from '../../drills/index.ts';
import type { RehearsalClient } from '../../rehearsal/client.ts';
import { time } from '../support/term.ts';

/** Cards of the first part, and numbers of the run that is the second. */
export const CARDS = 5;
export const RUN = 10;

const PLAN: WeekPlan = {
  parts: [
    { rung: 'doubles.to5', cards: CARDS, seconds: 3 },
    { rung: 'counting.fives', cards: RUN, seconds: 3 },
  ],
};

const SETTINGS: Omit<ClassSettings, 'title'> = {
  zone: 'Europe/London',
  weekdays: [1, 2, 3, 4, 5],
  eveningTime: time('17:30'),
  nudgeTime: time('19:00'),
  digestWeekday: 5,
  digestTime: time('19:30'),
};

const CLASS_SIZE = 30;
/** One family in ten has two phones. */
const SECOND_PHONE_EVERY = 10;

/** A child with the phones of its helpers, the first one first. */
export interface Household {
  readonly nickname: string;
  readonly childId: string;
  readonly phones: readonly [number, ...number[]];
}

export interface School {
  readonly households: readonly Household[];
  readonly teachers: readonly number[];
}

/** Where the school is made. */
export interface SchoolPlace {
  readonly databaseUrl: string;
  readonly client: RehearsalClient;
  readonly now: Date;
}

/**
 * Makes a school past the chat, each class with a teacher of its own. Families read words and have no timed cards, since drawing
 * is most of what an evening costs and not what is looked at here.
 */
export async function makeSchool(place: SchoolPlace, families: number): Promise<School> {
  const store = await openServer(place.databaseUrl, () => {});
  try {
    const households: Household[] = [];
    const teachers: number[] = [];
    for (let first = 0; first < families; first += CLASS_SIZE) {
      const teacher = 1_001 + teachers.length;
      teachers.push(teacher);
      const size = Math.min(CLASS_SIZE, families - first);
      households.push(...(await makeClass({ ...place, store }, { teacher, first, size })));
    }
    return { households, teachers };
  } finally {
    await store.close();
  }
}

async function makeClass(
  { store, client, now }: SchoolPlace & { readonly store: Store },
  { teacher, first, size }: { teacher: number; first: number; size: number },
): Promise<Household[]> {
  await open(client, teacher, 'Class teacher');
  const code = await issueTeacherInvite(store, now);
  const { id: teacherId } = await acceptTeacherInvite(store, { code, chatId: teacher, now });
  const title = `Kingfisher class ${first / CLASS_SIZE + 1}, Harbour Lane School`;
  const settings = { ...SETTINGS, title };
  const { id: classId } = await createClass(store, { teacherId, settings, now });
  const scope = { teacherId, classId };
  await saveDraftPlan(store, scope, { plan: PLAN, now });
  await activatePlan(store, scope, now);
  const nicknames = Array.from({ length: size }, (_, at) => `Wren${first + at + 1}`);
  const children = await addChildren(store, scope, { nicknames, now });
  const slips = await issueSlips(store, scope, { childIds: children.map(({ id }) => id), now });
  const households: Household[] = [];
  for (const [at, { id: childId, nickname, number }] of children.entries()) {
    await setAdjustment(store, scope, { number, change: { untimed: true }, now });
    const slip = slips.find(({ child }) => child.id === childId);
    const phone = 10_000 + (first + at) * 10;
    const hasSecond = (first + at) % SECOND_PHONE_EVERY === 0;
    const phones: [number, ...number[]] = hasSecond ? [phone, phone + 1] : [phone];
    for (const own of phones) {
      await open(client, own, `${nickname}’s helper`);
      const agreement = { textVersion: '1', language: 'en', messageId: 1 } as const;
      await acceptSlip(store, { code: slip?.code ?? '', chatId: own, agreement, now });
      const helper = await findHelperByChat(store, own);
      await setWay(store, { helperId: helper?.id ?? '', way: 'words' });
    }
    households.push({ nickname, childId, phones });
  }
  return households;
}

async function open(client: RehearsalClient, id: number, name: string): Promise<void> {
  await client.addAccount({ id, name });
  await client.say(id, '/start');
}
