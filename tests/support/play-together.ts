import type { Phone } from '../../bot/roots/phone.ts';
import { type Intention, nextTap } from './intention.ts';
import type { World } from './world.ts';

/** A family at its phone, with what it means to do. */
export interface FamilyAtHome {
  readonly phone: Phone;
  readonly intention: Intention;
}

/** Lets all these families do what they mean to, all tapping at the same time, until none has anything left to tap. */
export async function playTogether(world: World, families: readonly FamilyAtHome[]): Promise<void> {
  let playing = families;
  while (playing.length > 0) {
    const taps = await Promise.all(playing.map(tapOnce));
    playing = playing.filter((_, index) => taps[index]);
    await world.settle();
  }
}

/** One tap, not yet answered. False when there is nothing left to tap. */
async function tapOnce({ phone, intention }: FamilyAtHome): Promise<boolean> {
  const screen = await phone.last();
  const label = nextTap(screen, intention);
  if (label === null) return false;
  const buttons = screen.buttons.flat();
  const chosen =
    buttons.find(({ text }) => text === label) ??
    buttons.find(({ text }) => text.startsWith(label));
  if (chosen?.data === undefined) throw new Error(`no button says ${label}`);
  await phone.world.client.tap(phone.id, screen.id, chosen.data);
  return true;
}
