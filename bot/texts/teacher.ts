import { type Book, CLASS_LIMITS, type ClassBreak, type SchoolClass } from '../../db/index.ts';
import { NICKNAME_LENGTH } from '../input/nickname.ts';
import { quote, shorten } from './quote.ts';
import {
  bold,
  count,
  lines,
  name,
  pageRange,
  shortDate,
  type Text,
  weekdayName,
  weekdayRange,
} from './words.ts';

/** After an invitation is accepted. */
export function welcomeTeacher(): Text {
  return lines(
    bold('Welcome. You are a teacher here now.'),
    'Make your class with /newclass. It takes about three minutes.',
  );
}

const ASK = {
  title: 'What is the class called? For example: Kingfisher class',
  zone: 'Which time zone are the families in? For example: Africa/Johannesburg or Europe/London',
  roster: `Send the children’s nicknames, one a line, at most ${NICKNAME_LENGTH} characters each. Nicknames only: no surnames.`,
  evening: `At what time shall the drill go out? From ${CLASS_LIMITS.eveningFrom} to ${CLASS_LIMITS.eveningTo}, for example 17:30. A family can choose its own.`,
  nudge: `At what time shall the one gentle nudge go out, if nobody has marked? At least ${CLASS_LIMITS.nudgeGapMinutes} minutes after the drill, at ${CLASS_LIMITS.nudgeTo} at the latest.`,
  digest:
    'At what time shall your digest come? For example 20:00. After the evening time it covers that evening too.',
  book: 'Send the workbook’s title, its first and last page, and the pages a day, like this:\nPebble Path 1-48 2',
  break: 'Send the first and last day and a name, like this:\n2026-10-12 to 2026-10-16 Half term',
} as const;

/** The question for one thing a teacher types. */
export function ask(question: keyof typeof ASK): Text {
  return lines(ASK[question]);
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
    `${count(input.children, 'child', 'children')}, ${input.joined} with a helper`,
    `${weekdayRange(schoolClass.weekdays)} at ${schoolClass.eveningTime}, nudge at ${schoolClass.nudgeTime} (${schoolClass.zone})`,
    `Digest: ${weekdayName(schoolClass.digestWeekday, 'long')} at ${schoolClass.digestTime}`,
    book
      ? `Workbook: ${name(book.title)}, ${pageRange(book.firstPage, book.lastPage)}, ${book.pagesADay} a day`
      : 'Workbook: none',
    input.hasPlan ? null : bold('No week plan yet: nothing goes out.'),
  );
}

/** Which class? */
export function chooseClass(): Text {
  return lines(bold('Your classes'));
}

/** A teacher without a class. */
export function noClass(): Text {
  return lines('You have no class yet. Make one with /newclass.');
}

/** The settings of a class's week. */
export function times(schoolClass: SchoolClass): Text {
  return lines(
    bold(`${name(schoolClass.title)}: days and times`),
    `School days: ${weekdayRange(schoolClass.weekdays)}`,
    `Drill at ${schoolClass.eveningTime}, nudge at ${schoolClass.nudgeTime}`,
    `Digest: ${weekdayName(schoolClass.digestWeekday, 'long')} at ${schoolClass.digestTime}`,
    `Time zone: ${schoolClass.zone}`,
    'Tap what you want to change.',
  );
}

/** Characters of a break's title that are shown: enough to know it by, and short enough for a button. */
const BREAK_TITLE_LENGTH = 30;

/** The breaks ahead. */
export function breakList(schoolClass: SchoolClass, breaks: readonly ClassBreak[]): Text {
  return lines(
    bold(`${name(schoolClass.title)}: breaks`),
    ...breaks.map(
      (b) =>
        `${shorten(b.title, BREAK_TITLE_LENGTH)}: ${shortDate(b.first)} to ${shortDate(b.last)}`,
    ),
    breaks.length === 0
      ? 'None ahead. On a break’s days nothing goes out.'
      : 'Tap a break to remove it.',
  );
}

/** A break's button, which removes it. */
export function breakButton({ title, first }: ClassBreak): string {
  return `✗ ${shorten(title, BREAK_TITLE_LENGTH)}, ${shortDate(first)}`;
}

/** A break that could not be read. `value` is what was typed, or the number of days when it is `long`. */
export function badBreak(problem: 'shape' | 'date' | 'order' | 'long', value: string): Text {
  const because = {
    shape: 'I could not read that as a break.',
    date: `${quote(value)} is not a date in the calendar.`,
    order: `${quote(value)}: the last day comes before the first.`,
    long: `${value} days are too long for a break, at most 120.`,
  }[problem];
  return lines(because, ASK.break);
}

/** The workbook in use. */
export function bookScreen(schoolClass: SchoolClass, book: Book | null): Text {
  return lines(
    bold(`${name(schoolClass.title)}: workbook`),
    book
      ? `${name(book.title)}, ${pageRange(book.firstPage, book.lastPage)}, ${count(book.pagesADay, 'page', 'pages')} a day`
      : 'None. Evenings carry no page target.',
  );
}

/** A workbook that could not be read. */
export function badBook(): Text {
  return lines('I could not read that as a workbook.', ASK.book);
}

/** A time that could not be read. `value` is what was typed. */
export function badClassTime(value: string): Text {
  return lines(
    `${quote(value)} is not a time. Send hours and minutes from 00:00 to 23:59, like 17:30.`,
  );
}

/** A time zone that does not exist. */
export function badZone(value: string): Text {
  return lines(
    `I do not know the time zone ${quote(value)}.`,
    'Send a region and a city, like Africa/Johannesburg, Europe/London or America/New_York.',
  );
}

/** A setting was stored. */
export function stored(): Text {
  return lines('Saved. A drill time that is over for today starts tomorrow.');
}

/** Text where a button is expected. */
export function teacherHelp(): Text {
  return lines(
    'Please use the buttons, or one of these:',
    '/class · your class: plan, children, times, digest',
    '/newclass · make another class',
  );
}

/** After a class is made. */
export function classMade(): Text {
  return lines(
    bold('The class is there.'),
    'Above are its usual days and times; change what does not suit. Next: the children, then the week plan.',
  );
}
