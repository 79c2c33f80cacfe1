import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import * as screens from '../../../bot/screens/children-screens.ts';
import {
  type FileList,
  fileClassesScreen,
  fileColumnsScreen,
  fileListScreen,
} from '../../../bot/screens/class-file-screens.ts';
import type { Screen } from '../../../bot/screens/screen.ts';
import { undoListScreen } from '../../../bot/screens/undo.ts';
import { type KeptAct, MAX_CHILDREN } from '../../../db/index.ts';
import { kingfisher, listed } from '../support/kingfisher.ts';

const actionsOf = ({ buttons }: Screen) => buttons.flat().map(({ data }) => unpack(data));
const kindsOf = (screen: Screen) => actionsOf(screen).map((action) => action?.kind);
const labelsOf = ({ buttons }: Screen) => buttons.flat().map(({ label }) => label);
const classId = kingfisher.id;
const many = (count: number) =>
  Array.from({ length: count }, (_, at) => listed(at + 1, `Wren ${at + 1}`));
const classes = Array.from({ length: 20 }, (_, at) => ({ ...kingfisher, title: `Heron ${at}` }));

/** Follows "Next" to the end and returns every page. */
function pagesOf(screenAt: (page: number) => Screen): Screen[] {
  const pages: Screen[] = [];
  for (let at = 0; ; at += 1) {
    const screen = screenAt(at);
    pages.push(screen);
    if (!labelsOf(screen).includes('Next')) return pages;
  }
}

describe('a class’s children', () => {
  it('get links, and a way to the archived, only when there are any', () => {
    const empty = screens.childrenScreen(kingfisher, [], 0, 0);
    expect(kindsOf(empty)).toEqual(['askFor', 'openClass']);
    const full = screens.childrenScreen(kingfisher, many(1), 0, 1);
    expect(kindsOf(full)).toEqual(['child', 'askFor', 'archivedChildren', 'askLinks', 'openClass']);
  });

  it('each stand on one page, by number and nickname', () => {
    const pages = pagesOf((at) => screens.childrenScreen(kingfisher, many(40), at, 3));
    const numbers = pages
      .flatMap(actionsOf)
      .flatMap((action) => (action?.kind === 'child' ? [action.number] : []));
    expect(numbers).toEqual(many(40).map(({ number }) => number));
    expect(pages.flatMap(labelsOf)).toContain('✓ 40. Wren 40');
  });

  it('past the end are the last page', () => {
    const at = (page: number) => labelsOf(screens.childrenScreen(kingfisher, many(13), page, 0));
    expect(at(9)).toEqual(at(1));
  });

  it('are come back to on the page they stand on', () => {
    const children = many(40);
    for (const { number } of children) {
      const page = screens.pageOfChild(children, number);
      const shown = screens.childrenScreen(kingfisher, children, page, 0);
      expect(actionsOf(shown)).toContainEqual({ kind: 'child', classId, number });
    }
  });

  it('without a helper get links only after a warning, by a button that says when it was shown', () => {
    const screen = screens.makeLinksScreen(classId, 3, 12);
    expect(screen.text.text).toContain('3 children have no helper');
    expect(screen.text.text).toContain('Links given out before for these children stop working.');
    expect(actionsOf(screen)).toEqual([
      { kind: 'makeLinks', classId, slips: '12' },
      { kind: 'children', classId, page: 0 },
    ]);
  });

  it('who all have a helper need no links, and none can be made', () => {
    expect(kindsOf(screens.makeLinksScreen(classId, 0, 12))).toEqual(['children']);
  });

  it('one by one get a link only after a warning too', () => {
    const screen = screens.askLinkScreen(classId, listed(4, 'שרה'), 7);
    expect(screen.text.text).toContain('stops working');
    expect(actionsOf(screen)).toEqual([
      { kind: 'childLink', classId, number: 4, slips: '7' },
      { kind: 'child', classId, number: 4 },
    ]);
  });
});

const act: KeptAct = {
  kind: 'childArchived',
  before: { childId: 'a' },
  id: classId,
  classId,
  classTitle: 'Kingfisher class',
  zone: 'Africa/Johannesburg',
  nickname: 'Wren',
  at: new Date('2026-09-14T09:05:00Z'),
};

const list: FileList = {
  schoolClass: kingfisher,
  present: 0,
  roster: { nicknames: ['Wren'], problems: [] },
  from: { column: 1, heading: 'Nickname', sample: 'Wren' },
  stamp: 'abc',
  fits: true,
};

describe('a list of any length', () => {
  const columns = Array.from({ length: 40 }, (_, column) => ({
    column,
    heading: 'Nickname',
    sample: 'Wren',
  }));
  const acts = Array.from({ length: 40 }, () => act);

  it.each<[string, (page: number) => Screen]>([
    ['children', (at) => screens.childrenScreen(kingfisher, many(MAX_CHILDREN), at, 1)],
    ['archived children', (at) => screens.archivedScreen(kingfisher, many(MAX_CHILDREN), at)],
    ['classes to move to', (at) => screens.moveScreen(classId, listed(1, 'Wren'), classes, at)],
    ['classes a file may be for', (at) => fileClassesScreen(classes, at)],
    ['columns', (at) => fileColumnsScreen(classId, columns, 1, at)],
    ['acts', (at) => undoListScreen(acts, at)],
  ])(
    'of %s has ten rows of buttons a page at most, and can be gone through and back',
    (_, page) => {
      const pages = pagesOf(page);
      expect(pages.length).toBeGreaterThan(1);
      for (const [at, screen] of pages.entries()) {
        expect(screen.buttons.length).toBeLessThanOrEqual(10);
        expect(labelsOf(screen).includes('Earlier')).toBe(at > 0);
      }
    },
  );
});

describe('a list read off a file', () => {
  it('can be added as it is shown, or read anew', () => {
    expect(labelsOf(fileListScreen(list))).toEqual([
      'Add this child',
      'Another column',
      'Row 1: a child',
      'Back',
    ]);
    expect(actionsOf(fileListScreen(list))[0]).toEqual({ kind: 'fileAdd', classId, stamp: 'abc' });
  });

  it.each<[string, Partial<FileList>]>([
    ['with a problem', { roster: { nicknames: ['Wren'], problems: [problem()] } }],
    ['without a nickname', { roster: { nicknames: [], problems: [] } }],
    ['for which there is no room', { fits: false }],
  ])('%s cannot be added', (_how, change) => {
    expect(kindsOf(fileListScreen({ ...list, ...change }))).toEqual([
      'fileColumns',
      'fileColumn',
      'children',
    ]);
  });

  it('without headings offers to take its first row for one', () => {
    const from = { ...list.from, heading: null };
    expect(actionsOf(fileListScreen({ ...list, from }))).toContainEqual({
      kind: 'fileColumn',
      classId,
      column: 1,
      heading: 1,
    });
  });
});

describe('what can be taken back', () => {
  it('leads back to the class when it is about one only, and names the class when about several', () => {
    expect(labelsOf(undoListScreen([act], 0))).toEqual(['11:05 · Wren archived', 'Back']);
    const other = { ...act, classId: '019a0000-0000-7000-8000-0000000000c2', classTitle: 'Heron' };
    expect(labelsOf(undoListScreen([act, other], 0))).toEqual([
      '11:05 · Wren archived · Kingfisher class',
      '11:05 · Wren archived · Heron',
      'Your classes',
    ]);
    expect(labelsOf(undoListScreen([], 0))).toEqual([]);
  });
});

function problem() {
  return { kind: 'present', line: 2, value: 'Wren' } as const;
}
