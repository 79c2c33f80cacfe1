import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import { packPlace, unpackPlace } from '../../../bot/callback/plan-place.ts';
import type { Screen } from '../../../bot/screens/screen.ts';
import * as screens from '../../../bot/screens/term-screens.ts';
import {
  makeScheme,
  PLAN_LIMITS,
  TERM_WEEKS,
  type WeekPlan,
  weekStarts,
} from '../../../drills/index.ts';
import { day } from '../../drills/support/day.ts';
import { kingfisher } from '../support/kingfisher.ts';

const FIRST = day('2026-09-14');
const calendar = { weekdays: [1, 2, 3, 4, 5], breaks: [] } as const;
const classId = kingfisher.id;
const actionsOf = ({ buttons }: Screen) => buttons.flat().map(({ data }) => unpack(data));
const labelsOf = ({ buttons }: Screen) => buttons.flat().map(({ label }) => label);
const linesOf = ({ text }: Screen) => text.text.split('\n');

function term(weeks: readonly WeekPlan[], week: number | null = 1): screens.TermView {
  const at = new Date('2026-09-14T08:00:00Z');
  const id = '019a0000-0000-7000-8000-0000000000aa';
  return {
    schoolClass: kingfisher,
    scheme: { id, firstDay: FIRST, weeks, createdAt: at, changedAt: at },
    weeks,
    starts: weekStarts(FIRST, calendar, weeks.length),
    week,
  };
}

const made = (weeks: number) => makeScheme({ curriculum: 'caps', grade: '2', weeks });
const FULL: WeekPlan = {
  parts: makeScheme({ curriculum: 'caps', grade: '2', weeks: 2 })
    .flatMap(({ parts }) => parts)
    .slice(0, PLAN_LIMITS.parts.max),
};

describe('the term', () => {
  it('is under ten lines and ten rows on every page, with each week on one of them', () => {
    for (const count of [1, 5, 6, 14, TERM_WEEKS.max]) {
      const view = term(made(count));
      const pages = Math.ceil(count / screens.WEEKS_A_PAGE);
      const weeks = Array.from({ length: pages }, (_, page) => {
        const screen = screens.termScreen(view, page, classId);
        expect(linesOf(screen).length).toBeLessThan(10);
        expect(screen.buttons.length).toBeLessThanOrEqual(10);
        return actionsOf(screen).flatMap((each) => (each?.kind === 'termWeek' ? [each.week] : []));
      });
      expect(weeks.flat()).toEqual(Array.from({ length: count }, (_, at) => at + 1));
    }
  });

  it('says when each week begins, what it brings, and where the next evening is', () => {
    const lines = linesOf(screens.termScreen(term(made(6), 2), 0));
    expect(lines[1]).toBe('The next evening is in week 2.');
    expect(lines[3]).toMatch(/^▸ 2\. Mon 21 Sept, new: /);
    const same: WeekPlan = { parts: [{ rung: 'clock.half', cards: 5, seconds: 5 }] };
    expect(linesOf(screens.termScreen(term([same, same]), 0))[3]).toBe('2. Mon 21 Sept, as before');
  });

  it('says that it has not begun, or that it is over', () => {
    const stand = (week: number | null) => linesOf(screens.termScreen(term(made(6), week), 0))[1];
    expect(stand(null)).toBe('It begins on Mon 14 Sept.');
    expect(stand(7)).toBe('It is over; its last plan stays in use.');
  });
});

describe('a week of the term', () => {
  it('is under ten lines and ten rows with six parts, and leads back to its page', () => {
    const screen = screens.termWeekScreen(term([...made(7), FULL]), 8);
    expect(linesOf(screen).length).toBeLessThan(10);
    expect(screen.buttons.length).toBeLessThanOrEqual(10);
    expect(actionsOf(screen).at(-1)).toEqual({ kind: 'term', classId, page: 1 });
    expect(labelsOf(screen)).not.toContain('Add a part');
  });

  it('has parts and an empty place that are its own, not the week plan’s', () => {
    const actions = actionsOf(screens.termWeekScreen(term(made(7)), 3));
    const places = actions.flatMap((each) => (each && 'part' in each ? [each.part] : []));
    expect(places.map((place) => unpackPlace(place).week)).toEqual(places.map(() => 3));
    expect(places.at(-1)).toBe(packPlace({ week: 3, part: 5, slot: 0 }));
  });

  it('cannot be taken out when it is the only one, nor repeated when the term is full', () => {
    const labels = (count: number) => labelsOf(screens.termWeekScreen(term(made(count)), 1));
    expect(labels(1)).not.toContain('Take this week out');
    expect(labels(TERM_WEEKS.max)).not.toContain('Repeat this week');
    expect(labels(2)).toEqual(expect.arrayContaining(['Take this week out', 'Repeat this week']));
  });
});

describe('a new term', () => {
  it('ticks what is chosen and is made from one of the days offered', () => {
    const screen = screens.newTermScreen(kingfisher, {
      weeks: 8,
      share: 'second',
      starts: [FIRST, day('2026-09-21')],
      steps: 12,
      grade: 'Year 2, England',
      current: null,
    });
    const ticked = labelsOf(screen).filter((label) => label.startsWith('✓ '));
    expect(ticked).toEqual(['✓ 8 weeks', '✓ Second third']);
    expect(actionsOf(screen).filter((each) => each?.kind === 'termMake')).toEqual([
      { kind: 'termMake', classId, weeks: 8, share: 2, from: '2026-09-14', was: 'none' },
      { kind: 'termMake', classId, weeks: 8, share: 2, from: '2026-09-21', was: 'none' },
    ]);
    expect(screen.buttons.length).toBeLessThanOrEqual(10);
  });
});

it('a place in a plan comes back as it was, and a part of the week plan is its own number', () => {
  for (let number = 0; number < 2_100; number += 1) {
    expect(packPlace(unpackPlace(number))).toBe(number);
  }
  expect(unpackPlace(4)).toEqual({ week: 0, part: 4, slot: 0 });
  expect(packPlace({ week: 12, part: 3, slot: 1 })).toBe(1213);
});
