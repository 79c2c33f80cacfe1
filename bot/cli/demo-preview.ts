import { type SchoolClass, storedDay, storedTime } from '../../db/index.ts';
import { composeEvening } from '../../drills/index.ts';
import { DEMO_PLAN } from '../roots/demo-class.ts';
import type { Preview } from '../screens/preview-screen.ts';

const MONDAY = storedDay('2026-09-14');

/** The invented class, as the rehearsal has it. */
const KINGFISHER: SchoolClass = {
  id: '00000000-0000-7000-8000-0000000000c1',
  title: 'Kingfisher class, Harbour Lane School',
  language: 'en',
  zone: 'Europe/London',
  weekdays: [1, 2, 3, 4, 5],
  eveningTime: storedTime('17:30'),
  nudgeTime: storedTime('19:00'),
  digestWeekday: 5,
  digestTime: storedTime('20:00'),
  digestSince: new Date('2026-09-01T08:00:00Z'),
  curriculum: 'england',
  grade: '1',
};

/** The first evening of the invented class: no database is needed, and it is the same every time. */
export function demoPreview(): Preview {
  return {
    schoolClass: KINGFISHER,
    day: MONDAY,
    drill: composeEvening({
      plan: DEMO_PLAN,
      memory: new Map(),
      lastStarts: new Map(),
      today: MONDAY,
      seed: `${KINGFISHER.id} ${MONDAY}`,
    }),
    isDraft: false,
    book: { title: 'Pebble Path', from: 1, to: 2, last: 64, next: null },
  };
}
