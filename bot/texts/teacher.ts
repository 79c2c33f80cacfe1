import { type Book, CLASS_LIMITS, type SchoolClass } from '../../db/index.ts';
import { NICKNAME_LENGTH } from '../input/nickname.ts';
import { say } from '../language/index.ts';
import { askBreak } from './breaks.ts';
import { greetingQuestion } from './greeting.ts';
import { quote } from './quote.ts';
import { zoneQuestion } from './set-up.ts';
import { bold, lines, name, pageRange, type Text, weekdayName, weekdayRange } from './words.ts';

/** After an invitation is accepted. */
export function welcomeTeacher(): Text {
  return lines(bold(say('teacher-welcome')), say('teacher-welcome-next'));
}

const ASK = {
  title: () => say('teacher-ask-title'),
  zone: zoneQuestion,
  roster: () => say('teacher-ask-roster', { most: NICKNAME_LENGTH }),
  evening: () =>
    say('teacher-ask-evening', { from: CLASS_LIMITS.eveningFrom, to: CLASS_LIMITS.eveningTo }),
  nudge: () =>
    say('teacher-ask-nudge', { gap: CLASS_LIMITS.nudgeGapMinutes, latest: CLASS_LIMITS.nudgeTo }),
  digest: () => say('teacher-ask-digest'),
  break: askBreak,
  greeting: greetingQuestion,
} as const;

/** The question for one thing a teacher types. */
export function ask(question: keyof typeof ASK): Text {
  return lines(ASK[question]());
}

/** One class at a glance. */
export function classHome(input: {
  schoolClass: SchoolClass;
  children: number;
  joined: number;
  hasPlan: boolean;
  book: Book | null;
}): Text {
  const { schoolClass, book } = input;
  return lines(
    bold(name(schoolClass.title)),
    say('teacher-children', { children: input.children, joined: input.joined }),
    say('teacher-week', {
      weekdays: weekdayRange(schoolClass.weekdays),
      evening: schoolClass.eveningTime,
      nudge: schoolClass.nudgeTime,
      zone: schoolClass.zone,
    }),
    digestLine(schoolClass),
    book ? bookLine(book) : say('teacher-no-book'),
    input.hasPlan ? null : bold(say('teacher-no-plan')),
  );
}

function digestLine({ digestWeekday, digestTime }: SchoolClass): string {
  const weekday = weekdayName(digestWeekday, 'long');
  return say('teacher-digest', { weekday, time: digestTime });
}

function bookLine({ title, firstPage, lastPage, pagesADay }: Book): string {
  const range = pageRange(firstPage, lastPage);
  return say('teacher-book', { book: name(title), range, pages: pagesADay });
}

/** A teacher without a class. */
export function noClass(): Text {
  return lines(say('teacher-no-class'));
}

/** The settings of a class's week. */
export function times(schoolClass: SchoolClass): Text {
  return lines(
    bold(say('teacher-times', { class: name(schoolClass.title) })),
    say('teacher-times-days', { weekdays: weekdayRange(schoolClass.weekdays) }),
    say('teacher-times-drill', {
      evening: schoolClass.eveningTime,
      nudge: schoolClass.nudgeTime,
    }),
    digestLine(schoolClass),
    say('teacher-times-zone', { zone: schoolClass.zone }),
    say('teacher-times-tap'),
  );
}

/** A time that could not be read. `value` is what was typed. */
export function badClassTime(value: string): Text {
  return lines(say('teacher-bad-time', { typed: quote(value) }));
}

/** A time zone that does not exist. */
export function badZone(value: string): Text {
  return lines(say('teacher-bad-zone', { typed: quote(value) }), say('teacher-bad-zone-send'));
}

/** A setting was stored. */
export function stored(): Text {
  return lines(say('teacher-saved'));
}

/** After a class is made. */
export function classMade(): Text {
  return lines(bold(say('teacher-class-made')), say('teacher-class-made-next'));
}
