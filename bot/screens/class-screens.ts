import type { Book, ClassBreak, ListedChild, SchoolClass } from '../../db/index.ts';
import { WEEKDAYS } from '../../drills/index.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { shorten } from '../texts/quote.ts';
import * as roster from '../texts/roster.ts';
import * as texts from '../texts/teacher.ts';
import { name, shortDate, weekdayName } from '../texts/words.ts';
import { type Button, button, rows, type Screen } from './screen.ts';

/** A class at a glance, with the way to everything else. */
export function homeScreen(input: Parameters<typeof texts.classHome>[0]): Screen {
  const { id: classId } = input.schoolClass;
  return {
    text: texts.classHome(input),
    buttons: [
      [
        button(BUTTONS.plan, { kind: 'plan', classId }),
        button(BUTTONS.children, { kind: 'children', classId }),
      ],
      [
        button(BUTTONS.book, { kind: 'book', classId }),
        button(BUTTONS.breaks, { kind: 'breaks', classId }),
      ],
      [
        button(BUTTONS.times, { kind: 'times', classId }),
        button(BUTTONS.digestNow, { kind: 'digestNow', classId }),
      ],
    ],
  };
}

/** A teacher's classes. */
export function chooseClassScreen(classes: readonly SchoolClass[]): Screen {
  return {
    text: texts.chooseClass(),
    buttons: classes.map((each) => [
      button(name(each.title), { kind: 'openClass', classId: each.id }),
    ]),
  };
}

/** Days and times. A chosen day carries a tick, not a colour. */
export function timesScreen(schoolClass: SchoolClass): Screen {
  const { id: classId } = schoolClass;
  const days = WEEKDAYS.map((weekday) =>
    button(ticked(weekdayName(weekday, 'short'), schoolClass.weekdays.includes(weekday)), {
      kind: 'schoolDay',
      classId,
      weekday,
    }),
  );
  const digestDays = WEEKDAYS.map((weekday) =>
    button(
      `Digest ${ticked(weekdayName(weekday, 'short'), schoolClass.digestWeekday === weekday)}`,
      {
        kind: 'digestDay',
        classId,
        weekday,
      },
    ),
  );
  const ask = (label: string, what: string) => button(label, { kind: 'askFor', classId, what });
  return {
    text: texts.times(schoolClass),
    buttons: [
      ...rows(days, 4),
      [
        ask(`Drill ${schoolClass.eveningTime}`, 'evening'),
        ask(`Nudge ${schoolClass.nudgeTime}`, 'nudge'),
        ask(`Digest ${schoolClass.digestTime}`, 'digest'),
      ],
      ...rows(digestDays, 4),
      [ask('Time zone', 'zone'), ask('Title', 'title')],
      [back(classId)],
    ],
  };
}

/** The roster with who has joined. */
export function childrenScreen(schoolClass: SchoolClass, children: readonly ListedChild[]): Screen {
  const { id: classId } = schoolClass;
  const links: Button[][] =
    children.length === 0
      ? []
      : [
          [button(BUTTONS.missingLinks, { kind: 'missingLinks', classId })],
          [button(BUTTONS.oneLink, { kind: 'pickChild', classId })],
        ];
  return {
    text: roster.childList(schoolClass, children),
    buttons: [
      [button(BUTTONS.addChildren, { kind: 'askFor', classId, what: 'roster' })],
      ...links,
      [back(classId)],
    ],
  };
}

/** Which child gets a new link. */
export function pickChildScreen(
  schoolClass: SchoolClass,
  children: readonly ListedChild[],
): Screen {
  const { id: classId } = schoolClass;
  const buttons = children.map((child) =>
    button(`${child.number}. ${name(child.nickname)}`, {
      kind: 'childLink',
      classId,
      number: child.number,
    }),
  );
  return {
    text: roster.askWhichChild(),
    buttons: [...rows(buttons, 3), [button(BUTTONS.back, { kind: 'children', classId })]],
  };
}

/** Breaks ahead; a tap on one removes it. */
export function breaksScreen(schoolClass: SchoolClass, breaks: readonly ClassBreak[]): Screen {
  const { id: classId } = schoolClass;
  return {
    text: texts.breakList(schoolClass, breaks),
    buttons: [
      ...breaks.map((each, index) => [
        button(`✗ ${shorten(each.title, texts.BREAK_TITLE_LENGTH)}, ${shortDate(each.first)}`, {
          kind: 'removeBreak',
          classId,
          index,
          first: each.first,
        }),
      ]),
      [button(BUTTONS.addBreak, { kind: 'askFor', classId, what: 'break' })],
      [back(classId)],
    ],
  };
}

/** The workbook in use. */
export function bookScreen(schoolClass: SchoolClass, book: Book | null): Screen {
  const { id: classId } = schoolClass;
  return {
    text: texts.bookScreen(schoolClass, book),
    buttons: [
      [button(BUTTONS.changeBook, { kind: 'askFor', classId, what: 'book' })],
      ...(book ? [[button(BUTTONS.retireBook, { kind: 'retireBook', classId })]] : []),
      [back(classId)],
    ],
  };
}

/** The way back to the class. */
export function back(classId: string): Button {
  return button(BUTTONS.back, { kind: 'openClass', classId });
}

function ticked(label: string, chosen: boolean): string {
  return chosen ? `✓ ${label}` : label;
}
