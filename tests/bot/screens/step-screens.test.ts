import { describe, expect, it } from 'vitest';
import type { Action } from '../../../bot/callback/actions.ts';
import { unpack } from '../../../bot/callback/codec.ts';
import type { Screen } from '../../../bot/screens/screen.ts';
import * as screens from '../../../bot/screens/step-screens.ts';
import type { SchoolClass } from '../../../db/index.ts';
import { PROFILES, rungsOf, STRANDS, type Strand, usualRungs } from '../../../drills/index.ts';
import { kingfisher } from '../support/kingfisher.ts';

const classId = kingfisher.id;
/** The second part of the week plan, which is not there yet. */
const AT = { part: 1, present: [] } as const;
const year2: SchoolClass = { ...kingfisher, curriculum: 'england', grade: '2' };
const CLASSES: readonly SchoolClass[] = PROFILES.flatMap(({ id, grades }) =>
  [null, ...grades.map((grade) => grade.id)].map((grade) => ({
    ...kingfisher,
    curriculum: id,
    grade,
  })),
);

const actionsOf = ({ buttons }: Screen) => buttons.flat().map(({ data }) => unpack(data));
const labelsOf = ({ buttons }: Screen) => buttons.flat().map(({ label }) => label);
const stepsOn = (screen: Screen) =>
  actionsOf(screen).flatMap((action) => (action?.kind === 'planRung' ? [action.rung] : []));
const marked = (screen: Screen) =>
  screen.buttons.flat().flatMap(({ label, data }) => {
    const action = unpack(data);
    return label.startsWith('● ') && action?.kind === 'planRung' ? [action.rung] : [];
  });
const usualIds = ({ curriculum, grade }: SchoolClass, strand: Strand) =>
  grade === null ? [] : usualRungs(curriculum, grade, strand).map(({ rung }) => rung);
const firstOf = (schoolClass: SchoolClass, strand: Strand) =>
  screens.firstStepsScreen(schoolClass, AT, strand);

/** Every list of a strand's steps that can be reached by its own buttons. */
function listsFrom(schoolClass: SchoolClass, strand: Strand): Screen[] {
  const seen = new Map<string, Screen>();
  const open = [firstOf(schoolClass, strand)];
  for (let screen = open.pop(); screen; screen = open.pop()) {
    seen.set(String(screen.text) + JSON.stringify(screen.buttons), screen);
    for (const { data } of screen.buttons.flat()) {
      const action: Action | null = unpack(data);
      if (action?.kind !== 'planSteps') continue;
      const { of, page } = action;
      const next = screens.stepsScreen(schoolClass, AT, { strand, of, page });
      if (!seen.has(String(next.text) + JSON.stringify(next.buttons))) open.push(next);
    }
  }
  return [...seen.values()];
}

describe('choosing what is practised', () => {
  it('offers every strand and the way back', () => {
    expect(actionsOf(screens.chooseStrandScreen(kingfisher, AT))).toEqual([
      ...STRANDS.map((strand) => ({ kind: 'planStrand', classId, part: 1, strand })),
      { kind: 'plan', classId },
    ]);
  });

  it('marks the strands with usual steps by a sign, and says what it means', () => {
    const screen = screens.chooseStrandScreen(year2, AT);
    const without = labelsOf(screen).filter((label) => !label.startsWith('● '));
    expect(without).toEqual(['doubles', 'halves', 'Back']);
    expect(screen.text.text).toContain('● has steps usual in Year 2, England');
  });

  it('marks nothing while no grade is chosen', () => {
    const screen = screens.chooseStrandScreen(kingfisher, AT);
    expect(`${labelsOf(screen)} ${screen.text}`).not.toContain('●');
  });
});

describe('choosing another step for a part', () => {
  const here = { part: 1, present: ['bonds.to10'] } as const;

  it('ticks the strand and the step that are there now, and nothing else', () => {
    const strands = labelsOf(screens.chooseStrandScreen(year2, here));
    expect(strands.filter((label) => label.startsWith('✓ '))).toEqual(['✓ ● number bonds']);
    const steps = labelsOf(screens.firstStepsScreen(year2, here, 'bonds'));
    expect(steps.filter((label) => label.startsWith('✓ '))).toEqual(['✓ ● adding within 10']);
    const others = labelsOf(screens.firstStepsScreen(year2, here, 'clock'));
    expect(others.filter((label) => label.includes('✓'))).toEqual([]);
  });

  it('offers only strands that mix for a step to be mixed in', () => {
    const mixing = screens.chooseStrandScreen(kingfisher, { ...here, part: 11 });
    expect(mixing.text.text).toContain('What shall be mixed in?');
    expect(labelsOf(mixing)).toEqual([
      '✓ number bonds',
      'take away',
      'doubles',
      'halves',
      'times tables',
      'Back',
    ]);
    const clocks = screens.chooseStrandScreen(kingfisher, { part: 11, present: ['clock.half'] });
    expect(labelsOf(clocks)).toEqual(['✓ clock', 'Back']);
  });

  it('leads back to the week of the term that the part is in', () => {
    const inWeek = { part: 302, present: [] } as const;
    expect(actionsOf(screens.chooseStrandScreen(kingfisher, inWeek)).at(-1)).toEqual({
      kind: 'termWeek',
      classId,
      week: 3,
    });
    expect(actionsOf(screens.firstStepsScreen(kingfisher, inWeek, 'clock')).at(-1)).toMatchObject({
      kind: 'termWeek',
    });
  });
});

describe('the first list of a strand', () => {
  it.each(STRANDS)('shows the usual steps of %s in every grade that has some', (strand) => {
    for (const schoolClass of CLASSES) {
      const usual = usualIds(schoolClass, strand);
      if (usual.length === 0) continue;
      const screen = firstOf(schoolClass, strand);
      expect(stepsOn(screen)).toEqual(usual.slice(0, screens.STEPS_A_PAGE));
      expect(marked(screen)).toEqual(stepsOn(screen));
    }
  });

  it('shows all steps where none is usual, and says so', () => {
    const screen = firstOf(year2, 'doubles');
    expect(stepsOn(screen)).toEqual(rungsOf('doubles').map(({ id }) => id));
    expect(screen.text.text).toContain('None of these is marked usual in Year 2, England.');
  });

  it('shows all steps at once while no grade is chosen, without a word about grades', () => {
    const screen = firstOf(kingfisher, 'clock');
    expect(stepsOn(screen)).toEqual(rungsOf('clock').map(({ id }) => id));
    expect(marked(screen)).toEqual([]);
    expect(screen.text.text).toBe('Clock: which step?');
  });

  it('shows the kinds of counting at once while no grade is chosen', () => {
    expect(labelsOf(firstOf(kingfisher, 'counting'))).toEqual([
      'in ones',
      'in tens',
      'in tens (13, 23)',
      'in fives',
      'in twos',
      'in threes',
      'in fours',
      'in ones across 100s',
      'All strands',
      'Back',
    ]);
  });
});

describe('the lists of a strand', () => {
  it.each(STRANDS)('lead to every step of %s, whatever the grade', (strand) => {
    for (const schoolClass of CLASSES) {
      const found = new Set(listsFrom(schoolClass, strand).flatMap(stepsOn));
      expect([...found].toSorted()).toEqual(
        rungsOf(strand)
          .map(({ id }): string => id)
          .toSorted(),
      );
    }
  });

  it.each(STRANDS)('of %s mark a step exactly where it is usual', (strand) => {
    for (const schoolClass of CLASSES) {
      const usual = usualIds(schoolClass, strand);
      for (const screen of listsFrom(schoolClass, strand)) {
        expect(marked(screen)).toEqual(
          stepsOn(screen).filter((rung) => usual.some((id) => id === rung)),
        );
      }
    }
  });

  it.each(STRANDS)('of %s lead to the other strands and back to the plan', (strand) => {
    for (const screen of CLASSES.flatMap((each) => listsFrom(each, strand))) {
      expect(actionsOf(screen).slice(-2)).toEqual([
        { kind: 'planStrand', classId, part: 1, strand: 'all' },
        { kind: 'plan', classId },
      ]);
    }
  });

  it.each(STRANDS)(
    'of %s fit on a phone: ten steps at most, and labels that can be read',
    (strand) => {
      for (const { buttons } of CLASSES.flatMap((each) => listsFrom(each, strand))) {
        const steps = buttons.flat().filter(({ data }) => unpack(data)?.kind === 'planRung');
        expect(steps.length).toBeLessThanOrEqual(screens.STEPS_A_PAGE);
        for (const row of buttons) {
          const limit = row.length === 1 ? 40 : row.length === 2 ? 22 : 13;
          for (const { label } of row) expect([...label].length).toBeLessThanOrEqual(limit);
        }
      }
    },
  );

  it('never show two buttons that say the same', () => {
    for (const screen of CLASSES.flatMap((each) => STRANDS.flatMap((s) => listsFrom(each, s)))) {
      expect(new Set(labelsOf(screen)).size).toBe(labelsOf(screen).length);
    }
  });
});

describe('a long list', () => {
  const grade2: SchoolClass = { ...kingfisher, curriculum: 'caps', grade: '2' };
  const page = (at: number) =>
    screens.stepsScreen(grade2, AT, { strand: 'counting', of: 'usual', page: at });

  it('is turned page by page, easier steps first, each step once', () => {
    const usual = usualIds(grade2, 'counting');
    expect(usual.length).toBeGreaterThan(2 * screens.STEPS_A_PAGE);
    expect([0, 1, 2].flatMap((at) => stepsOn(page(at)))).toEqual(usual);
    expect(page(1).text.text).toContain('Page 2 of 3, easier steps first.');
  });

  it('offers only pages that are there', () => {
    const turns = (screen: Screen) =>
      labelsOf(screen).filter((label) => /^(?:Easier|Harder) /.test(label));
    expect([0, 1, 2].map((at) => turns(page(at)))).toEqual([
      ['Harder steps'],
      ['Easier steps', 'Harder steps'],
      ['Easier steps'],
    ]);
  });

  it('that has become shorter shows its last page', () => {
    expect(page(9_999)).toEqual(page(2));
  });
});
