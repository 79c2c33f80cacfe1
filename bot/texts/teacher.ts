import { type Book, CLASS_LIMITS, type SchoolClass } from '../../db/index.ts';
import { NICKNAME_LENGTH } from '../input/nickname.ts';
import { ASK_BREAK } from './breaks.ts';
import { ASK_GREETING } from './greeting.ts';
import { quote } from './quote.ts';
import { ASK_ZONE } from './set-up.ts';
import {
  bold,
  count,
  lines,
  name,
  pageRange,
  type Text,
  weekdayName,
  weekdayRange,
} from './words.ts';

/** After an invitation is accepted. */
export function welcomeTeacher(): Text {
  return lines(
    bold('Welcome. You are a teacher here now.'),
    'Make your class now: it takes about three minutes. /newclass does so at any time.',
  );
}

const ASK = {
  title: 'What is the class called? For example: Kingfisher class',
  zone: ASK_ZONE,
  roster: `Send the children’s nicknames, one a line, at most ${NICKNAME_LENGTH} characters each. Nicknames only: no surnames. Or send the list as an XLSX or CSV file.`,
  evening: `At what time shall the drill go out? From ${CLASS_LIMITS.eveningFrom} to ${CLASS_LIMITS.eveningTo}, for example 17:30. A family can choose its own.`,
  nudge: `At what time shall the one gentle nudge go out, if nobody has marked? At least ${CLASS_LIMITS.nudgeGapMinutes} minutes after the drill, at ${CLASS_LIMITS.nudgeTo} at the latest.`,
  digest:
    'At what time shall your digest come? For example 20:00. After the evening time it covers that evening too.',
  break: ASK_BREAK,
  greeting: ASK_GREETING,
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
    'Send a city that time zones are named after, like Nairobi, or a zone like Europe/London.',
  );
}

/** A setting was stored. */
export function stored(): Text {
  return lines('Saved. A drill time that is over for today starts tomorrow.');
}

/** After a class is made. */
export function classMade(): Text {
  return lines(
    bold('The class is there.'),
    'Above are its usual days and times; change what does not suit. Next: the children, then the week plan.',
  );
}
