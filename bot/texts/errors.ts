import { type AppError, BOOK_LIMITS, CLASS_LIMITS, MAX_CHILDREN } from '../../db/index.ts';

/** The reply to each setting that can be out of range: what is allowed and what to do. */
const INVALID: Readonly<Record<string, string>> = {
  title: `A title has 1 to ${CLASS_LIMITS.titleLength} characters. Please send a shorter one.`,
  zone: 'I do not know that time zone. Send one like Africa/Johannesburg or Europe/London.',
  weekdays: 'At least one school day is needed. Choose another one first.',
  'evening time': `The evening time is from ${CLASS_LIMITS.eveningFrom} to ${CLASS_LIMITS.eveningTo}.`,
  'nudge time': `The nudge is sent at ${CLASS_LIMITS.nudgeTo} at the latest.`,
  'nudge too early': `The nudge comes at least ${CLASS_LIMITS.nudgeGapMinutes} minutes after the evening time. Change the other time first.`,
  'number of children': `A class has at most ${MAX_CHILDREN} children. Make a second class for the others.`,
  'book title': `A workbook title has 1 to ${BOOK_LIMITS.titleLength} characters.`,
  page: `Pages are from 1 to ${BOOK_LIMITS.page}.`,
  'page order': 'The first page comes before the last page.',
  'pages a day': `Pages a day are from 1 to ${BOOK_LIMITS.pagesADay}.`,
  pages: 'That many pages in one evening cannot be stored. Tap a smaller number.',
  'week plan': 'The plan needs at least one part. Add one first.',
};

const NOT_FOUND: Readonly<Record<string, string>> = {
  slip: 'This join link is not valid. It may have been replaced by a newer one. Please ask the teacher for a new link.',
  'teacher invitation':
    'This invitation is not valid any more. Please ask the person who runs this bot for a new one.',
  evening: 'This drill belongs to another family. Nothing was changed.',
  break: 'That break is gone already.',
  'draft plan': 'There are no changes to use.',
};

/** The one place where an error of ours becomes words for a person. */
export function errorText(error: AppError): string {
  switch (error.code) {
    case 'invalid':
      return INVALID[error.what] ?? 'That value cannot be used.';
    case 'not_found':
      return NOT_FOUND[error.what] ?? 'That is not here any more, or it is not yours to change.';
    case 'conflict':
      return error.what === 'helper'
        ? 'You have joined this child already. Send /today for today’s drill.'
        : 'That is there already.';
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

/** For a button that is not ours or from another release. */
export const STALE_BUTTON =
  'That button is from an older message. Send /today or /class for a fresh one.';
