import { describe, expect, it } from 'vitest';
import {
  type ChildPast,
  type Mark,
  type PastDay,
  rebuildMemory,
  reportMonth,
  rungById,
  type SchoolDay,
} from '../../../drills/index.ts';
import { day } from '../support/day.ts';

const OCTOBER = { first: day('2026-10-01'), last: day('2026-10-31') };
const DOUBLES = 'doubles.to5';

/** An evening on which all doubles to 5 + 5 were asked, `right` of them right. */
function practised(on: SchoolDay, right: number): { evening: PastDay; marks: Mark[] } {
  const rung = rungById(DOUBLES);
  const facts = rung?.kind === 'facts' ? rung.facts.slice(0, 5) : [];
  return {
    evening: {
      day: on,
      status: 'practised',
      parts: [{ strand: 'doubles', rung: DOUBLES, right, asked: facts.length }],
      pages: null,
    },
    marks: facts.map((fact, at) => ({ fact, day: on, right: at < right, way: 'card' })),
  };
}

function month(evenings: readonly { evening: PastDay; marks: Mark[] }[], today: SchoolDay) {
  const marks = evenings.flatMap((each) => each.marks);
  const past: ChildPast = {
    days: evenings.map(({ evening }) => evening.day),
    evenings: evenings.map(({ evening }) => evening),
    memory: rebuildMemory(marks),
    today,
  };
  const before = rebuildMemory(marks.filter((each) => each.day < OCTOBER.first));
  return reportMonth(past, { month: OCTOBER, before });
}

const days = (month: string, from: number, count: number) =>
  Array.from({ length: count }, (_, at) =>
    day(`2026-${month}-${String(from + at).padStart(2, '0')}`),
  );

describe('a child’s month', () => {
  it('names a step that was not sure when it began and is now', () => {
    const september = days('09', 21, 4).map((on) => practised(on, 1));
    const october = days('10', 5, 16).map((on) => practised(on, 5));
    expect(month([...september, ...october], day('2026-10-30'))).toEqual({
      practised: 16,
      secure: [DOUBLES],
    });
  });

  it('does not name again what was sure before', () => {
    const september = days('09', 8, 16).map((on) => practised(on, 5));
    const october = days('10', 5, 5).map((on) => practised(on, 5));
    expect(month([...september, ...october], day('2026-10-30'))).toEqual({
      practised: 5,
      secure: [],
    });
  });

  it('names nothing when nothing became sure, and never that something got lost', () => {
    const september = days('09', 8, 16).map((on) => practised(on, 5));
    const october = days('10', 5, 10).map((on) => practised(on, 1));
    expect(month([...september, ...october], day('2026-10-30'))).toEqual({
      practised: 10,
      secure: [],
    });
  });

  it('counts the evenings of the month alone, also when it is told in the next one', () => {
    const evenings = [...days('10', 5, 3), ...days('11', 2, 1)].map((on) => practised(on, 5));
    expect(month(evenings, day('2026-11-02')).practised).toBe(3);
    expect(month([], day('2026-10-30'))).toEqual({ practised: 0, secure: [] });
  });
});
