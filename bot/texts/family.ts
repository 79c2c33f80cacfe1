import type { FamilyChild, OpenSlip } from '../../db/index.ts';
import { quote } from './quote.ts';
import { bold, lines, listOf, name, type Text, weekdayRange } from './words.ts';

/** Version of the notice below, kept with each agreement. Change it whenever the words change. */
export const NOTICE_VERSION = '2026-11-25.2';
/** The language the notice is written in. */
export const NOTICE_LANGUAGE = 'en';

/** What a helper reads before anything is stored. */
export function notice(slip: OpenSlip): Text {
  return lines(
    bold(`${name(slip.nickname)} · ${name(slip.classTitle)}`),
    'A few minutes of mental maths each school day. You read or show the cards, the child answers aloud, you tap what was missed.',
    '',
    bold('What is kept'),
    'The nickname, which cards were right, and the workbook pages. No full name, birthday, photo or address.',
    bold('Who sees it'),
    'You and the teachers of the class. No other family. The teachers do not see your account.',
    bold('How long'),
    'Marks for 13 months. Everything until 30 days after the child has left the class. The school decides; local law applies.',
    bold('Your choice, at any time'),
    '/stop ends the messages, /mydata sends you a copy, /erase deletes everything. Nobody asks why.',
    '',
    'A score is a snapshot of one evening, not a judgement of a child.',
  );
}

/** After "No, thank you". */
export function disagreed(): Text {
  return lines('Fine. Nothing was stored. The link stays good if you change your mind.');
}

/** After agreeing. */
export function joined(slip: OpenSlip, child: FamilyChild | undefined): Text {
  return lines(
    bold(`You are ${name(slip.nickname)}’s helper now.`),
    child
      ? `The drill comes ${weekdayRange(child.schoolClass.weekdays)} at ${child.eveningTime}. Another time suits better? Send /time 18:00, for example.`
      : null,
    'Send /today to see today’s drill again and /stop to end this.',
  );
}

/** For somebody we do not know. `teachers` says whether anybody may become one, or only who is invited. */
export function stranger(teachers: 'invite' | 'open' = 'invite'): Text {
  return lines(
    bold('Hello.'),
    'This bot brings a few minutes of mental maths to children of classes that use it.',
    'Helpers: open the join link from your class teacher, or send me the code on your join slip.',
    teachers === 'open'
      ? 'Teachers: send /teach to begin.'
      : 'Teachers: ask the person who runs this bot for an invitation.',
  );
}

/** When "/today" finds nothing. */
export function nothingToday(child: FamilyChild): Text {
  return lines(
    `${name(child.nickname)}: no drill yet today. It comes ${weekdayRange(child.schoolClass.weekdays)} at ${child.eveningTime}.`,
  );
}

/** For the helper of children who are off their class's list, or whose class has ended. Why is the school's to say. */
export function practiceStopped(nicknames: readonly string[]): Text {
  const names = listOf(nicknames.map(name));
  return lines(
    `Practice for ${names} has stopped. Please ask the school about it; /stop still ends your part.`,
  );
}

/** After "/time 18:15". */
export function timeSet(time: string): Text {
  return lines(`The drill comes at ${time} now. If that is over for today, it starts tomorrow.`);
}

/** "/time" without a usable time. */
export function badTime(value: string, from: string, to: string): Text {
  const got = value === '' ? 'Please add a time.' : `${quote(value)} is not a time I can use.`;
  return lines(got, `Send a time from ${from} to ${to}, like this: /time 18:15`);
}

/** For "Later" when half an hour later would be too late; both are times of day. */
export function tooLateToRemind(now: string, latest: string): string {
  return `It is ${now} already: no reminder after ${latest}. Start whenever it suits tonight.`;
}

/** Before leaving. */
export function askToLeave(children: readonly Pick<FamilyChild, 'nickname'>[]): Text {
  const names = listOf(children.map((child) => name(child.nickname)));
  return lines(
    bold(`Stop helping ${names}?`),
    'No more messages come, and your agreement is withdrawn. To join again, open your link once more or ask the teacher for a new one.',
    'What was marked stays with the class. Shall it be deleted too? Then send /erase instead: it is no longer possible once you have left.',
  );
}

/** After leaving. */
export function left(): Text {
  return lines('Done. No more messages will come. Thank you for the time you gave.');
}

/** After deciding to stay. */
export function staying(): Text {
  return lines('Good. Everything stays as it was.');
}

/** For a teacher who sends a helper's command and helps no child. */
export function teacherHelpsNobody(): Text {
  return lines('You help no child here. What you do as a teacher is under /class and goes on.');
}
