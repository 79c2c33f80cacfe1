import type { Book, ClassBreak, ListedChild, SchoolClass } from '../../db/index.ts';
import { WEEKDAYS, type Weekday } from '../../drills/index.ts';
import { BUTTONS, choiceButton, digestDayButton, timeButton } from '../texts/buttons.ts';
import * as roster from '../texts/roster.ts';
import * as texts from '../texts/teacher.ts';
import { name, weekdayName } from '../texts/words.ts';
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
      [button(BUTTONS.print, { kind: 'print', classId, paper: 0 })],
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
    schoolDayButton(classId, weekday, schoolClass.weekdays.includes(weekday)),
  );
  const digestDays = WEEKDAYS.map((weekday) =>
    button(digestDayButton(weekdayName(weekday, 'short'), schoolClass.digestWeekday === weekday), {
      kind: 'digestDay',
      classId,
      weekday,
    }),
  );
  const ask = (label: string, what: string) => button(label, { kind: 'askFor', classId, what });
  return {
    text: texts.times(schoolClass),
    buttons: [
      ...rows(days, 4),
      [
        ask(timeButton('evening', schoolClass.eveningTime), 'evening'),
        ask(timeButton('nudge', schoolClass.nudgeTime), 'nudge'),
        ask(timeButton('digest', schoolClass.digestTime), 'digest'),
      ],
      ...rows(digestDays, 4),
      [ask(BUTTONS.zone, 'zone'), ask(BUTTONS.classTitle, 'title')],
      [back(classId)],
    ],
  };
}

function schoolDayButton(classId: string, weekday: Weekday, chosen: boolean): Button {
  const on = chosen ? 0 : 1;
  const label = choiceButton(weekdayName(weekday, 'short'), chosen);
  return button(label, { kind: 'schoolDay', classId, weekday, on });
}

/** The roster with who has joined. */
export function childrenScreen(schoolClass: SchoolClass, children: readonly ListedChild[]): Screen {
  const { id: classId } = schoolClass;
  const links: Button[][] =
    children.length === 0
      ? []
      : [
          [button(BUTTONS.missingLinks, { kind: 'askLinks', classId })],
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

/** Asks before links are made for the `missing` children without a helper. `slips` is how many the class was ever given. */
export function makeLinksScreen(classId: string, missing: number, slips: number): Screen {
  const make = button(BUTTONS.makeLinks, { kind: 'makeLinks', classId, slips: String(slips) });
  return {
    text: roster.askToMakeLinks(missing),
    buttons: [...(missing > 0 ? [[make]] : []), [toChildren(classId)]],
  };
}

/** Which child gets a new link. `slips` is how many the class was ever given. */
export function pickChildScreen(
  classId: string,
  children: readonly ListedChild[],
  slips: number,
): Screen {
  const buttons = children.map((child) =>
    button(`${child.number}. ${name(child.nickname)}`, {
      kind: 'childLink',
      classId,
      number: child.number,
      slips: String(slips),
    }),
  );
  return {
    text: roster.askWhichChild(),
    buttons: [...rows(buttons, 3), [toChildren(classId)]],
  };
}

/** Breaks ahead; a tap on one removes it. */
export function breaksScreen(schoolClass: SchoolClass, breaks: readonly ClassBreak[]): Screen {
  const { id: classId } = schoolClass;
  return {
    text: texts.breakList(schoolClass, breaks),
    buttons: [
      ...breaks.map((each, index) => [
        button(texts.breakButton(each), {
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

function toChildren(classId: string): Button {
  return button(BUTTONS.back, { kind: 'children', classId });
}
