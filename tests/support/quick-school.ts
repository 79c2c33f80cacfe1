import {
  acceptSlip,
  acceptTeacherInvite,
  activatePlan,
  addChildren,
  type ClassSettings,
  createClass,
  issueSlips,
  issueTeacherInvite,
  MAX_CHILDREN,
  saveDraftPlan,
} from '../../db/index.ts';
import type { WeekPlan } from '../../drills/index.ts';
import { time } from './term.ts';
import type { World } from './world.ts';

const TITLE = 'Kingfisher class, Harbour Lane School';

const SETTINGS: Omit<ClassSettings, 'title'> = {
  zone: 'Europe/London',
  weekdays: [1, 2, 3, 4, 5],
  eveningTime: time('17:30'),
  nudgeTime: time('19:00'),
  digestWeekday: 5,
  digestTime: time('19:30'),
};

/** One part of five cards and one run, so that an evening is played quickly. */
const PLAN: WeekPlan = {
  parts: [
    { rung: 'doubles.to5', cards: 5, seconds: 3 },
    { rung: 'counting.fives', cards: 10, seconds: 3 },
  ],
};

/** A phone of its own for each child's helper. */
export interface QuickFamily {
  readonly nickname: string;
  readonly childId: string;
  /** The phones of the child's helpers, the first one first. */
  readonly phones: readonly [number, ...number[]];
}

/** A school made past the chat, for tests that look at what follows. */
export interface QuickSchool {
  /** The teacher's phone. */
  readonly teacher: number;
  readonly families: readonly QuickFamily[];
}

/**
 * Makes a school with the store's own verbs, in as many classes as it takes, without a workbook. Every phone has opened its
 * chat and nothing waits in it. `helpers` is how many phones each family has.
 */
export async function makeQuickSchool(
  world: World,
  { families: count, helpers = 1 }: { families: number; helpers?: number },
): Promise<QuickSchool> {
  const { store } = world;
  const now = world.now();
  const teacherPhone = 1001;
  await openChat(world, teacherPhone, 'Class teacher');
  const code = await issueTeacherInvite(store, now);
  const teacher = await acceptTeacherInvite(store, { code, chatId: teacherPhone, now });
  const families: QuickFamily[] = [];
  for (let first = 0; first < count; first += MAX_CHILDREN) {
    const title = count > MAX_CHILDREN ? `${TITLE} ${first / MAX_CHILDREN + 1}` : TITLE;
    const schoolClass = await createClass(store, {
      teacherId: teacher.id,
      settings: { ...SETTINGS, title },
      now,
    });
    const scope = { teacherId: teacher.id, classId: schoolClass.id };
    await saveDraftPlan(store, scope, { plan: PLAN, now });
    await activatePlan(store, scope, now);
    const size = Math.min(MAX_CHILDREN, count - first);
    const nicknames = Array.from({ length: size }, (_, place) => `Wren${first + place + 1}`);
    const children = await addChildren(store, scope, { nicknames, now });
    const slips = await issueSlips(store, scope, { childIds: children.map(({ id }) => id), now });
    for (const [place, child] of children.entries()) {
      const slip = slips.find((each) => each.child.id === child.id);
      const phone = 10_000 + (first + place) * 10;
      const phones = Array.from({ length: helpers }, (_, helper) => phone + helper);
      for (const own of phones) await join(world, own, child.nickname, slip?.code ?? '');
      families.push({
        nickname: child.nickname,
        childId: child.id,
        phones: [phone, ...phones.slice(1)],
      });
    }
  }
  await forgetUpdates(world);
  return { teacher: teacherPhone, families };
}

async function join(world: World, phone: number, nickname: string, code: string): Promise<void> {
  await openChat(world, phone, `${nickname}’s helper`);
  const agreement = { textVersion: '1', language: 'en', messageId: 1 } as const;
  await acceptSlip(world.store, { code, chatId: phone, agreement, now: world.now() });
}

async function openChat({ client }: World, phone: number, name: string): Promise<void> {
  await client.addAccount({ id: phone, name });
  await client.say(phone, '/start');
}

/** Drops what the phones have sent so far: these people were let in past the chat. */
async function forgetUpdates({ rehearsal }: World): Promise<void> {
  const answer = await fetch(
    `${rehearsal.apiRoot}/bot${rehearsal.token}/deleteWebhook?drop_pending_updates=true`,
  );
  if (!answer.ok) throw new Error(`the rehearsal answered ${answer.status}`);
}
