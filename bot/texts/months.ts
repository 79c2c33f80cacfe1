import type { Practised } from '../../db/index.ts';
import type { ChildReport, MonthReport, SchoolDay } from '../../drills/index.ts';
import { localeOf, readerLanguage, say } from '../language/index.ts';
import { rungTitle, strandName } from './part-title.ts';
import { bold, lines, listOf, name, type Text } from './words.ts';

/** Steps that one line names; more would be no line any more. */
const MOST_STEPS = 4;
/** What fits on a phone at a glance. */
const MOST_LINES = 9;

/** How many evenings were practised: a count that grows, and that no evening left out takes anything from. */
export function practisedLine({ evenings, since }: Practised): string {
  return since === null
    ? say('months-practised', { count: evenings })
    : say('months-practised-term', { count: evenings });
}

/** The end of an evening with that count below it, where the screen has room for one more line. */
export function withPractised(text: Text, practised: Practised | undefined): Text {
  const isFull = text.text.split('\n').length >= MOST_LINES;
  return practised && !isFull ? lines(text, practisedLine(practised)) : text;
}

/** A child's month, above the picture of its own progress or in its place. Nothing is said of what did not come about. */
export function monthMessage(
  nickname: string,
  first: SchoolDay,
  { practised, secure }: MonthReport,
): Text {
  const steps = secure.slice(0, MOST_STEPS).map(rungTitle);
  return lines(
    bold(say('months-title', { name: name(nickname), month: monthName(first) })),
    say('months-evenings', { count: practised }),
    steps.length > 0 ? say('months-secure', { steps: listOf(steps) }) : null,
    say('months-own'),
  );
}

/** What the picture shows, where no picture is to be seen: each strand's own score. */
export function monthInWords({ strands }: ChildReport): string {
  return strands
    .map(({ strand, right, asked }) =>
      say('months-strand', { strand: strandName(strand), right, asked }),
    )
    .join('\n');
}

/** The name of a day's month: `November`. */
function monthName(day: SchoolDay): string {
  const month = new Intl.DateTimeFormat(localeOf(readerLanguage()), {
    month: 'long',
    timeZone: 'UTC',
  });
  return month.format(new Date(`${day}T00:00:00Z`));
}
