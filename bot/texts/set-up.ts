import type { SchoolClass } from '../../db/index.ts';
import type { Profile } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { bold, lines, name, type Text } from './words.ts';

/** The question for a time zone, above buttons with places and what their clocks show. */
export function zoneQuestion(): string {
  return say('set-up-zone');
}

/** A place and what its clocks show: `London · 10:12`. */
export function zoneButton(zone: string, time: string): string {
  const city = zone.split('/').at(-1) ?? zone;
  return `${city.replaceAll('_', ' ')} · ${time}`;
}

/** A city that several time zones have in their names. */
export function severalZones(zones: readonly string[]): Text {
  return lines(say('set-up-zones'), ...zones.slice(0, 6));
}

/** Choosing the grade a first plan is made for. */
export function chooseFirstGrade({ title }: SchoolClass, profile: Profile | null): Text {
  return lines(
    bold(say('set-up-first-plan', { class: name(title) })),
    profile ? say('set-up-grade', { curriculum: profile.title }) : say('set-up-curriculum'),
    say('set-up-suggest'),
  );
}

/** A grade without any step of its own. */
export function noFirstPlan(): string {
  return say('set-up-no-steps');
}

/** After Cancel. */
export function cancelled(): string {
  return say('set-up-cancelled');
}

/** Cancel, when nothing is asked any more. */
export function nothingAsked(): string {
  return say('set-up-nothing-asked');
}

/** A button for a class that was to be made, when it is made or given up. */
export function classGoneOn(): string {
  return say('set-up-gone-on');
}
