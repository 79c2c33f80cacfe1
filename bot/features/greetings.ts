import {
  type GreetingWords,
  getClass,
  getGreeting,
  readClassBot,
  type SchoolClass,
  setGreeting,
  type TeacherScope,
} from '../../db/index.ts';
import { greetingChoices, usualDays } from '../../drills/index.ts';
import { apiProblem } from '../chat/api-error.ts';
import { postGreeting } from '../chat/post-greeting.ts';
import { sendScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import type { Recording } from '../input/recording.ts';
import { type GreetingView, greetingScreen } from '../screens/greeting-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { notPassedOn } from '../texts/greeting.ts';
import { nextEvening } from './next-evening.ts';

/** A class's greeting as it stands now. `last` is what was done last and how to take it back. */
export async function readGreetingScreen(
  deps: BotDeps,
  scope: TeacherScope,
  last: Pick<GreetingView, 'actId' | 'news'> = {},
): Promise<Screen> {
  const { store, clock } = deps;
  const schoolClass = await getClass(store, scope);
  // Whose files the class's families can be sent, whichever bot the teacher writes with.
  const { botId } = await readClassBot(store, scope.classId);
  const greeting = await getGreeting(store, scope);
  const { next, calendar } = await nextEvening(store, schoolClass, clock.now());
  const choices = greetingChoices(next, calendar);
  return greetingScreen({ schoolClass, greeting, choices, botId, ...last });
}

/** Puts a teacher's words in use as the greeting of the coming week. Returns the act that takes it back, if one was replaced. */
export async function useAsGreeting(
  deps: BotDeps,
  scope: TeacherScope,
  words: GreetingWords,
): Promise<string | null> {
  const { store, clock } = deps;
  const now = clock.now();
  const schoolClass = await getClass(store, scope);
  const { next, calendar } = await nextEvening(store, schoolClass, now);
  const times = { evenings: 'first' as const, ...usualDays(next, calendar) };
  const { actId } = await setGreeting(store, scope, { words, times, now });
  return actId;
}

/** A recording as the words of a greeting: only this bot can send its file on. */
export function wordsOf({ botId }: BotDeps, { kind, fileId }: Omit<Recording, 'messageId'>) {
  return { kind, body: fileId, botId } satisfies GreetingWords;
}

/** Sends the greeting to its teacher just as a family will get it, and under it how it stands. */
export async function sendGreetingHome(
  deps: BotDeps,
  userId: number,
  scope: TeacherScope,
  actId: string | null = null,
): Promise<void> {
  const greeting = await getGreeting(deps.store, scope);
  if (greeting)
    await previewGreeting(deps, userId, greeting.words, await getClass(deps.store, scope));
  await sendScreen(deps, userId, await readGreetingScreen(deps, scope, { actId }));
}

/** A file that the service does not send on is said so; a preview whose answer was lost may have arrived and is let be. */
export async function previewGreeting(
  deps: BotDeps,
  userId: number,
  words: GreetingWords,
  schoolClass: SchoolClass,
): Promise<void> {
  try {
    await postGreeting(deps, userId, words, schoolClass);
  } catch (error) {
    const { kind } = apiProblem(error);
    deps.log.warn({ classId: schoolClass.id, problem: kind }, 'greeting_not_shown');
    if (kind === 'unknown') return;
    if (kind !== 'rejected' && kind !== 'bad_file') throw error;
    await sendScreen(deps, userId, { text: notPassedOn(), buttons: [] });
  }
}
