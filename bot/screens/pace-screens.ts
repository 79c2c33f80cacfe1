import type { ChildPace } from '../../db/index.ts';
import {
  addDays,
  drillWeekdays,
  isPaused,
  mondayOf,
  type SchoolDay,
  WEEKDAYS,
} from '../../drills/index.ts';
import { choiceButton } from '../texts/buttons.ts';
import { drillDaysText, pauseText } from '../texts/pace.ts';
import { PACE_BUTTONS, untilButton } from '../texts/pace-buttons.ts';
import { settingsLabel } from '../texts/settings.ts';
import { weekdayName } from '../texts/words.ts';
import { type Button, button, rows, type Screen } from './screen.ts';

/** Pausing all drills of a helper, or how long they are paused and the way out of it. There is one child at least. */
export function pauseScreen(children: readonly ChildPace[]): Screen {
  const isOn = children.some(({ pace, today }) => isPaused(pace, today));
  const [first] = children;
  return {
    text: pauseText(children),
    buttons: [
      ...(isOn ? [[button(PACE_BUTTONS.startAgain, { kind: 'pauseEnd' })]] : []),
      ...(first ? pauseChoices(first.today) : []),
      [button(PACE_BUTTONS.otherDay, { kind: 'pauseAsk' })],
      [toSettings()],
    ],
  };
}

/** Each button carries its day, so that a tap that comes late or twice pauses until the very day it says. */
function pauseChoices(today: SchoolDay): Button[][] {
  const monday = addDays(mondayOf(today), 7);
  const until = (label: string, day: SchoolDay) => button(label, { kind: 'pauseUntil', day });
  return [
    [until(untilButton(monday), monday)],
    [
      until(PACE_BUTTONS.oneWeek, addDays(today, 7)),
      until(PACE_BUTTONS.twoWeeks, addDays(today, 14)),
    ],
  ];
}

/** Choosing the school days on which the drill comes, for all children of a helper: a tick, not a colour. */
export function drillDaysScreen(children: readonly ChildPace[]): Screen {
  const offered = WEEKDAYS.filter((weekday) =>
    children.some(({ child }) => child.schoolClass.weekdays.includes(weekday)),
  );
  const chosen = new Set(
    children.flatMap(({ child, pace }) => drillWeekdays(pace, child.schoolClass.weekdays)),
  );
  const ticks = offered.map((weekday) => {
    const on = chosen.has(weekday);
    const label = choiceButton(weekdayName(weekday, 'short'), on);
    return button(label, { kind: 'drillDay', weekday, on: on ? 0 : 1 });
  });
  const isFull = children.every(({ pace }) => pace.days === null && pace.rate === 'daily');
  return {
    text: drillDaysText(children),
    buttons: [
      ...rows(ticks, 3),
      ...(isFull ? [] : [[button(PACE_BUTTONS.everyDay, { kind: 'everyDay' })]]),
      [toSettings()],
    ],
  };
}

function toSettings(): Button {
  return button(settingsLabel(), { kind: 'settings' });
}
