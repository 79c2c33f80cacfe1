import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digestFileName } from '../../../bot/digest/file-name.ts';
import { kingfisher, WEEK } from '../support/kingfisher.ts';

const [day] = WEEK;
const nameOf = (title: string, id = kingfisher.id) => {
  if (!day) throw new Error('the week has a first day');
  return digestFileName({ id, title }, day, 'csv');
};

describe('the name of a digest’s file', () => {
  it('tells two classes apart', () => {
    expect(nameOf('Kingfisher class')).toBe('digest-kingfisher-class-2026-09-14.csv');
    expect(nameOf('Heron class')).toBe('digest-heron-class-2026-09-14.csv');
  });

  it('has signs, accents and blanks made plain', () => {
    expect(nameOf('  Été: 3/B & “Otter”  ')).toBe('digest-ete-3-b-otter-2026-09-14.csv');
  });

  it('ends on the class’s id where another script or a long title is cut', () => {
    expect(nameOf('כיתה א')).toBe('digest-class-0000c1-2026-09-14.csv');
    expect(nameOf('3 א')).toBe('digest-3-0000c1-2026-09-14.csv');
    expect(nameOf('Kingfisher '.repeat(9))).toBe(
      'digest-kingfisher-kingfisher-kingfisher-kingfis-0000c1-2026-09-14.csv',
    );
  });

  it('never leads out of a folder, whatever the title', () => {
    expect(nameOf('../../etc')).toBe('digest-etc-2026-09-14.csv');
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 80 }), (title) => {
        expect(nameOf(title)).toMatch(/^digest-[a-z0-9-]{1,60}-2026-09-14\.csv$/);
      }),
    );
  });
});
