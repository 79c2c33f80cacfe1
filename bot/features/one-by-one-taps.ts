import { backOneCard, judgeCard, showAnswer } from '../../db/index.ts';
import { act } from './evening-taps.ts';
import type { TapHandlers } from './tap.ts';

/** One card at a time: its answer, whether it was right, and the card before it. */
export const oneByOneTaps: TapHandlers<'showAnswer' | 'cardRight' | 'cardNotYet' | 'cardBack'> = {
  showAnswer: (tap, { evening, part, card }) =>
    act(tap, evening, (scope, now) => showAnswer(tap.deps.store, scope, { part, card, now })),
  cardRight: (tap, { evening, part, card }) =>
    act(tap, evening, (scope, now) =>
      judgeCard(tap.deps.store, scope, { part, card, right: true, now }),
    ),
  cardNotYet: (tap, { evening, part, card }) =>
    act(tap, evening, (scope, now) =>
      judgeCard(tap.deps.store, scope, { part, card, right: false, now }),
    ),
  cardBack: (tap, { evening, part, card }) =>
    act(tap, evening, (scope, now) => backOneCard(tap.deps.store, scope, { part, card, now })),
};
