import { GREETING_LIMITS, type Greeting, type SchoolClass } from '../../db/index.ts';
import { addDays, NO_LAST_DAY, type SchoolDay, weekdayOf } from '../../drills/index.ts';
import type { RecordingProblem } from '../input/recording.ts';
import { say } from '../language/index.ts';
import { BUTTONS } from './buttons.ts';
import { quote } from './quote.ts';
import { bold, lines, name, shortDate, type Text } from './words.ts';

const { seconds, megabytes, textLength } = GREETING_LIMITS;
const MOST = { seconds, megabytes, characters: textLength } as const;

/** The question for a greeting. */
export function greetingQuestion(): string {
  return say('greeting-ask', MOST);
}

/** What a family reads over a text of the teacher's, or under a voice note or video. */
export function greetingHeading(schoolClass: Pick<SchoolClass, 'title'>): string {
  return say('greeting-heading', { class: name(schoolClass.title) });
}

/** A greeting in writing, as a family gets it. */
export function greetingMessage(schoolClass: Pick<SchoolClass, 'title'>, body: string): Text {
  return lines(bold(greetingHeading(schoolClass)), ...body.split('\n').map(name));
}

/** A class without a greeting. */
export function noGreeting(schoolClass: SchoolClass): Text {
  return lines(
    bold(say('greeting-none', { class: name(schoolClass.title) })),
    say('greeting-none-note'),
  );
}

/** How a greeting stands. `isOver` says that its last day has passed, `isOurs` that this bot can send it on. */
export interface GreetingState {
  readonly isOver: boolean;
  readonly isOurs: boolean;
}

/** A class's greeting and when it goes out. */
export function greetingHome(
  schoolClass: SchoolClass,
  greeting: Greeting,
  { isOver, isOurs }: GreetingState,
): Text {
  return lines(
    bold(say('greeting-title', { class: name(schoolClass.title) })),
    say(`greeting-${greeting.words.kind}-${greeting.evenings}`),
    isOver ? say('greeting-over') : days(greeting),
    isOurs ? null : bold(say('greeting-other-bot')),
    say('greeting-once'),
  );
}

function days({ first, last }: Greeting): string {
  if (last === NO_LAST_DAY) return say('greeting-from', { first: shortDate(first) });
  return first === last
    ? say('greeting-on', { day: shortDate(first) })
    : say('greeting-days', { first: shortDate(first), last: shortDate(last) });
}

/** A week's button: `Week of Mon 14 Sept`. */
export function weekLabel(day: SchoolDay): string {
  return say('greeting-week', { monday: shortDate(addDays(day, 1 - weekdayOf(day))) });
}

/** Over the greeting's screen once it was removed. */
export function greetingRemoved(): string {
  return say('greeting-removed');
}

/** Asks what a recording is for that nobody asked for. */
export function askToUse(kind: 'voice' | 'video', classes: readonly SchoolClass[]): Text {
  const [only] = classes;
  return lines(
    classes.length === 1 && only
      ? say(`greeting-use-${kind}`, { class: name(only.title) })
      : say(`greeting-use-${kind}-which`),
  );
}

/** After "No". */
export function notUsed(): Text {
  return lines(say('greeting-not-used'));
}

/** After a recording was taken as a class's greeting; how it stands follows. */
export function used(schoolClass: SchoolClass): Text {
  return lines(say('greeting-used', { class: name(schoolClass.title) }));
}

/** A recording that waits no more. */
export function recordingGone(): string {
  return say('greeting-gone', { button: BUTTONS.greeting });
}

/** A recording that cannot be a greeting. */
export function badRecording(problem: RecordingProblem): Text {
  return lines(whyBad(problem), say('greeting-please-send', MOST));
}

function whyBad(problem: RecordingProblem): string {
  switch (problem.kind) {
    case 'form':
      return say('greeting-bad-form');
    case 'seconds':
      return say('greeting-bad-seconds', { seconds: problem.value, most: seconds });
    case 'megabytes':
      return say('greeting-bad-megabytes', { megabytes: problem.value, most: megabytes });
  }
}

/** A text that cannot be a greeting: with nothing to see in it, or too long. */
export function badGreetingText(text: string, length: number): Text {
  return lines(
    length > textLength
      ? say('greeting-long', { typed: quote(text, 30), length, most: textLength })
      : say('greeting-empty', { send: say('greeting-please-send', MOST) }),
  );
}

/** The chat service would not send a recording on to its own teacher. */
export function notPassedOn(): Text {
  return lines(say('greeting-not-passed'));
}

/** To a class's teachers, when their greeting was recorded for another account of the bot. */
export function greetingNotSent(schoolClass: Pick<SchoolClass, 'title'>): Text {
  return lines(
    bold(say('greeting-not-sent', { class: name(schoolClass.title) })),
    say('greeting-not-sent-why'),
    say('greeting-not-sent-again', { button: BUTTONS.greeting }),
  );
}
