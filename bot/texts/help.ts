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
    '/stop · end it, at once; /mydata and /erase · a copy, or nothing kept',
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

const AWAITED = {
  new_title: 'Send the new class’s title',
  new_zone: 'Send the new class’s time zone, like Europe/London',
  title: 'Send the class’s new title',
  zone: 'Send the class’s time zone, like Europe/London',
  roster: 'Send the children’s nicknames, one a line, or a file',
  evening: 'Send the time of the drill, like 17:30',
  nudge: 'Send the time of the nudge, like 19:00',
  digest: 'Send the time of your digest, like 20:00',
  break: 'Send the days of the break and its name',
  greeting: 'Send your greeting: a text, a voice note or a video',
  book_new: 'Send the workbook: its title, first and last page, and the pages a day',
  book_change: 'Send the workbook anew: its title, first and last page, and the pages a day',
  book_page: 'Send the page of the workbook, or “done”',
  nickname: 'Send the child’s new nickname',
  recording: 'Tap above what your recording is for',
  file: 'Tap above which class your list is for',
  file_list: 'Tap above to add the children of your list',
} as const;

/** What a person was asked for and has not given yet. */
export type AwaitedAnswer = keyof typeof AWAITED;

/** Under help, while a question is open: what is expected, and the way out of it. */
export function stillExpected(awaited: AwaitedAnswer): Text {
  return lines(`I am still waiting for an answer. ${AWAITED[awaited]}, or tap Cancel.`);
}
