import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import { curriculumScreen, gradeScreen, NO_GRADE } from '../../../bot/screens/grade-screens.ts';
import type { Screen } from '../../../bot/screens/screen.ts';
import { PROFILES } from '../../../drills/index.ts';
import { kingfisher } from '../support/kingfisher.ts';

const classId = kingfisher.id;
const year2 = { ...kingfisher, curriculum: 'england', grade: '2' } as const;
const actionsOf = ({ buttons }: Screen) => buttons.flat().map(({ data }) => unpack(data));
const ticked = ({ buttons }: Screen) =>
  buttons.flat().flatMap(({ label }) => (label.startsWith('✓') ? [label] : []));

describe('choosing a curriculum', () => {
  it('offers every one, and none at all, which is chosen at once', () => {
    const named = PROFILES.filter(({ id }) => id !== 'own');
    expect(actionsOf(curriculumScreen(kingfisher))).toEqual([
      ...named.map(({ id }) => ({ kind: 'grades', classId, curriculum: id })),
      { kind: 'chooseGrade', classId, curriculum: 'own', grade: NO_GRADE },
      { kind: 'plan', classId },
    ]);
  });

  it('ticks what the class goes by', () => {
    expect(ticked(curriculumScreen(kingfisher))).toEqual(['✓ No curriculum']);
    expect(ticked(curriculumScreen(year2))).toEqual(['✓ England, national curriculum']);
  });

  it('says that it only sorts, and whose curriculum decides', () => {
    const said = 'This only sorts the steps you are shown: your school’s own curriculum decides.';
    expect(curriculumScreen(kingfisher).text.text).toContain(
      `no grade, every step alike.\n${said}`,
    );
    expect(curriculumScreen(year2).text.text).toContain(`Now: Year 2, England.\n${said}`);
  });
});

describe('choosing a grade', () => {
  it.each(PROFILES)('offers every grade of $title, and the way to the others', (profile) => {
    expect(actionsOf(gradeScreen(kingfisher, profile))).toEqual([
      ...profile.grades.map(({ id }) => ({
        kind: 'chooseGrade',
        classId,
        curriculum: profile.id,
        grade: id,
      })),
      { kind: 'curriculum', classId },
      { kind: 'plan', classId },
    ]);
  });

  it('ticks the class’s grade in its own curriculum only', () => {
    const chosen = PROFILES.flatMap((profile) => ticked(gradeScreen(year2, profile)));
    expect(chosen).toEqual(['✓ Year 2']);
  });

  it('calls no grade what a class without one carries', () => {
    const ids = PROFILES.flatMap(({ grades }) => grades.map(({ id }) => id));
    expect(ids).not.toContain(NO_GRADE);
  });
});
