import * as aids from '../../../bot/texts/clock-aid.ts';
import * as cards from '../../../bot/texts/one-by-one.ts';
import * as stops from '../../../bot/texts/stop-today.ts';
import * as turns from '../../../bot/texts/turns.ts';
import type { Text } from '../../../bot/texts/words.ts';
import { bonds, clocks, finished, scored, view } from '../support/evening.ts';

/** The files of an evening's own screens: one card at a time, clocks explained, stopping, and whose turn it is. */
export const TURNS_MODULES: Readonly<Record<string, unknown>>[] = [aids, cards, stops, turns];

const TIMES = [
  [3, 0],
  [3, 30],
  [12, 40],
].map(([hour = 12, minute = 0]) => ({ hour, minute }));

/** What each function of those files says, by the function's name. */
export function turnsTexts(
  nickname: string,
): Readonly<Record<string, readonly (Text | string | null)[]>> {
  const drill = { version: 1, parts: [bonds, clocks] } as const;
  const begun = view({ nickname, drill, started: true, results: [scored(bonds), null] });
  return {
    oneCard: [view({ nickname }), begun].flatMap((each) =>
      [0, 1].flatMap((part) =>
        [false, true].flatMap((shown) =>
          [0, 1, 9].map((card) => cards.oneCard(each, part, { card, shown })),
        ),
      ),
    ),
    clockAidTitle: [aids.clockAidTitle()],
    clockAidRules: aids.clockAidRules(),
    clockAidWords: TIMES.flatMap((time) => {
      const { short, long, left, phrase, figures } = aids.clockAidWords(time, 'en');
      return [short.hand, short.says, long.hand, long.says, left, phrase, figures];
    }),
    timeInFigures: [aids.timeInFigures('clock:0330'), aids.timeInFigures('add:3+4')],
    stoppedTitle: [stops.stoppedTitle()],
    stopped: [view({ nickname }), begun, finished({ nickname })].map(stops.stopped),
    nextChildButton: [turns.nextChildButton(nickname)],
    turnAfter: [turns.turnAfter(nickname, 'Otter')],
    turnAnswer: (['waiting', 'under_way', 'over'] as const).map((state) =>
      turns.turnAnswer(nickname, state),
    ),
    about: [turns.about(nickname, nickname)],
  };
}
