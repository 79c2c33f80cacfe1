import type { FamilyChild, SchoolClass } from '../../db/index.ts';
import type { SchoolDay } from '../../drills/index.ts';
import { bold, count, lines, listOf, name, shortDate, type Text, weekdayRange } from './words.ts';

/** How far a class has come: what is the next thing to do for it. */
export type ClassStage = 'no_children' | 'no_plan' | 'nobody_joined' | 'running';

/** Help for a teacher without a class. */
export function helpWithoutClass(): Text {
  return lines(
    bold('Let us make your first class.'),
    'It takes about three minutes: a title, a time zone and the children’s nicknames. You can change everything later.',
  );
}

/** Help for a teacher of one class: what it needs next. `next` is the day of its next evening. */
export function helpWithClass(
  schoolClass: SchoolClass,
  stage: ClassStage,
  { waiting, next }: { waiting: number; next: SchoolDay },
): Text {
  return lines(
    bold(name(schoolClass.title)),
    {
      no_children: 'Next: add the children. Send their nicknames, one a line, or a file.',
      no_plan: 'Next: choose what is practised. You can start with the usual steps of the grade.',
      nobody_joined:
        'Next: give each family its slip. As soon as somebody has joined, the drills begin by themselves.',
      running: `All is running. The next drill goes out on ${shortDate(next)} at ${schoolClass.eveningTime}.`,
    }[stage],
    stage === 'running' && waiting > 0
      ? `${count(waiting, 'child has', 'children have')} nobody to help yet: new slips are under Print.`
      : null,
    ...TEACHER_COMMANDS,
  );
}

/** Help for a teacher of several classes. */
export function helpWithClasses(classes: number): Text {
  return lines(bold(`You have ${classes} classes.`), 'Which one is it about?', ...TEACHER_COMMANDS);
}

const TEACHER_COMMANDS = [
  '/class · plan, children, breaks, digest',
  '/newclass · one more class',
  '/undo · take back a change of the last day',
] as const;

/** Help for a helper. `stands` says of each child whether today's drill has come. */
export function helpForFamily(stands: readonly { child: FamilyChild; isHere: boolean }[]): Text {
  const names = listOf(stands.map(({ child }) => name(child.nickname)));
  const shown = stands.slice(0, 3);
  return lines(
    bold(`You help ${names}.`),
    ...shown.map(({ child, isHere }) => standLine(child, isHere)),
    '/today · today’s drill again',
    '/time 18:00 · another time, from the next evening',
    '/show · clip, pictures or words only, for less data',
    '/stop · end it, at once',
  );
}

function standLine({ nickname, schoolClass, eveningTime }: FamilyChild, isHere: boolean): string {
  const when = `${weekdayRange(schoolClass.weekdays)} at ${eveningTime}`;
  return isHere
    ? `${name(nickname)}: today’s drill is here, /today shows it.`
    : `${name(nickname)}: the drill comes by itself, ${when}.`;
}

/** Over help, when somebody typed what nobody had asked for. */
export function notAsked(): string {
  return 'I did not expect a message just now, so I changed nothing.';
}
