import type { EveningView } from '../../db/index.ts';
import { answerOf, type FactId, questionOf } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { solved } from './cards.ts';
import { timeInFigures } from './clock-aid.ts';
import { heading, partResultLine } from './evening.ts';
import { withMeaning } from './gloss.ts';
import { partTitle } from './part-title.ts';
import { bold, lines, type Text } from './words.ts';

/** The buttons under a card that stands alone. */
export const CARD_BUTTONS = {
  get show() {
    return say('one-by-one-show');
  },
  get right() {
    return say('one-by-one-right');
  },
  get notYet() {
    return say('one-by-one-not-yet');
  },
  get back() {
    return say('one-by-one-back');
  },
};

/** One card of a part by itself; `shown` says whether its answer is to be seen. The first one tells what to do. */
export function oneCard(
  view: EveningView,
  index: number,
  { card, shown }: { readonly card: number; readonly shown: boolean },
): Text {
  const { parts } = view.drill;
  const part = parts[index];
  const fact = part?.kind === 'facts' ? part.cards[card] : undefined;
  if (part?.kind !== 'facts' || !fact) return heading(view);
  const isFirst = card === 0 && !shown;
  const place = say('one-by-one-place', {
    part: index + 1,
    parts: parts.length,
    title: partTitle(part),
    card: card + 1,
    cards: part.cards.length,
  });
  return lines(
    heading(view),
    isFirst && index > 0 ? partResultLine(view, index - 1) : null,
    place,
    isFirst ? say('one-by-one-hint', { show: CARD_BUTTONS.show }) : null,
    '',
    bold(shown ? answered(fact, view) : asked(fact, view)),
  );
}

/** A card as a question, in the class's language; a clock says nothing by itself. */
function asked(fact: FactId, { language }: EveningView): string {
  return fact.startsWith('clock:')
    ? say('one-by-one-clock')
    : withMeaning(questionOf(fact, language), fact, language);
}

function answered(fact: FactId, { language }: EveningView): string {
  const answer = answerOf(fact, language);
  const figures = timeInFigures(fact);
  return figures === null
    ? solved(questionOf(fact, language), answer)
    : say('one-by-one-time', { phrase: withMeaning(answer, fact, language), figures });
}
