import {
  GREETING_LIMITS,
  type Greeting,
  type GreetingWords,
  type SchoolClass,
} from '../../db/index.ts';
import { addDays, NO_LAST_DAY, type SchoolDay, weekdayOf } from '../../drills/index.ts';
import type { RecordingProblem } from '../input/recording.ts';
import { quote } from './quote.ts';
import { bold, count, lines, name, shortDate, type Text } from './words.ts';

const KINDS: Readonly<Record<GreetingWords['kind'], string>> = {
  text: 'A text',
  voice: 'A voice note',
  video: 'A video',
};

const LIMITS = `a voice note or a video of up to ${GREETING_LIMITS.seconds} seconds and ${GREETING_LIMITS.megabytes} MB, or a text of up to ${GREETING_LIMITS.textLength} characters`;

/** The question for a greeting. */
export const ASK_GREETING = `Send ${LIMITS}. The families get it just as you send it. You see it first, and nothing goes out before the next evening.`;

/** What a family reads over a text of the teacher's, or under a voice note or video. */
export function greetingHeading(schoolClass: Pick<SchoolClass, 'title'>): string {
  return `${name(schoolClass.title)}: a greeting from the teacher`;
}

/** A greeting in writing, as a family gets it. */
export function greetingMessage(schoolClass: Pick<SchoolClass, 'title'>, body: string): Text {
  return lines(bold(greetingHeading(schoolClass)), ...body.split('\n').map(name));
}

/** A class without a greeting. */
export function noGreeting(schoolClass: SchoolClass): Text {
  return lines(
    bold(`${name(schoolClass.title)}: no greeting`),
    'A voice note, a short video or a text of yours can go out to every family, just before its evening.',
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
    bold(`${name(schoolClass.title)}: greeting`),
    `${KINDS[greeting.words.kind]}, just before ${greeting.evenings === 'first' ? 'each family’s first evening of a week' : 'every evening'}.`,
    isOver
      ? 'Its week is over: it goes out no more. Choose another week to send it again.'
      : days(greeting),
    isOurs
      ? null
      : bold(
          'It was recorded for another account of this bot and is not sent. Please send it again.',
        ),
    'It comes once to a family, also where two children are in the class.',
  );
}

function days({ first, last }: Greeting): string {
  if (last === NO_LAST_DAY) return `From ${shortDate(first)} on, until you remove it.`;
  return first === last
    ? `On ${shortDate(first)} only.`
    : `From ${shortDate(first)} to ${shortDate(last)}, then it ends by itself.`;
}

/** A week's button: `Week of Mon 14 Sept`. */
export function weekLabel(day: SchoolDay): string {
  return `Week of ${shortDate(addDays(day, 1 - weekdayOf(day)))}`;
}

/** Over the greeting's screen once it was removed. */
export function greetingRemoved(): string {
  return 'Removed. It goes out no more.';
}

/** Asks what a recording is for that nobody asked for. */
export function askToUse(kind: 'voice' | 'video', classes: readonly SchoolClass[]): Text {
  const what = { voice: 'voice note', video: 'video' }[kind];
  const [only] = classes;
  return lines(
    classes.length === 1 && only
      ? `Use this ${what} as the greeting of ${name(only.title)}?`
      : `Use this ${what} as a class’s greeting? Choose the class.`,
  );
}

/** After "No". */
export function notUsed(): Text {
  return lines('Not used. Nothing was changed.');
}

/** After a recording was taken as a class's greeting; how it stands follows. */
export function used(schoolClass: SchoolClass): Text {
  return lines(
    `Used as the greeting of ${name(schoolClass.title)}. The families get it like this:`,
  );
}

/** A recording that waits no more. */
export const RECORDING_GONE =
  'That recording is not waiting any more. Open Greeting to see what is in use, or send it again.';

/** A recording that cannot be a greeting. */
export function badRecording(problem: RecordingProblem): Text {
  const because = {
    form: () => 'I can pass on voice notes and ordinary videos, not round videos or music files.',
    seconds: (value: number) =>
      `That is ${count(value, 'second', 'seconds')} long; a greeting has at most ${GREETING_LIMITS.seconds}.`,
    megabytes: (value: number) =>
      `That is about ${value} MB; a greeting has at most ${GREETING_LIMITS.megabytes}, since families pay for their data.`,
  }[problem.kind]('value' in problem ? problem.value : 0);
  return lines(because, `Please send ${LIMITS}.`);
}

/** A text that cannot be a greeting: with nothing to see in it, or too long. */
export function badGreetingText(text: string, length: number): Text {
  const most = GREETING_LIMITS.textLength;
  return lines(
    length > most
      ? `${quote(text, 30)} has ${length} characters; a greeting has 1 to ${most}. Please send a shorter one.`
      : `I could not see any words in that. Please send ${LIMITS}.`,
  );
}

/** The chat service would not send a recording on to its own teacher. */
export function notPassedOn(): Text {
  return lines('The chat service does not let me pass this on. Please record and send it again.');
}

/** To a class's teachers, when their greeting was recorded for another account of the bot. */
export function greetingNotSent(schoolClass: Pick<SchoolClass, 'title'>): Text {
  return lines(
    bold(`${name(schoolClass.title)}: your greeting was not sent`),
    'It was recorded for another account of this bot, and I cannot pass it on. The evenings went out as usual.',
    'Please send it once more: /class, then Greeting.',
  );
}
