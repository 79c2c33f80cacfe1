import {
  type FamilyChild,
  type ListedChild,
  type SchoolClass,
  storedDay,
  storedTime,
} from '../../../db/index.ts';
import {
  type ChildWeek,
  type EveningRecord,
  type SchoolDay,
  summariseWeek,
  type WeekSummary,
} from '../../../drills/index.ts';

/** Kingfisher class at Harbour Lane School. */
export const kingfisher: SchoolClass = {
  id: '019a0000-0000-7000-8000-0000000000c1',
  title: 'Kingfisher class',
  zone: 'Africa/Johannesburg',
  weekdays: [1, 2, 3, 4, 5],
  eveningTime: storedTime('17:30'),
  nudgeTime: storedTime('19:00'),
  digestWeekday: 5,
  digestTime: storedTime('20:00'),
  digestSince: new Date('2026-09-01T08:00:00Z'),
};

/** A child of the class list. */
export function listed(number: number, nickname: string, helpers = 1): ListedChild {
  return {
    id: `child-${number}`,
    number,
    nickname,
    helpers,
    reachable: helpers,
    left: false,
    eveningTime: null,
  };
}

/** A child as its helper sees it. */
export function family(nickname: string): FamilyChild {
  return { id: nickname, nickname, eveningTime: storedTime('17:30'), schoolClass: kingfisher };
}

/** Monday to Friday. */
export const WEEK: readonly SchoolDay[] = [14, 15, 16, 17, 18].map((day) =>
  storedDay(`2026-09-${day}`),
);

/** An evening that was marked: eight sums right of ten, one wobbling fact, two pages. */
export function practised(day: SchoolDay, change: Partial<EveningRecord> = {}): EveningRecord {
  return {
    day,
    status: 'practised',
    parts: [{ strand: 'bonds', rung: 'bonds.to10', right: 8, asked: 10 }],
    facts: [
      { fact: 'add:3+4', right: false },
      { fact: 'clock:0330', right: false },
    ],
    pages: 2,
    ...change,
  };
}

/** A child's week: practised on each day unless said otherwise. */
export function week(number: number, nickname: string, change: Partial<ChildWeek> = {}): ChildWeek {
  return {
    childId: `child-${number}`,
    number,
    nickname,
    joined: true,
    left: false,
    reachable: true,
    silentRun: 0,
    evenings: WEEK.map((day) => practised(day)),
    ...change,
  };
}

/** The digest's numbers for these children. */
export function summaryOf(children: readonly ChildWeek[], days = WEEK): WeekSummary {
  return summariseWeek({ days, children });
}
