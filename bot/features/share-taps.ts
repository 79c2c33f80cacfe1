import { AppError, type FamilyScope, localTimeAt, readSharing, shareSlip } from '../../db/index.ts';
import { sendScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import type { Screen } from '../screens/screen.ts';
import * as screens from '../screens/settings-screens.ts';
import { shortDate } from '../texts/words.ts';
import { practisingFamilyOf } from './family-commands.ts';
import { familyScope } from './family-scope.ts';
import type { Typed } from './say.ts';
import type { TapHandlers } from './tap.ts';

/** `/share`: one more adult helps a child; which one, when there are several. */
export async function shareCommand(message: Typed): Promise<void> {
  const family = await practisingFamilyOf(message);
  if (!family) return;
  const [only, ...others] = family.children;
  if (!only) return;
  const scope = { helperId: family.helperId, childId: only.id };
  const { text, buttons } =
    others.length > 0
      ? screens.shareWhomScreen(family.children)
      : await readShare(message.deps, scope);
  await message.reply(text, buttons);
}

/** Passing a child on to one more adult of the family. */
export const shareTaps: TapHandlers<'shareAsk' | 'shareLink'> = {
  shareAsk: async (tap, { child }) => {
    const screen = await readShare(tap.deps, await familyScope(tap, child));
    await tap.answer();
    await tap.show(screen);
  },
  shareLink: async (tap, { child, was }) => {
    const { deps, userId } = tap;
    const scope = await familyScope(tap, child);
    const link = await makeLink(deps, scope, was);
    const screen = await readShare(deps, scope);
    await tap.answer();
    await tap.show(screen);
    // On a message of its own, which can be passed on, and which no late tap turns into something else.
    if (link) await sendScreen(deps, userId, link);
  },
};

async function readShare(deps: BotDeps, scope: FamilyScope): Promise<Screen> {
  const found = await readSharing(deps.store, { ...scope, now: deps.clock.now() });
  const until = found.openUntil && untilIn(found.openUntil, found.schoolClass.zone);
  return screens.shareScreen(found, until);
}

/** The link, or null when none can be made: a tap that comes twice finds its own link open. */
async function makeLink(deps: BotDeps, scope: FamilyScope, was: string): Promise<Screen | null> {
  const { store, clock } = deps;
  const { schoolClass } = await readSharing(store, { ...scope, now: clock.now() });
  try {
    const linkOf = await deps.linksOf(schoolClass.id);
    const made = await shareSlip(store, { ...scope, was, now: clock.now() });
    const until = untilIn(made.expiresAt, schoolClass.zone);
    return screens.sharedScreen(made.nickname, linkOf(made.code), until);
  } catch (error) {
    if (error instanceof AppError && error.code === 'conflict') return null;
    throw error;
  }
}

function untilIn(instant: Date, zone: string): string {
  const { day, time } = localTimeAt(instant, zone);
  return `${shortDate(day)}, ${time}`;
}
