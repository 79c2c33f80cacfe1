import { localTimeAt, type SchoolClass } from '../../db/index.ts';
import { PROFILES, type Profile } from '../../drills/index.ts';
import type { Action } from '../callback/actions.ts';
import { BUTTONS } from '../texts/buttons.ts';
import * as texts from '../texts/set-up.ts';
import { lines } from '../texts/words.ts';
import { back } from './class-screens.ts';
import { type Button, button, rows, type Screen } from './screen.ts';

/** Time zones most classes are in; any other can be typed. */
const OFFERED_ZONES = [
  'Europe/London',
  'Africa/Johannesburg',
  'America/New_York',
  'America/Chicago',
  'America/Los_Angeles',
  'Australia/Sydney',
] as const;

/** Drops a question that was asked. */
export function cancelButton(): Button {
  return button(BUTTONS.cancel, { kind: 'cancel' });
}

/** A time zone as buttons spell it, and back: a dot stands for the slash, which buttons do not carry. */
export const zoneCode = {
  write: (zone: string) => zone.replaceAll('/', '.'),
  read: (text: string) => text.replaceAll('.', '/'),
} as const;

/**
 * Asks for a time zone. `own` are zones the teacher's other classes are in, which come first; `action` is what a tap on one
 * does. `problem` says what was wrong with the last answer.
 */
export function zoneScreen(
  {
    own,
    now,
    problem = null,
  }: { own: readonly string[]; now: Date; problem?: Screen['text'] | null },
  action: (zone: string) => Action,
): Screen {
  const zones = [...new Set([...own, ...OFFERED_ZONES])].slice(0, 8);
  const choices = zones.map((zone) =>
    button(texts.zoneButton(zone, localTimeAt(now, zone).time), action(zoneCode.write(zone))),
  );
  return {
    text: problem ?? lines(texts.zoneQuestion()),
    buttons: [...rows(choices, 1), [cancelButton()]],
  };
}

/** Which grade a first plan is made for, or first which curriculum. */
export function firstPlanScreen(schoolClass: SchoolClass, profile: Profile | null): Screen {
  const { id: classId } = schoolClass;
  const choices = profile
    ? profile.grades.map(({ id, label }) =>
        button(label, { kind: 'firstPlanFor', classId, curriculum: profile.id, grade: id }),
      )
    : PROFILES.filter(({ grades }) => grades.length > 0).map(({ id, title }) =>
        button(title, { kind: 'firstPlan', classId, curriculum: id }),
      );
  const other = button(BUTTONS.otherCurriculum, { kind: 'firstPlan', classId, curriculum: 'all' });
  return {
    text: texts.chooseFirstGrade(schoolClass, profile),
    buttons: [...rows(choices, profile ? 2 : 1), ...(profile ? [[other]] : []), [back(classId)]],
  };
}
