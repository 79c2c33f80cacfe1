import { describe, expect, it } from 'vitest';
import { runGroups } from '../../../bot/screens/run-groups.ts';
import type { Screen } from '../../../bot/screens/screen.ts';
import { stepsScreen } from '../../../bot/screens/step-screens.ts';
import type { SchoolClass } from '../../../db/index.ts';
import { rungsOf, type Strand } from '../../../drills/index.ts';
import { kingfisher } from '../support/kingfisher.ts';

const year2: SchoolClass = { ...kingfisher, curriculum: 'england', grade: '2' };
const labelsOf = ({ buttons }: Screen) => buttons.flat().map(({ label }) => label);
const allOf = (schoolClass: SchoolClass, strand: Strand, of = 'all') =>
  stepsScreen(schoolClass, { part: 1, present: [] }, { strand, of, page: 0 });

describe('a kind of counting', () => {
  it('has a row for each limit, on before back', () => {
    const screen = allOf(kingfisher, 'counting', '10off');
    expect(screen.text.text).toBe('Counting in tens (13, 23, 33): how far?');
    expect(screen.buttons.slice(0, 3).map((row) => row.map(({ label }) => label))).toEqual([
      ['to 100', 'back within 100'],
      ['to 200', 'back within 200'],
      ['to 1000', 'back within 1000'],
    ]);
  });

  it('holds runs of one step only, and every run is in one kind', () => {
    const groups = runGroups();
    const ids = groups.flatMap(({ runs }) => runs.map(({ id }): string => id));
    expect(ids.toSorted()).toEqual(
      rungsOf('counting')
        .map(({ id }): string => id)
        .toSorted(),
    );
    for (const { runs } of groups) expect(new Set(runs.map(({ step }) => step)).size).toBe(1);
  });

  it('is marked where one of its runs is usual', () => {
    const screen = allOf(year2, 'counting');
    expect(screen.text.text).toContain('● has steps usual in Year 2, England');
    const labels = labelsOf(screen);
    expect(labels.filter((label) => label.startsWith('● '))).toEqual([
      '● in tens',
      '● in tens (13, 23)',
      '● in fives',
      '● in twos',
      '● in threes',
    ]);
  });

  it('that is not there (any more) shows the kinds there are', () => {
    expect(allOf(kingfisher, 'counting', '7')).toEqual(allOf(kingfisher, 'counting'));
    expect(allOf(kingfisher, 'clock', '10')).toEqual(allOf(kingfisher, 'clock'));
    expect(allOf(kingfisher, 'clock', 'usual')).toEqual(allOf(kingfisher, 'clock'));
  });
});
