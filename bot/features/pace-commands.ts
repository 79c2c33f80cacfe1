import { findHelperByChat, pauseDrills, readFamilyPaces } from '../../db/index.ts';
import { addDays, LONGEST_PAUSE_DAYS, type SchoolDay } from '../../drills/index.ts';
import { oneLine } from '../input/one-line.ts';
import { readPauseDay } from '../input/pause-text.ts';
import { drillDaysScreen, pauseScreen } from '../screens/pace-screens.ts';
import { badPauseDay } from '../texts/pace.ts';
import { expect, fulfilled } from './expectations.ts';
import { practisingFamilyOf } from './family-commands.ts';
import { withCancel } from './open-question.ts';
import type { Typed } from './say.ts';

/** `/pause`: nothing comes for a while; `/pause 12 October` says at once until when. */
export async function pauseCommand(message: Typed, value: string): Promise<void> {
  const family = await practisingFamilyOf(message);
  if (!family) return;
  if (value === '') return replyWithPause(message, family.helperId);
  // One that cannot be taken is asked for again.
  await expect(message.deps, message.userId, { kind: 'pause', data: {} });
  await pauseAnswer(withCancel({ ...message, text: value }));
}

/** `/days`: the school days on which the drill comes. */
export async function daysCommand(message: Typed): Promise<void> {
  const family = await practisingFamilyOf(message);
  if (!family) return;
  const { store, clock } = message.deps;
  const children = await readFamilyPaces(store, { ...family, now: clock.now() });
  const { text, buttons } = drillDaysScreen(children);
  await message.reply(text, buttons);
}

/** Takes the day on which the drill shall come again. One that cannot be taken leaves the question open. */
export async function pauseAnswer(message: Typed): Promise<void> {
  const { deps, userId, reply } = message;
  const helper = await findHelperByChat(deps.store, userId);
  const word = { helperId: helper?.id ?? '', now: deps.clock.now() };
  const children = helper ? await readFamilyPaces(deps.store, word) : [];
  const today = children
    .map((each): SchoolDay => each.today)
    .sort()
    .at(-1);
  if (!today) {
    await fulfilled(deps, userId);
    await practisingFamilyOf(message);
    return;
  }
  const found = readPauseDay(oneLine(message.text), today);
  if (!('day' in found) || 'problem' in found) {
    const range = { first: addDays(today, 1), last: addDays(today, LONGEST_PAUSE_DAYS) };
    return reply(badPauseDay(found, range));
  }
  await pauseDrills(deps.store, { ...word, until: found.day });
  await fulfilled(deps, userId);
  await replyWithPause(message, word.helperId);
}

async function replyWithPause(message: Typed, helperId: string): Promise<void> {
  const { store, clock } = message.deps;
  const { text, buttons } = pauseScreen(
    await readFamilyPaces(store, { helperId, now: clock.now() }),
  );
  await message.reply(text, buttons);
}
