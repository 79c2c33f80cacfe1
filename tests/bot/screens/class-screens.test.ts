import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import { breaksScreen } from '../../../bot/screens/break-screens.ts';
import * as screens from '../../../bot/screens/class-screens.ts';
import { rows, type Screen } from '../../../bot/screens/screen.ts';
import { classesScreen } from '../../../bot/screens/teacher-screens.ts';
import { BUTTONS } from '../../../bot/texts/buttons.ts';
import { storedDay } from '../../../db/index.ts';
import { kingfisher } from '../support/kingfisher.ts';

const actionsOf = ({ buttons }: Screen) => buttons.flat().map(({ data }) => unpack(data));
const kindsOf = (screen: Screen) => actionsOf(screen).map((action) => action?.kind);
const labelsOf = ({ buttons }: Screen) => buttons.flat().map(({ label }) => label);

it('rows are as wide as asked for, and the last one holds the rest', () => {
  expect(rows(['a', 'b', 'c'], 2)).toEqual([['a', 'b'], ['c']]);
  expect(rows([], 2)).toEqual([]);
});

describe('a class’s home', () => {
  it('leads to everything about the class in one tap', () => {
    const home = { schoolClass: kingfisher, children: 3, joined: 1, hasPlan: true, book: null };
    expect(kindsOf(screens.homeScreen(home))).toEqual([
      'plan',
      'children',
      'classNow',
      'books',
      'breaks',
      'times',
      'greeting',
      'print',
      'teachers',
    ]);
  });

  it.each<[string, Screen]>([
    ['times', screens.timesScreen(kingfisher)],
    ['breaks', breaksScreen(kingfisher, [])],
  ])('can be come back to from %s by the last button', (_, screen) => {
    expect(actionsOf(screen).at(-1)).toEqual({ kind: 'openClass', classId: kingfisher.id });
  });

  it('is chosen by the class’s title', () => {
    expect(labelsOf(classesScreen([kingfisher]))).toEqual(['Kingfisher class', BUTTONS.newClass]);
  });
});

describe('days and times', () => {
  it('tick the school days and the one digest day, by a sign and not by colour', () => {
    const labels = labelsOf(screens.timesScreen({ ...kingfisher, weekdays: [1, 3] }));
    expect(labels.slice(0, 7)).toEqual(['✓ Mon', 'Tue', '✓ Wed', 'Thu', 'Fri', 'Sat', 'Sun']);
    expect(labels.filter((label) => label.startsWith('Digest ✓'))).toEqual(['Digest ✓ Fri']);
  });

  it('carry what a day shall be, so that the same tap twice is the same as once', () => {
    const screen = screens.timesScreen({ ...kingfisher, weekdays: [1, 3] });
    const wishes = actionsOf(screen).flatMap((action) =>
      action?.kind === 'schoolDay' ? [action.on] : [],
    );
    expect(wishes).toEqual([0, 1, 0, 1, 1, 1, 1]);
  });

  it('ask for each thing that is typed', () => {
    const asked = actionsOf(screens.timesScreen(kingfisher)).flatMap((action) =>
      action?.kind === 'askFor' ? [action.what] : [],
    );
    expect(asked).toEqual(['evening', 'nudge', 'digest', 'zone', 'title']);
  });
});

describe('the breaks', () => {
  const first = storedDay('2026-10-12');
  const last = storedDay('2026-10-16');

  it('are removed by a tap that says which one it means', () => {
    const screen = breaksScreen(kingfisher, [{ id: 'x', title: 'Half term', first, last }]);
    expect(labelsOf(screen)[0]).toMatch(/^✗ Half term, Mon,? 12 Oct$/);
    expect(actionsOf(screen)[0]).toEqual({
      kind: 'removeBreak',
      classId: kingfisher.id,
      index: 0,
      first: '2026-10-12',
    });
  });

  it('have short buttons, however long their titles are', () => {
    const title = 'Half term '.repeat(400);
    const screen = breaksScreen(kingfisher, [{ id: 'x', title, first, last }]);
    expect(labelsOf(screen)[0]?.length).toBeLessThan(60);
  });
});
