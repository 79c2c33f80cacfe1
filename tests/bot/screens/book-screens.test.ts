import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import { booksScreen, classBookScreen, ownBookScreen } from '../../../bot/screens/book-screens.ts';
import { childBooksScreen, placesScreen } from '../../../bot/screens/place-screens.ts';
import type { Screen } from '../../../bot/screens/screen.ts';
import { BOOK_LIMITS } from '../../../db/index.ts';
import { aBook, childId, pebblePath, pebblePath2, progress } from '../support/books.ts';
import { kingfisher } from '../support/kingfisher.ts';

const classId = kingfisher.id;
const LONG = 'Pebble Path of Kingfisher class, the long one for the year';
const linesOf = ({ text }: Screen) => text.text.split('\n');
const actionsOf = ({ buttons }: Screen) => buttons.flat().map(({ data }) => unpack(data));
const kindsOf = (screen: Screen) => actionsOf(screen).map((action) => action?.kind);
const labelsOf = ({ buttons }: Screen) => buttons.flat().map(({ label }) => label);
const forty = Array.from({ length: 40 }, (_, at) =>
  progress(at + 1, `Wren of the Long Meadow ${at + 1}`, { books: [aBook(1, LONG), pebblePath2] }),
);
const fullLine = Array.from({ length: BOOK_LIMITS.inLine }, (_, at) => aBook(at, `${LONG} ${at}`));

describe('every screen about workbooks', () => {
  const own = aBook(3, LONG, childId(1));
  const reader = progress(1, 'Wren', { books: [own, ...fullLine] });
  const act = '019a0000-0000-7000-8000-0000000000ac';
  const screens: readonly [string, Screen][] = [
    ['no workbook', booksScreen(kingfisher, [], 0)],
    ['a full line', booksScreen(kingfisher, fullLine, 40, act)],
    ['one of the class', classBookScreen(classId, fullLine, fullLine[2] ?? own, [reader])],
    ['one of a child', ownBookScreen(classId, own, reader)],
    ['forty children', placesScreen(kingfisher, forty, 3)],
    ['no children', placesScreen(kingfisher, [], 0)],
    ['a child', childBooksScreen(classId, reader, 0)],
    ['a child without one', childBooksScreen(classId, progress(2, 'Otter', { books: [] }), 1)],
  ];

  it.each(screens)('has less than ten lines, ten rows at most and a way back: %s', (_, screen) => {
    expect(linesOf(screen).length).toBeLessThan(10);
    expect(screen.buttons.length).toBeLessThanOrEqual(10);
    expect(labelsOf(screen).at(-1)).toBe('Back');
    for (const label of labelsOf(screen)) expect(label.length).toBeLessThan(50);
  });
});

describe('the workbooks of a class', () => {
  it('stand in their order, each a tap away, with room for more until the line is full', () => {
    expect(kindsOf(booksScreen(kingfisher, [], 0))).toEqual([
      'askNewBook',
      'bookPlaces',
      'openClass',
    ]);
    const screen = booksScreen(kingfisher, [pebblePath, pebblePath2], 1);
    expect(linesOf(screen)).toEqual([
      'Kingfisher class: workbooks',
      '1. Pebble Path: pages 1 to 48, 2 a day',
      '2. Pebble Path 2: pages 1 to 48, 2 a day',
      'Whoever has done one goes on to the next. Tap a workbook to change it.',
      '1 child has a book of its own, which comes first.',
    ]);
    expect(actionsOf(screen)[1]).toEqual({ kind: 'oneBook', classId, book: pebblePath2.id });
    expect(kindsOf(booksScreen(kingfisher, fullLine, 0))).not.toContain('askNewBook');
  });

  it('can be taken back right after one was put away', () => {
    const act = '019a0000-0000-7000-8000-0000000000ac';
    const [undo] = actionsOf(booksScreen(kingfisher, [], 0, act));
    expect(undo).toEqual({ kind: 'undo', act });
  });
});

describe('one workbook', () => {
  const line = [pebblePath, pebblePath2];
  const at = (book: typeof pebblePath, ...children: readonly ReturnType<typeof progress>[]) =>
    classBookScreen(classId, line, book, children);

  it('moves by buttons that say to which place, and not past the ends of its line', () => {
    const moves = (screen: Screen) =>
      actionsOf(screen).flatMap((action) => (action?.kind === 'moveBook' ? [action.to] : []));
    expect(moves(at(pebblePath))).toEqual([1]);
    expect(moves(at(pebblePath2))).toEqual([0]);
    expect(moves(classBookScreen(classId, [pebblePath], pebblePath, []))).toEqual([]);
  });

  it('has its pages a day ticked among all that may be chosen', () => {
    const labels = labelsOf(at(pebblePath)).slice(0, BOOK_LIMITS.pagesADay);
    expect(labels).toEqual(['1', '✓ 2', '3', '4', '5']);
  });

  it('tells how many are in it and when half and nearly all will be done', () => {
    const children = [
      progress(1, 'Wren', { page: 49 }),
      progress(2, 'Otter', { page: 30 }),
      progress(3, 'Robin', { page: 1, evenings: [] }),
    ];
    const [, settings, counts, when, from] = linesOf(at(pebblePath, ...children));
    expect(settings).toBe('Pages 1 to 48, 2 a day. Number 1 of 2.');
    expect(counts).toBe('Children in it: 1. Done: 1. Not begun: 1.');
    expect(when).toMatch(/^Half of the class: done\. Nine in ten: about \w+,? \d+ \w+\.$/);
    expect(from).toBe('From 2 of 3 children, at their own pace.');
  });

  it('says so when it is too early to say, and says nothing once all are done', () => {
    const early = linesOf(at(pebblePath, progress(1, 'Wren', { evenings: [2, 2] })));
    expect(early[3]).toBe(
      'Too early to say when: half of the children need 5 evenings with an answer about pages.',
    );
    const done = at(pebblePath, progress(1, 'Wren', { page: 49 }));
    expect(done.text.text).not.toMatch(/Half|early/);
  });

  it('is later for children who have the one before it to do', () => {
    const slow = progress(1, 'Wren', { page: 1 });
    const quick = progress(1, 'Wren', { page: 49 });
    const dateOf = (child: typeof slow) => linesOf(at(pebblePath2, child))[3];
    expect(dateOf(slow)).not.toBe(dateOf(quick));
  });

  it('of a child leads back to the child', () => {
    const own = aBook(3, 'Little Pebbles', childId(1));
    const screen = ownBookScreen(classId, own, progress(1, 'Wren', { books: [own, pebblePath] }));
    expect(linesOf(screen).slice(1, 3)).toEqual([
      'Pages 1 to 48, 2 a day. Wren’s own; it comes before the class’s.',
      'On page 14 of 48.',
    ]);
    expect(actionsOf(screen).at(-1)).toEqual({ kind: 'childBooks', classId, child: childId(1) });
  });
});

describe('who is where', () => {
  it('shows seven children a page, and pages through forty', () => {
    const [first, last] = [placesScreen(kingfisher, forty, 0), placesScreen(kingfisher, forty, 9)];
    expect(linesOf(first)).toHaveLength(9);
    expect(linesOf(first).at(-1)).toMatch(/^Page 1 of 6\. /);
    expect(linesOf(last).slice(1, -1)).toHaveLength(5);
    expect(labelsOf(first).slice(-2)).toEqual(['Next', 'Back']);
    expect(labelsOf(last).slice(-2)).toEqual(['Earlier', 'Back']);
  });

  it('tells each child’s book, page and date, or why there is none', () => {
    const children = [
      progress(1, 'Wren', { evenings: [2, 2, 2, 2, 2, 2, 2] }),
      progress(2, 'Otter', { evenings: [2, 2] }),
      progress(3, 'Robin', { evenings: [0, 0, 0, 0, 0] }),
      progress(4, 'Juniper', { page: 49, books: [pebblePath] }),
      progress(5, 'Mabel', { books: [] }),
      progress(6, 'Kestrel', { page: 49, evenings: [0, 0, 0, 0, 1] }),
    ];
    expect(linesOf(placesScreen(kingfisher, children, 0)).slice(1, -1)).toEqual([
      // 35 pages at two a day are 18 school days.
      expect.stringMatching(/^1\. Wren: Pebble Path, page 14 of 48, about Wed,? 7 Oct$/),
      '2. Otter: Pebble Path, page 14 of 48, too early to say',
      '3. Robin: Pebble Path, page 14 of 48, no pages lately',
      '4. Juniper: all done',
      '5. Mabel: no workbook',
      expect.stringMatching(/^6\. Kestrel: Pebble Path 2, page 1 of 48, about \w+/),
    ]);
  });
});

describe('a child’s workbooks', () => {
  it('tell the page, the pace, the date with its range, what comes next and where it comes from', () => {
    const screen = childBooksScreen(classId, progress(9, 'Wren'), 8);
    expect(linesOf(screen)).toEqual([
      'Wren: workbooks',
      'Pebble Path: page 14 of 48 is next.',
      '2 pages an evening in the last 4 weeks.',
      expect.stringMatching(/^Done about .+ Oct; in 8 cases of 10 from .+ to .+ Oct\.$/),
      'Then Pebble Path 2, from page 1.',
      'Pages are what the helpers tapped; where nobody did, none are counted.',
    ]);
    expect(actionsOf(screen).at(-1)).toEqual({ kind: 'bookPlaces', classId, page: 1 });
  });

  it('list the child’s own, and without any book there is no page to set', () => {
    const own = aBook(3, 'Little Pebbles', childId(1));
    const kinds = kindsOf(childBooksScreen(classId, progress(1, 'Wren', { books: [own] }), 0));
    expect(kinds).toEqual(['oneBook', 'askChildPage', 'askOwnBook', 'bookPlaces']);
    const none = childBooksScreen(classId, progress(1, 'Wren', { books: [] }), 0);
    expect(kindsOf(none)).toEqual(['askOwnBook', 'bookPlaces']);
    expect(linesOf(none)[1]).toBe('None. Evenings ask for no pages.');
  });
});
