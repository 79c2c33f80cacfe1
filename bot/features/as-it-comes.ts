import { type ChildPace, type FamilyChild, readFamilyPaces } from '../../db/index.ts';
import { isPaused, usualWeekdays } from '../../drills/index.ts';
import type { BotDeps } from '../deps.ts';
import { nothingToday } from '../texts/family.ts';
import { pausedToday } from '../texts/pace.ts';
import type { Text } from '../texts/words.ts';

/** How often the drill comes, for each of a helper's children, by child. */
export async function pacesByChild(
  { store, clock }: BotDeps,
  helperId: string,
): Promise<ReadonlyMap<string, ChildPace>> {
  const paces = await readFamilyPaces(store, { helperId, now: clock.now() });
  return new Map(paces.map((each) => [each.child.id, each]));
}

/** A child whose class's weekdays are those on which its drill comes: what a family is told of its days follows from them. */
export function asItComes(child: FamilyChild, of: ChildPace | undefined): FamilyChild {
  if (!of) return child;
  const { schoolClass } = child;
  const weekdays = usualWeekdays(of.pace, schoolClass.weekdays);
  return { ...child, schoolClass: { ...schoolClass, weekdays } };
}

/** What there is to say when a child has no drill today. */
export function nothingCame(child: FamilyChild, of: ChildPace | undefined): Text {
  return pauseOf(of) ?? nothingToday(asItComes(child, of));
}

/** That a child's drill is paused, and until when; null when it is not. */
export function pauseOf(of: ChildPace | undefined): Text | null {
  const until = of?.pace.pausedUntil ?? null;
  if (!of || until === null || !isPaused(of.pace, of.today)) return null;
  return pausedToday(of.child.nickname, until);
}
