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
import { LONGEST_PAUSE_DAYS, TERM_WEEKS } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { BUTTONS } from './buttons.ts';
import { codesPaused } from './limits.ts';

/** What is said of each thing that an error of one code can be about. */
type Replies = Readonly<Record<string, () => string>>;

/** The reply to each setting that can be out of range: what is allowed and what to do. */
const INVALID: Replies = {
  title: () => say('errors-invalid-title', { most: CLASS_LIMITS.titleLength }),
  zone: () => say('errors-invalid-zone'),
  weekdays: () => say('errors-invalid-weekdays'),
  'evening time': () =>
    say('errors-invalid-evening-time', {
      from: CLASS_LIMITS.eveningFrom,
      to: CLASS_LIMITS.eveningTo,
    }),
  'nudge time': () => say('errors-invalid-nudge-time', { latest: CLASS_LIMITS.nudgeTo }),
  'nudge too early': () =>
    say('errors-invalid-nudge-too-early', { minutes: CLASS_LIMITS.nudgeGapMinutes }),
  'number of children': () => say('errors-invalid-number-of-children', { most: MAX_CHILDREN }),
  'break title': () => say('errors-invalid-break-title', { most: CLASS_LIMITS.titleLength }),
  'number of breaks': () => say('errors-invalid-number-of-breaks', { most: MOST_BREAKS_AT_ONCE }),
  country: () => say('errors-invalid-country'),
  'break order': () => say('errors-invalid-break-order'),
  'book title': () => say('errors-invalid-book-title', { most: BOOK_LIMITS.titleLength }),
  page: () => say('errors-invalid-page', { most: BOOK_LIMITS.page }),
  'page order': () => say('errors-invalid-page-order'),
  'pages a day': () => say('errors-invalid-pages-a-day', { most: BOOK_LIMITS.pagesADay }),
  'number of books': () => say('errors-invalid-number-of-books', { most: BOOK_LIMITS.inLine }),
  'page of the book': () => say('errors-invalid-page-of-the-book'),
  pages: () => say('errors-invalid-pages'),
  way: () => say('errors-invalid-way'),
  curriculum: () => say('errors-invalid-curriculum'),
  grade: () => say('errors-invalid-grade'),
  'greeting text': () => say('errors-invalid-greeting-text', { most: GREETING_LIMITS.textLength }),
  'greeting days': () => say('errors-invalid-greeting-days'),
  'term weeks': () =>
    say('errors-invalid-term-weeks', { least: TERM_WEEKS.min, most: TERM_WEEKS.max }),
  'only week': () => say('errors-invalid-only-week'),
  'week plan': () => say('errors-invalid-week-plan'),
  language: () => say('errors-invalid-language'),
  pause: () => say('errors-invalid-pause', { most: LONGEST_PAUSE_DAYS }),
  'drill days': () => say('errors-invalid-drill-days'),
  switch: () => say('errors-invalid-switch'),
  relation: () => say('errors-invalid-relation'),
  'sibling age': () => say('errors-invalid-sibling-age'),
};

const NOT_FOUND: Replies = {
  message: () => say('errors-not_found-message'),
  slip: () => say('errors-not_found-slip'),
  'teacher invitation': () => say('errors-not_found-teacher-invitation'),
  'co-teacher': () => say('errors-not_found-co-teacher'),
  evening: () => say('errors-not_found-evening'),
  break: () => say('errors-not_found-break'),
  book: () => say('errors-not_found-book'),
  column: () => say('errors-not_found-column'),
  erasure: () => say('errors-not_found-erasure'),
  act: () => say('errors-not_found-act'),
  'draft plan': () => say('errors-not_found-draft-plan'),
  term: () => say('errors-not_found-term'),
  'term week': () => say('errors-not_found-term-week'),
  account: () => say('errors-not_found-account'),
  bot: () => say('errors-not_found-bot'),
  greeting: () => say('errors-not_found-greeting', { greeting: BUTTONS.greeting }),
};

const CONFLICT: Replies = {
  'lead only': () => say('errors-conflict-lead-only'),
  'lead leaves': () => say('errors-conflict-lead-leaves'),
  'week plan': () => say('errors-conflict-week-plan'),
  undo: () => say('errors-conflict-undo'),
  'archived class': () => say('errors-conflict-archived-class'),
  'nickname in the class': () => say('errors-conflict-nickname-in-the-class'),
  'book title': () => say('errors-conflict-book-title'),
  erasure: () => say('errors-conflict-erasure', { undo: BUTTONS.undo }),
  helper: () => say('errors-conflict-helper'),
  term: () => say('errors-conflict-term'),
  'term weeks': () => say('errors-conflict-term-weeks'),
  nickname: () => say('errors-conflict-nickname'),
  share: () => say('errors-conflict-share'),
};

const EXPIRED: Replies = {
  slip: () => say('errors-expired-slip'),
  erasure: () => say('errors-expired-undo'),
  act: () => say('errors-expired-undo'),
};

/** The one place where an error of ours becomes words for a person. */
export function errorText(error: AppError): string {
  const { code, what } = error;
  switch (code) {
    case 'invalid':
      return INVALID[what]?.() ?? say('errors-invalid');
    case 'not_found':
      return NOT_FOUND[what]?.() ?? say('errors-not_found');
    case 'conflict':
      return CONFLICT[what]?.() ?? say('errors-conflict');
    case 'expired':
      return EXPIRED[what]?.() ?? say('errors-expired');
    case 'used_up':
      return say('errors-used_up');
    case 'too_many':
      return codesPaused(error instanceof CodesPaused ? error.minutes : GUESS_LIMITS.minutes);
  }
}

/** For what we did not foresee. */
export function ourFault(): string {
  return say('errors-our-fault');
}

/** For a tap that failed and is handled again by itself. Too soon for {@link ourFault}. */
export function tryingAgain(): string {
  return say('errors-trying-again');
}

/** For a button that is not ours or from another release. */
export function staleButton(): string {
  return say('errors-stale-button');
}
