import {
  AppError,
  countPractised,
  DISPLAY_SWITCHES,
  getClass,
  getDisplay,
  getSiblingAge,
  listFamilyChildren,
  readDataUsed,
  readFamilyPaces,
  setDisplay,
  setSiblingAge,
  setWay,
} from '../../db/index.ts';
import { drillWeekdays, paceStand } from '../../drills/index.ts';
import type { BotDeps } from '../deps.ts';
import type { Screen } from '../screens/screen.ts';
import * as screens from '../screens/settings-screens.ts';
import { staleButton } from '../texts/errors.ts';
import { type SettingsChild, switched } from '../texts/settings.ts';
import { wayChosen } from '../texts/way.ts';
import { practisingFamilyOf } from './family-commands.ts';
import { helperOf } from './family-scope.ts';
import { setTime } from './joining-taps.ts';
import type { Typed } from './say.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { turn } from './turn.ts';
import { untimedChildren } from './untimed-children.ts';

/** `/settings`: everything a family can set, on one screen. */
export async function settingsCommand(message: Typed): Promise<void> {
  const family = await practisingFamilyOf(message);
  if (!family) return;
  const { text, buttons } = await readSettings(message.deps, family.helperId);
  await message.reply(text, buttons);
}

/** A family's settings, and from which age on a brother or sister may help, which is the class's. */
export const settingsTaps: TapHandlers<
  | 'settings'
  | 'timeChoices'
  | 'chooseTime'
  | 'wayChoices'
  | 'settleWay'
  | 'setSwitch'
  | 'siblingAges'
  | 'siblingAge'
> = {
  settings: async (tap) => showSettings(tap, await helperOf(tap)),
  timeChoices: async (tap) => {
    const [first] = await listFamilyChildren(tap.deps.store, await helperOf(tap));
    if (!first) throw new AppError('not_found', 'child');
    await tap.answer();
    await tap.show(screens.timeSettingScreen(first));
  },
  chooseTime: async (tap, { to }) => {
    const helperId = await helperOf(tap);
    await setTime(tap, helperId, to);
    await showSettings(tap, helperId);
  },
  wayChoices: async (tap) => {
    const helperId = await helperOf(tap);
    const { store } = tap.deps;
    const untimed = await untimedChildren(store, helperId);
    const display = await getDisplay(store, helperId);
    await tap.answer();
    await tap.show(screens.waySettingScreen(display, untimed));
  },
  settleWay: async (tap, { way }) => {
    const helperId = await helperOf(tap);
    await showSettings(tap, helperId, wayChosen(await setWay(tap.deps.store, { helperId, way })));
  },
  setSwitch: async (tap, { what, on }) => {
    const which = DISPLAY_SWITCHES.find((each) => each === what);
    if (!which) return tap.answer(staleButton(), 'alert');
    const helperId = await helperOf(tap);
    const switches = { [which]: on === 1 };
    const display = await setDisplay(tap.deps.store, { helperId, switches });
    await showSettings(tap, helperId, switched(which, display));
  },
  siblingAges: (tap, { classId }) =>
    turn(tap, classId, async (scope) => {
      await getClass(tap.deps.store, scope);
      return screens.siblingAgeScreen(classId, await getSiblingAge(tap.deps.store, scope));
    }),
  siblingAge: (tap, { classId, age }) =>
    turn(tap, classId, async (scope) =>
      screens.siblingAgeScreen(classId, await setSiblingAge(tap.deps.store, scope, age)),
    ),
};

async function showSettings(tap: Tap, helperId: string, said?: string): Promise<void> {
  const screen = await readSettings(tap.deps, helperId);
  await tap.answer(said);
  await tap.show(screen);
}

async function readSettings(deps: BotDeps, helperId: string): Promise<Screen> {
  const { store, clock } = deps;
  const now = clock.now();
  const children: SettingsChild[] = [];
  for (const { child, pace, today } of await readFamilyPaces(store, { helperId, now })) {
    const scope = { helperId, childId: child.id };
    const { weekdays } = child.schoolClass;
    children.push({
      tie: child,
      practised: await countPractised(store, { ...scope, now }),
      days: drillWeekdays(pace, weekdays),
      stand: paceStand(pace, today, weekdays),
    });
  }
  const display = await getDisplay(store, helperId);
  return screens.settingsScreen(children, display, await readDataUsed(store, { helperId, now }));
}
