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
  language: 'en',
  zone: 'Africa/Johannesburg',
  weekdays: [1, 2, 3, 4, 5],
  eveningTime: storedTime('17:30'),
  nudgeTime: storedTime('19:00'),
  digestWeekday: 5,
  digestTime: storedTime('20:00'),
  digestSince: new Date('2026-09-01T08:00:00Z'),
  curriculum: 'own',
  grade: null,
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
    runs: [],
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
    earlier: [],
    memory: new Map(),
    ...change,
  };
}

/** The digest's numbers for these children. */
export function summaryOf(children: readonly ChildWeek[], days = WEEK): WeekSummary {
  return summariseWeek({ days, today: storedDay('2026-09-18'), children });
}

/**
 * A week that holds every proposal: all four children of the smaller group need more time with sums, everybody is ready in
 * halves, nobody in clock, and two tried a count. The first child of the class is called as said.
 */
export function splitWeek(nickname: string): WeekSummary {
  const scores = (number: number): EveningRecord['parts'] => [
    { strand: 'bonds', rung: 'bonds.to10', right: number <= 4 ? 3 : 10, asked: 10 },
    { strand: 'halves', rung: 'halves.to20', right: 10, asked: 10 },
    { strand: 'clock', rung: 'clock.half', right: 8, asked: 10 },
    ...(number <= 2
      ? [{ strand: 'counting', rung: 'counting.fives', right: 9, asked: 10 } as const]
      : []),
  ];
  const runs = [{ start: 20, step: 5, length: 10, said: 9 }];
  const children = Array.from({ length: 10 }, (_, at) => {
    const parts = scores(at + 1);
    return week(at + 1, at === 0 ? nickname : `Wren ${at + 1}`, {
      evenings: WEEK.map((day) => practised(day, { parts, runs: at < 2 ? runs : [] })),
    });
  });
  return summaryOf(children);
}
