import { type AppError, BOOK_LIMITS, CLASS_LIMITS, MAX_CHILDREN } from '../../db/index.ts';

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
  'break order': 'A break’s last day is not before its first. Please send the break again.',
  'book title': `A workbook title has 1 to ${BOOK_LIMITS.titleLength} characters. Please send a shorter one.`,
  page: `Pages are from 1 to ${BOOK_LIMITS.page}. Please send the workbook again.`,
  'page order': 'The first page comes before the last page. Please send the workbook again.',
  'pages a day': `Pages a day are from 1 to ${BOOK_LIMITS.pagesADay}. Please send the workbook again.`,
  pages: 'That many pages in one evening cannot be stored. Tap a smaller number.',
  way: 'The cards come as a clip, as pictures or as words only. Send /show and choose one.',
  curriculum: 'I do not know that curriculum. Open the week plan and choose again.',
  grade: 'That curriculum has no such grade. Open the week plan and choose again.',
  'week plan': 'This plan cannot be used as it stands. Open the week plan and choose again.',
};

const NOT_FOUND: Readonly<Record<string, string>> = {
  message: 'This button is on somebody else’s message. Nothing was changed.',
  slip: 'This join link is not valid. It may have been replaced by a newer one. Please ask the teacher for a new link.',
  'teacher invitation':
    'This invitation is not valid any more. Please ask the person who runs this bot for a new one.',
  evening: 'This drill is not yours to mark, or not any more. Nothing was changed.',
  break: 'That break is gone already.',
  'draft plan': 'There are no changes to use.',
};

const CONFLICT: Readonly<Record<string, string>> = {
  helper: 'You have joined this child already. Send /today for today’s drill.',
  nickname:
    'One of these nicknames is in the class already. Nothing was added. Please send the list again.',
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
      return error.what === 'slip'
        ? 'This join link is too old. Please ask the teacher for a new one.'
        : 'That day is over. Send /today for today’s drill.';
    case 'used_up':
      return 'This join link has been used as often as it may be. Please ask the teacher for a new one.';
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
