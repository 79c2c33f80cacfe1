import * as fewer from '../../../bot/texts/fewer.ts';
import * as pace from '../../../bot/texts/pace.ts';
import * as paceButtons from '../../../bot/texts/pace-buttons.ts';
import type { Text } from '../../../bot/texts/words.ts';
import { type ChildPace, type ChildStand, storedDay } from '../../../db/index.ts';
import { type FamilyPace, type PaceStand, START_PACE } from '../../../drills/index.ts';
import { family } from '../support/kingfisher.ts';

/** The modules whose texts are here. */
export const PACE_MODULES: Readonly<Record<string, unknown>>[] = [fewer, pace, paceButtons];

/** A nickname with letters from right to left. */
const NICKNAME = '👩‍🚀 שרה';
const today = storedDay('2026-09-18');
const monday = storedDay('2026-09-21');
const of = (nickname: string, change: Partial<FamilyPace> = {}): ChildPace => ({
  child: family(nickname),
  pace: { ...START_PACE, ...change },
  today,
});
const several: readonly ChildPace[] = [
  of(NICKNAME, { pausedUntil: monday }),
  of('Otter', { rate: 'three' }),
  of('Robin', { rate: 'one' }),
  of('Wren', { days: [1, 3] }),
  of('Tansy'),
  of('Clover'),
  of('Saffron'),
];
const STANDS: readonly PaceStand[] = [
  { kind: 'paused', until: monday },
  { kind: 'announced', rate: 'three', from: monday },
  { kind: 'announced', rate: 'one', from: monday },
  { kind: 'fewer', rate: 'three', from: today },
  { kind: 'fewer', rate: 'one', from: today },
  { kind: 'kept' },
  { kind: 'days', days: [1, 3] },
];
const stands: readonly ChildStand[] = STANDS.map((stand, at) => ({
  id: String(at),
  number: at + 1,
  nickname: NICKNAME,
  stand,
}));
const slower = stands.map(({ id: childId, ...rest }) => ({ childId, ...rest }));
const range = { first: storedDay('2026-09-19'), last: storedDay('2027-01-16') };
const page = (shown: readonly ChildStand[], pages = 1) => ({ shown, page: 0, pages });

/** What each of these functions says, by its name. */
export const paceTexts = (): Readonly<Record<string, readonly (Text | string | null)[]>> => ({
  fewerList: [page([]), page(stands.slice(0, 6)), page(stands.slice(0, 1), 2)].map((shown) =>
    fewer.fewerList('Heron class 🐦', shown),
  ),
  whoOf: [fewer.whoOf({ number: 4, nickname: NICKNAME })],
  paceWords: STANDS.map(fewer.paceWords),
  slowerLine: [[], slower.slice(0, 1), slower].map(fewer.slowerLine),
  keptLine: [null, ...STANDS].map(fewer.keptLine),
  pauseText: [several.slice(1, 2), several.slice(0, 2), several].map(pace.pauseText),
  pausedUntil: [pace.pausedUntil(monday)],
  startedAgain: [pace.startedAgain()],
  askPauseDay: [pace.askPauseDay()],
  badPauseDay: [
    ...(['shape', 'date', 'slash'] as const).map((problem) =>
      pace.badPauseDay({ problem, value: NICKNAME }, range),
    ),
    ...(['weekday', 'past', 'far'] as const).map((problem) =>
      pace.badPauseDay({ problem, day: today }, range),
    ),
  ],
  drillDaysText: [several.slice(0, 4), several].map(pace.drillDaysText),
  lastDrillDay: [pace.lastDrillDay()],
  everyDayAgain: [pace.everyDayAgain()],
  fewerLine: (['three', 'one'] as const).map(pace.fewerLine),
  pausedToday: [pace.pausedToday(NICKNAME, monday)],
  untilButton: [paceButtons.untilButton(monday)],
  keepButton: [true, false].map((isKept) => paceButtons.keepButton('4. Robin', isKept)),
});
