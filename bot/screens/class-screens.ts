import type { SchoolClass } from '../../db/index.ts';
import { WEEKDAYS, type Weekday } from '../../drills/index.ts';
import { BUTTONS, choiceButton, digestDayButton, timeButton } from '../texts/buttons.ts';
import { cardLanguageButton } from '../texts/languages.ts';
import { siblingAgeLabel } from '../texts/settings.ts';
import * as texts from '../texts/teacher.ts';
import { weekdayName } from '../texts/words.ts';
import { type Button, button, rows, type Screen } from './screen.ts';

/** A class at a glance, with the way to everything else. */
export function homeScreen(input: Parameters<typeof texts.classHome>[0]): Screen {
  const { id: classId } = input.schoolClass;
  return {
    text: texts.classHome(input),
    buttons: [
      [
        button(BUTTONS.plan, { kind: 'plan', classId }),
        button(BUTTONS.children, { kind: 'children', classId, page: 0 }),
      ],
      ...(input.hasPlan
        ? []
        : [[button(BUTTONS.firstPlan, { kind: 'firstPlan', classId, curriculum: 'guess' })]]),
      [
        button(BUTTONS.classNow, { kind: 'classNow', classId }),
        button(BUTTONS.books, { kind: 'books', classId }),
      ],
      [
        button(BUTTONS.breaks, { kind: 'breaks', classId }),
        button(BUTTONS.times, { kind: 'times', classId }),
      ],
      [
        button(BUTTONS.greeting, { kind: 'greeting', classId }),
        button(BUTTONS.print, { kind: 'print', classId, paper: 0 }),
      ],
      [button(BUTTONS.teachers, { kind: 'teachers', classId })],
    ],
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
      ...rows(digestDays, 3),
      [ask(BUTTONS.zone, 'zone'), ask(BUTTONS.classTitle, 'title')],
      [
        button(cardLanguageButton(schoolClass.language), { kind: 'classLanguages', classId }),
        button(siblingAgeLabel(), { kind: 'siblingAges', classId }),
      ],
      [back(classId)],
    ],
  };
}

function schoolDayButton(classId: string, weekday: Weekday, chosen: boolean): Button {
  const on = chosen ? 0 : 1;
  const label = choiceButton(weekdayName(weekday, 'short'), chosen);
  return button(label, { kind: 'schoolDay', classId, weekday, on });
}

/** The way back to the class. */
export function back(classId: string): Button {
  return button(BUTTONS.back, { kind: 'openClass', classId });
}
