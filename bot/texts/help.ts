import type { FamilyChild, SchoolClass } from '../../db/index.ts';
import type { SchoolDay } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { BUTTONS } from './buttons.ts';
import { bold, lines, listOf, name, shortDate, type Text, weekdayRange } from './words.ts';

/** How far a class has come: what is the next thing to do for it. */
export type ClassStage = 'no_children' | 'no_plan' | 'nobody_joined' | 'running';

/** Help for a teacher without a class. */
export function helpWithoutClass(): Text {
  return lines(bold(say('help-first-class')), say('help-first-class-takes'));
}

/** Help for a teacher of one class: what it needs next. `next` is the day of its next evening. */
export function helpWithClass(
  schoolClass: SchoolClass,
  stage: ClassStage,
  { waiting, next }: { waiting: number; next: SchoolDay },
): Text {
  return lines(
    bold(name(schoolClass.title)),
    stage === 'running'
      ? say('help-running', { day: shortDate(next), time: schoolClass.eveningTime })
      : say(`help-stage-${stage}`),
    stage === 'running' && waiting > 0
      ? say('help-waiting', { children: waiting, print: BUTTONS.print })
      : null,
    ...teacherCommands(),
  );
}

/** Help for a teacher of several classes. */
export function helpWithClasses(classes: number): Text {
  return lines(
    bold(say('help-classes', { classes })),
    say('help-which-class'),
    ...teacherCommands(),
  );
}

function teacherCommands(): string[] {
  return [say('help-command-class'), say('help-command-newclass'), say('help-command-undo')];
}

/** Help for a helper. `stands` says of each child whether today's drill has come. */
export function helpForFamily(stands: readonly { child: FamilyChild; isHere: boolean }[]): Text {
  const names = listOf(stands.map(({ child }) => name(child.nickname)));
  const shown = stands.slice(0, 3);
  return lines(
    bold(say('help-you-help', { children: names })),
    ...shown.map(({ child, isHere }) => standLine(child, isHere)),
    say('help-command-today'),
    say('help-command-time'),
    say('help-command-show'),
    say('help-command-stop'),
  );
}

function standLine({ nickname, schoolClass, eveningTime }: FamilyChild, isHere: boolean): string {
  const child = name(nickname);
  if (isHere) return say('help-drill-here', { child });
  const days = weekdayRange(schoolClass.weekdays);
  return say('help-drill-comes', { child, days, time: eveningTime });
}

/** Over help, when somebody typed what nobody had asked for. */
export function notAsked(): string {
  return say('help-not-asked');
}

/** What a person was asked for and has not given yet. */
export type AwaitedAnswer =
  | 'new_title'
  | 'new_zone'
  | 'title'
  | 'zone'
  | 'roster'
  | 'evening'
  | 'nudge'
  | 'digest'
  | 'break'
  | 'greeting'
  | 'book_new'
  | 'book_change'
  | 'book_page'
  | 'nickname'
  | 'recording'
  | 'file'
  | 'file_list'
  | 'pause';

/** Under help, while a question is open: what is expected, and the way out of it. */
export function stillExpected(awaited: AwaitedAnswer): Text {
  const wanted = say(`help-awaited-${awaited}`, { cancel: BUTTONS.cancel });
  return lines(`${say('help-still-waiting')} ${wanted}`);
}
