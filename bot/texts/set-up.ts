import type { SchoolClass } from '../../db/index.ts';
import type { Profile } from '../../drills/index.ts';
import { bold, lines, name, type Text } from './words.ts';

/** The question for a time zone, above buttons with places and what their clocks show. */
export const ASK_ZONE =
  'Which time zone are the families in? Tap the clock that is right, or send a city such as Nairobi or Europe/London.';

/** A place and what its clocks show: `London · 10:12`. */
export function zoneButton(zone: string, time: string): string {
  const city = zone.split('/').at(-1) ?? zone;
  return `${city.replaceAll('_', ' ')} · ${time}`;
}

/** A city that several time zones have in their names. */
export function severalZones(zones: readonly string[]): Text {
  return lines('There are several. Which one?', ...zones.slice(0, 6));
}

/** Choosing the grade a first plan is made for. */
export function chooseFirstGrade({ title }: SchoolClass, profile: Profile | null): Text {
  return lines(
    bold(`${name(title)}: the first plan`),
    profile ? `${profile.title}. Which grade?` : 'Which curriculum is nearest to yours?',
    'I suggest five steps usual at this time of the school year. You look them over before anything goes out.',
  );
}

/** A grade without any step of its own. */
export const NO_FIRST_PLAN =
  'No steps are named for that grade. Open the week plan and choose the parts yourself.';

/** After Cancel. */
export function cancelled(): string {
  return 'Left as it was.';
}

/** Cancel, when nothing is asked any more. */
export const NOTHING_ASKED = 'Nothing is waiting for an answer any more.';

/** A button for a class that was to be made, when it is made or given up. */
export const CLASS_GONE_ON =
  'That class is made, or was given up. Send /class to see where you are.';
