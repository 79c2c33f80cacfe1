import { describe, expect, it } from 'vitest';
import {
  type DigestOf,
  digestScreen,
  familiesScreen,
  type Offer,
  proposalsScreen,
  strandsScreen,
  wobblesScreen,
} from '../../../bot/screens/digest-screens.ts';
import { childPagesScreen } from '../../../bot/screens/now-screens.ts';
import { childReportScreen, classReportsScreen } from '../../../bot/screens/report-screens.ts';
import type { Screen } from '../../../bot/screens/screen.ts';
import { BUTTONS } from '../../../bot/texts/buttons.ts';
import { STRANDS } from '../../../drills/index.ts';
import { kingfisher, listed, splitWeek, summaryOf, week } from '../support/kingfisher.ts';

const of: DigestOf = { classId: kingfisher.id, day: '2026-09-18' };
const split = splitWeek('Wren');
const forty = Array.from({ length: 40 }, (_, at) => listed(at + 1, `Wren ${at + 1}`));
const silent = summaryOf(
  Array.from({ length: 12 }, (_, at) => week(at + 1, 'Otter', { silentRun: 4 })),
);
const labelsOf = ({ buttons }: Screen) => buttons.flat().map(({ label }) => label);
const dataOf = ({ buttons }: Screen) => buttons.flat().map(({ data }) => data);

const offers: Offer[] = [...STRANDS, 'all' as const].map((strand) => ({
  of: strand,
  sign: 'abcdef01',
  steps: [],
}));
const shown = { rungs: split.rungs, steps: [], said: null, offers, undo: kingfisher.id };

const theDigest = digestScreen(of, 'Kingfisher class', split);
const soFar = digestScreen({ ...of, day: 'now' }, 'Kingfisher class', split);
const wren = { classId: of.classId, number: 9999 };
const aReport = childReportScreen('', wren, 'Wren', { span: 2, paper: 1 });

const SCREENS: Readonly<Record<string, Screen>> = {
  digest: theDigest,
  'digest of an empty class': digestScreen(of, 'Kingfisher class', summaryOf([])),
  'week so far': soFar,
  wobbles: wobblesScreen(of, split),
  strands: strandsScreen(of, split),
  families: familiesScreen(of, silent, 1),
  proposals: proposalsScreen(of, shown),
  'child by child': childPagesScreen(kingfisher, forty, new Set(['child-2']), 1),
  'a report': aReport,
  reports: classReportsScreen(kingfisher, { span: 0, paper: 0 }),
};

describe('every screen behind a digest', () => {
  it.each(Object.entries(SCREENS))(
    '%s: nine lines and ten rows at most, and a way back',
    (_name, screen) => {
      expect(screen.text.text.split('\n').length).toBeLessThan(10);
      expect(screen.buttons.length).toBeLessThanOrEqual(10);
      expect(labelsOf(screen).at(-1)).toBe(BUTTONS.back);
      for (const data of dataOf(screen)) expect(Buffer.byteLength(data)).toBeLessThanOrEqual(64);
    },
  );
});

describe('the digest’s own screen', () => {
  it('offers no files while there is no child to draw', () => {
    const labels = labelsOf(digestScreen(of, 'Kingfisher class', summaryOf([])));
    expect(labels).not.toContain(BUTTONS.digestPicture);
    expect(labels).toContain(BUTTONS.proposals);
  });

  it('leads back to the class, and the week so far to Class now', () => {
    expect(dataOf(theDigest).at(-1)).toMatch(/^1:oc:/);
    expect(dataOf(soFar).at(-1)).toMatch(/^1:qn:/);
  });
});

describe('the proposals', () => {
  it('can be accepted strand by strand or all at once, only while there is something to accept', () => {
    const none = proposalsScreen(of, { ...shown, offers: [], undo: null });
    expect(labelsOf(none)).toEqual([BUTTONS.plan, BUTTONS.back]);
    expect(
      labelsOf(proposalsScreen(of, shown)).filter((label) => /^Accept/.test(label)),
    ).toHaveLength(9);
  });
});

describe('long lists', () => {
  it('of families have their pages', () => {
    const first = familiesScreen(of, silent, 0);
    expect(labelsOf(first)).toEqual([BUTTONS.nextPage, BUTTONS.back]);
    expect(labelsOf(familiesScreen(of, silent, 1))).toContain(BUTTONS.earlierPage);
    expect(first.text.text).toContain('page 1 of 3');
  });

  it('of children have theirs, and a sign before who has practised', () => {
    const page = (at: number, practised = new Set<string>()) =>
      labelsOf(childPagesScreen(kingfisher, forty, practised, at));
    expect(page(0, new Set(['child-2'])).slice(0, 2)).toEqual(['1. Wren 1', '✓ 2. Wren 2']);
    const named = [0, 1, 2].flatMap((at) => page(at)).filter((label) => label.includes('Wren'));
    expect(named).toHaveLength(40);
    // A page past the end is the last one.
    expect(page(9)).toEqual(page(2));
  });
});

describe('what a report covers', () => {
  it('carries a tick, not a colour', () => {
    expect(labelsOf(aReport).filter((label) => label.startsWith('✓'))).toEqual([
      '✓ Since the start',
      '✓ Letter',
    ]);
  });
});
