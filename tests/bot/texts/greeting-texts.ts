import * as adjusted from '../../../bot/texts/adjusted.ts';
import * as greetings from '../../../bot/texts/greeting.ts';
import * as ownWays from '../../../bot/texts/own-way.ts';
import type { Text } from '../../../bot/texts/words.ts';
import { type Greeting, type GreetingWords, storedDay } from '../../../db/index.ts';
import { type Adjustment, NO_LAST_DAY, RUNGS, type WeekPlan } from '../../../drills/index.ts';
import { kingfisher, listed } from '../support/kingfisher.ts';

/** The modules whose texts are here. */
export const GREETING_MODULES = [adjusted, greetings, ownWays] as const;

/** A nickname with letters from right to left. */
const NICKNAME = '👩‍🚀 שרה';
const HERON = { ...kingfisher, title: 'Heron class 🐦' };
const MONDAY = storedDay('2026-09-14');
const WORDS: readonly GreetingWords[] = [
  { kind: 'text', body: 'Good week', botId: null },
  { kind: 'voice', body: 'f', botId: 4 },
  { kind: 'video', body: 'f', botId: 4 },
];
const GREETINGS: readonly Greeting[] = WORDS.flatMap((words) =>
  (['first', 'every'] as const).flatMap((evenings) =>
    [MONDAY, storedDay('2026-09-20'), NO_LAST_DAY].map((last) => ({
      ...{ id: 'g', words, evenings, first: MONDAY, last, createdAt: new Date(0) },
    })),
  ),
);
const ADJUSTMENTS: readonly Adjustment[] = ([-1, 0, 1] as const).flatMap((steps) =>
  [true, false].flatMap((fewer) => [true, false].map((untimed) => ({ steps, fewer, untimed }))),
);
const PLANS: readonly (WeekPlan | null)[] = [
  null,
  ...RUNGS.map(({ id, cards, seconds }) => ({ parts: [{ rung: id, cards, seconds }] })),
];

/** What every function says that makes words about greetings and about what is for one child only. */
export const greetingTexts = (): Readonly<Record<string, readonly (Text | string | null)[]>> => ({
  adjustedLine: ADJUSTMENTS.map((each) => adjusted.adjustedLine(each, NICKNAME)),
  greetingHeading: [greetings.greetingHeading(HERON)],
  greetingMessage: [greetings.greetingMessage(HERON, 'Dear all,\n\nשלום <b>to you</b>')],
  noGreeting: [greetings.noGreeting(HERON)],
  greetingQuestion: [greetings.greetingQuestion()],
  recordingGone: [greetings.recordingGone()],
  greetingHome: GREETINGS.flatMap((greeting) =>
    [true, false].flatMap((isOver) =>
      [true, false].map((isOurs) => greetings.greetingHome(HERON, greeting, { isOver, isOurs })),
    ),
  ),
  weekLabel: [greetings.weekLabel(MONDAY)],
  greetingRemoved: [greetings.greetingRemoved()],
  askToUse: (['voice', 'video'] as const).flatMap((kind) =>
    [[HERON], [HERON, kingfisher]].map((classes) => greetings.askToUse(kind, classes)),
  ),
  notUsed: [greetings.notUsed()],
  used: [greetings.used(HERON)],
  badRecording: [
    greetings.badRecording({ kind: 'form' }),
    greetings.badRecording({ kind: 'seconds', value: 61 }),
    greetings.badRecording({ kind: 'megabytes', value: 11 }),
  ],
  badGreetingText: [
    greetings.badGreetingText('', 0),
    greetings.badGreetingText('a '.repeat(400), 800),
  ],
  notPassedOn: [greetings.notPassedOn()],
  greetingNotSent: [greetings.greetingNotSent(HERON)],
  ownWay: ADJUSTMENTS.flatMap((adjustment) =>
    PLANS.map((plan) => ownWays.ownWay({ ...listed(1, NICKNAME), adjustment }, plan)),
  ),
  ownWayLine: ADJUSTMENTS.map(ownWays.ownWayLine),
});
