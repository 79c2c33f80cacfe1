import type { SchoolDay } from '../calendar/school-day.ts';

/** What is known about one child and one fact, folded from that child's marks. `streak` counts the latest right marks in a row. */
export interface FactMemory {
  readonly asked: number;
  readonly right: number;
  readonly streak: number;
  readonly lastDay: SchoolDay;
  readonly lastRight: boolean;
}
