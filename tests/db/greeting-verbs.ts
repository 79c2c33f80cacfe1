import {
  changeGreeting,
  type GreetingWords,
  getAdjustment,
  getGreeting,
  removeGreeting,
  type Store,
  setAdjustment,
  setGreeting,
  type TeacherScope,
} from '../../db/index.ts';
import { MONDAY, MORNING, TUESDAY } from '../support/term.ts';

/** What a verb about greetings may be pointed at. */
export interface GreetingThings {
  readonly greetingId: string;
}

type Verb = (store: Store, scope: TeacherScope, things: GreetingThings) => Promise<unknown>;

const now = MORNING;
const TIMES = { evenings: 'first', first: MONDAY, last: TUESDAY } as const;

/** A class's greeting that verbs can be pointed at. */
export async function greetingThings(store: Store, scope: TeacherScope): Promise<GreetingThings> {
  const words: GreetingWords = { kind: 'text', body: 'A good week.', botId: null };
  const { id: greetingId } = await setGreeting(store, scope, { words, times: TIMES, now });
  return { greetingId };
}

/** A call of every verb about greetings, and about what is for one child only, that takes a TeacherScope. */
export const GREETING_VERBS: Readonly<Record<string, Verb>> = {
  changeGreeting: (store, scope, { greetingId }) =>
    changeGreeting(store, scope, { greetingId, change: { evenings: 'every' } }),
  getAdjustment: (store, scope) => getAdjustment(store, scope, 1),
  getGreeting: (store, scope) => getGreeting(store, scope),
  removeGreeting: (store, scope, { greetingId }) =>
    removeGreeting(store, scope, { greetingId, now }),
  setAdjustment: (store, scope) =>
    setAdjustment(store, scope, { number: 1, change: { fewer: true }, now }),
  setGreeting: (store, scope) =>
    setGreeting(store, scope, {
      words: { kind: 'voice', body: 'a-file', botId: 1 },
      times: TIMES,
      now,
    }),
};
