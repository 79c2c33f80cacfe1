import {
  DISPLAY_SWITCHES,
  type Display,
  type Sharing,
  SIBLING_AGES,
  type Tie,
} from '../../db/index.ts';
import { BUTTONS, choiceButton } from '../texts/buttons.ts';
import { askTime } from '../texts/joining.ts';
import * as texts from '../texts/settings.ts';
import * as sharing from '../texts/sharing.ts';
import { chooseWay } from '../texts/way.ts';
import { timeButtons, wayButtons } from './joining-screens.ts';
import { type Button, button, rows, type Screen } from './screen.ts';

/** Everything a helper can set, on one screen. The first child's time stands for the family's. */
export function settingsScreen(
  children: readonly texts.SettingsChild[],
  display: Display,
  bytes: number,
): Screen {
  const [first] = children;
  const switches = DISPLAY_SWITCHES.map((what) =>
    button(choiceButton(texts.switchLabel(what), display[what]), {
      kind: 'setSwitch',
      what,
      on: display[what] ? 0 : 1,
    }),
  );
  return {
    text: texts.familySettings(children, bytes),
    buttons: [
      ...(first
        ? [[button(texts.timeLabel(first.tie.eveningTime), { kind: 'timeChoices' } as const)]]
        : []),
      [
        button(texts.daysLabel(), { kind: 'drillDays' }),
        button(texts.pauseLabel(), { kind: 'pauseOpen' }),
      ],
      [button(texts.waySettingLabel(), { kind: 'wayChoices' })],
      ...rows(switches, 2),
    ],
  };
}

/** Another evening time, from the settings. */
export function timeSettingScreen(tie: Pick<Tie, 'eveningTime' | 'schoolClass'>): Screen {
  const times = timeButtons(tie, (to) => ({ kind: 'chooseTime', to }));
  return { text: askTime(tie.eveningTime), buttons: [...rows(times, 2), [toSettings()]] };
}

/** Another way of showing cards, from the settings. */
export function waySettingScreen({ way }: Display, untimed: readonly string[]): Screen {
  return {
    text: chooseWay(untimed),
    buttons: [...wayButtons(way, (other) => ({ kind: 'settleWay', way: other })), [toSettings()]],
  };
}

function toSettings(): Button {
  return button(texts.settingsLabel(), { kind: 'settings' });
}

/** Where passing a child on stands, and the button that makes a link if there may be one. */
export function shareScreen(found: Sharing, until: string | null): Screen {
  const { childId: child, was, refusal } = found;
  const make = button(sharing.makeShareLabel(), { kind: 'shareLink', child, was });
  return {
    text: sharing.askToShare(found, until),
    buttons: [...(refusal === null ? [[make]] : []), [toSettings()]],
  };
}

/** Children to choose from on one screen. */
const MOST_CHILDREN = 9;

/** Which child somebody else shall help with. */
export function shareWhomScreen(
  children: readonly { readonly id: string; readonly nickname: string }[],
): Screen {
  return {
    text: sharing.askWhomToShare(children.map(({ nickname }) => nickname)),
    buttons: [
      ...children
        .slice(0, MOST_CHILDREN)
        .map(({ id: child, nickname }) => [button(nickname, { kind: 'shareAsk', child })]),
      [toSettings()],
    ],
  };
}

/** The link, on a message that is passed on as it is. */
export function sharedScreen(nickname: string, link: string, until: string): Screen {
  return { text: sharing.shared(nickname, link, until), buttons: [] };
}

/** From which age on a brother or sister may help, for the class's teacher. */
export function siblingAgeScreen(classId: string, age: number): Screen {
  const ages = SIBLING_AGES.map((each) =>
    button(choiceButton(String(each), each === age), { kind: 'siblingAge', classId, age: each }),
  );
  return {
    text: texts.askSiblingAge(age),
    buttons: [...rows(ages, 4), [button(BUTTONS.back, { kind: 'times', classId })]],
  };
}
