/**
 * How long marks are kept, in days from their evening: 13 months. That is a school year with its holidays and a month to look
 * back on it, wherever in the world the year begins. Afterwards the scores of the parts and the memory of the facts are left.
 */
export const MARKS_DAYS = 396;
/** How long a child's rows are kept once it has left the class or the class has ended, in days. */
export const LEFT_DAYS = 30;
/** How long slips and invitations are kept once they open nothing any more, in days. */
export const CODES_DAYS = 30;
/** How long acts stay once they cannot be taken back, and questions that nobody answered, in days. */
export const NOTES_DAYS = 2;
/** How long it is known which message went out when, who left, and what was erased, in days. */
export const RECORD_DAYS = MARKS_DAYS;
