import {
  type AppError,
  BOOK_LIMITS,
  CLASS_LIMITS,
  CodesPaused,
  GREETING_LIMITS,
  GUESS_LIMITS,
  MAX_CHILDREN,
  MOST_BREAKS_AT_ONCE,
} from '../../db/index.ts';
import { TERM_WEEKS } from '../../drills/index.ts';
import { codesPaused } from './limits.ts';

/** The reply to each setting that can be out of range: what is allowed and what to do. */
const INVALID: Readonly<Record<string, string>> = {
  title: `A title has 1 to ${CLASS_LIMITS.titleLength} characters. Please send a shorter one.`,
  zone: 'I do not know that time zone. Send one like Africa/Johannesburg or Europe/London.',
  weekdays: 'At least one school day is needed. Choose another one first.',
  'evening time': `The evening time is from ${CLASS_LIMITS.eveningFrom} to ${CLASS_LIMITS.eveningTo}. Please send a time in between.`,
  'nudge time': `The nudge is sent at ${CLASS_LIMITS.nudgeTo} at the latest. Please send an earlier time.`,
  'nudge too early': `The nudge comes at least ${CLASS_LIMITS.nudgeGapMinutes} minutes after the evening time. Change the other time first.`,
  'number of children': `A class has at most ${MAX_CHILDREN} children. Make a second class for the others.`,
  'break title': `A break’s name has 1 to ${CLASS_LIMITS.titleLength} characters. Please send a shorter one.`,
  'number of breaks': `At most ${MOST_BREAKS_AT_ONCE} breaks can be added at once. Leave some out.`,
  country: 'There are no holidays for that country. Choose another one.',
  'break order': 'A break’s last day is not before its first. Please send the break again.',
  'book title': `A workbook title has 1 to ${BOOK_LIMITS.titleLength} characters. Please send a shorter one.`,
  page: `Pages are from 1 to ${BOOK_LIMITS.page}. Please send the workbook again.`,
  'page order': 'The first page comes before the last page. Please send the workbook again.',
  'pages a day': `Pages a day are from 1 to ${BOOK_LIMITS.pagesADay}. Please send the workbook again.`,
  'number of books': `At most ${BOOK_LIMITS.inLine} workbooks stand in a line. Put one away first.`,
  'page of the book': 'That page is not in the workbook. Please send one that is.',
  pages: 'That many pages in one evening cannot be stored. Tap a smaller number.',
  way: 'The cards come as a clip, as pictures or as words only. Send /show and choose one.',
  curriculum: 'I do not know that curriculum. Open the week plan and choose again.',
  grade: 'That curriculum has no such grade. Open the week plan and choose again.',
  'greeting text': `A greeting in writing has 1 to ${GREETING_LIMITS.textLength} characters. Please send another one.`,
  'greeting days': 'A greeting’s last day is not before its first. Choose its week again.',
  'term weeks': `A term has from ${TERM_WEEKS.min} to ${TERM_WEEKS.max} weeks. Take another week out first.`,
  'only week': 'This is the term’s only week. End the term instead, from its screen.',
  'week plan': 'This plan cannot be used as it stands. Open the week plan and choose again.',
};

const NOT_FOUND: Readonly<Record<string, string>> = {
  message: 'This button is on somebody else’s message. Nothing was changed.',
  slip: 'This join link is not valid. It may have been replaced by a newer one. Please ask the teacher for a new link.',
  'teacher invitation':
    'This invitation is not valid any more. Please ask whoever gave it to you for a new one.',
  'co-teacher': 'That co-teacher has left the class already.',
  evening: 'This drill is not yours to mark, or not any more. Nothing was changed.',
  break: 'That break is gone already.',
  book: 'That workbook is put away, or it is not yours to change.',
  column: 'That file has no such column. Send the file again.',
  erasure: 'That is not yours to change, or it is gone already. Nothing was changed.',
  act: 'There is nothing to take back here, or it is not yours to take back.',
  'draft plan': 'There are no changes to use.',
  term: 'There is no term in use any more. Open the week plan.',
  'term week': 'The term has no such week any more. Open the term again.',
  greeting: 'That greeting is not in use any more. Open Greeting again to see the one that is.',
};

const CONFLICT: Readonly<Record<string, string>> = {
  'lead only': 'Only the lead teacher of the class can do that. Nothing was changed.',
  'lead leaves':
    'The lead teacher cannot leave. Hand the class over first, or archive it. Nothing was changed.',
  'week plan':
    'Another week plan was put in use since. Nothing was changed: please look at the plan in use.',
  undo: 'That can no longer be taken back: something else has changed since. Nothing was changed now.',
  'archived class':
    'The child is in a class that was archived. Nothing was changed. Take the archiving back first: send /undo.',
  'nickname in the class':
    'Another child of that class has this nickname. Nothing was changed. Rename one of the two first.',
  'book title':
    'A workbook with that title is in line already. Tap it to change it, or send another title.',
  erasure:
    'The class is full, or another child has this nickname by now. Please ask the teacher to make room, then tap Undo again.',
  helper: 'You have joined this child already. Send /today for today’s drill.',
  term: 'Another term was put in use since. Nothing was changed.',
  'term weeks':
    'The term is full by now, so the week does not fit back in. Take another week out first.',
  nickname:
    'One of these nicknames is in the class already. Nothing was added. Please send the list again.',
};

const EXPIRED: Readonly<Record<string, string>> = {
  slip: 'This join link is too old. Please ask the teacher for a new one.',
  erasure: 'That was more than a day ago and can no longer be taken back.',
  act: 'That was more than a day ago and can no longer be taken back.',
};

/** The one place where an error of ours becomes words for a person. */
export function errorText(error: AppError): string {
  switch (error.code) {
    case 'invalid':
      return INVALID[error.what] ?? 'That value cannot be used.';
    case 'not_found':
      return NOT_FOUND[error.what] ?? 'That is not here any more, or it is not yours to change.';
    case 'conflict':
      return CONFLICT[error.what] ?? 'That is there already.';
    case 'expired':
      return EXPIRED[error.what] ?? 'That day is over. Send /today for today’s drill.';
    case 'used_up':
      return 'This join link has been used as often as it may be. Please ask the teacher for a new one.';
    case 'too_many':
      return codesPaused(error instanceof CodesPaused ? error.minutes : GUESS_LIMITS.minutes);
  }
}

/** For what we did not foresee. */
export const OUR_FAULT =
  'Something went wrong on our side. Nothing you did is lost. Please try again in a minute.';

/** For a tap that failed and is handled again by itself. Too soon for {@link OUR_FAULT}. */
export const TRYING_AGAIN = 'That did not work at once. I am trying again.';

/** For a button that is not ours or from another release. */
export const STALE_BUTTON =
  'That button is from an older message. Send /today or /class for a fresh one.';
