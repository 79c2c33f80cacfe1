import { join } from 'node:path';
import { openStore } from '../../../bot/roots/open-store.ts';
import {
  acceptSlip,
  acceptTeacherInvite,
  activatePlan,
  addChildren,
  type ClassSettings,
  createClass,
  issueSlips,
  issueTeacherInvite,
  saveDraftPlan,
  storedTime,
} from '../../../db/index.ts';

const QUIET = { debug() {}, info() {}, warn() {}, error() {} };
const AGREEMENT = { textVersion: '1', language: 'en', messageId: 1 } as const;

/** Puts a class with a plan in use, a child and a helper for each, into the embedded database of a bot that does not run. */
export async function makeClass(dataDir: string, children: number, now: Date): Promise<void> {
  const folder = join(dataDir, 'live');
  const store = await openStore({ databaseUrl: undefined, dataDir: folder }, QUIET);
  const code = await issueTeacherInvite(store, now);
  const { id: teacherId } = await acceptTeacherInvite(store, { code, chatId: 1, now });
  const settings: ClassSettings = {
    ...{ title: 'Kingfisher class, Harbour Lane School', zone: 'Europe/London' },
    ...{ weekdays: [1, 2, 3, 4, 5], digestWeekday: 5 },
    ...{ eveningTime: storedTime('17:30'), nudgeTime: storedTime('19:00') },
    digestTime: storedTime('19:30'),
  };
  const { id: classId } = await createClass(store, { teacherId, settings, now });
  const scope = { teacherId, classId };
  const plan = { parts: [{ rung: 'doubles.to5', cards: 5, seconds: 3 }] } as const;
  await saveDraftPlan(store, scope, { plan, now });
  await activatePlan(store, scope, now);
  const nicknames = Array.from({ length: children }, (_, place) => `Wren${place + 1}`);
  const made = await addChildren(store, scope, { nicknames, now });
  const slips = await issueSlips(store, scope, { childIds: made.map(({ id }) => id), now });
  for (const [place, slip] of slips.entries()) {
    await acceptSlip(store, { code: slip.code, chatId: 100 + place, agreement: AGREEMENT, now });
  }
  await store.close();
}
