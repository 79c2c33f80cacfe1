import type { EveningView } from '../../db/index.ts';
import { type FactPart, faceOf, questionOf } from '../../drills/index.ts';
import { CARD_BUTTONS, oneCard } from '../texts/one-by-one.ts';
import { STOP_BUTTONS } from '../texts/stop-today.ts';
import { aidPicture, answerPicture, cardPicture } from './card-pictures.ts';
import { hasClocks, isPicturedBefore, type Means } from './means.ts';
import { titlePicture } from './pictures.ts';
import { button, type Screen } from './screen.ts';

/** Which card stands alone, from 0, and whether its answer is to be seen. */
export interface CardAt {
  readonly card: number;
  readonly shown: boolean;
}

/**
 * One card of a part by itself, without a timer. Every button carries the card's number, so a tap that comes twice or late
 * does nothing to another card. A written card is text, a clock a picture; with bigger type each card is a picture.
 */
export function cardScreen(view: EveningView, index: number, at: CardAt, means: Means): Screen {
  const part = view.drill.parts[index];
  const fact = part?.kind === 'facts' ? part.cards[at.card] : undefined;
  const text = oneCard(view, index, at);
  if (part?.kind !== 'facts' || !fact) return { text, buttons: [] };
  const which = { evening: view.id, part: index, card: at.card };
  return {
    text,
    picture: pictureOfCard(view, { part, index, at }, means),
    words: questionOf(fact, view.language),
    buttons: [
      at.shown
        ? [
            button(CARD_BUTTONS.right, { kind: 'cardRight', ...which }),
            button(CARD_BUTTONS.notYet, { kind: 'cardNotYet', ...which }),
          ]
        : [button(CARD_BUTTONS.show, { kind: 'showAnswer', ...which })],
      ...(at.card > 0 ? [[button(CARD_BUTTONS.back, { kind: 'cardBack', ...which })]] : []),
      [button(STOP_BUTTONS.stop, { kind: 'stopToday', evening: view.id })],
    ],
  };
}

function pictureOfCard(
  view: EveningView,
  { part, index, at }: { part: FactPart; index: number; at: CardAt },
  means: Means,
): Screen['picture'] {
  const { painter, bigger = false, clockAid = false } = means;
  const fact = part.cards[at.card];
  if (!fact) return undefined;
  const face = faceOf(fact, view.language);
  if (face.kind === 'clock') {
    return clockAid && at.shown
      ? aidPicture(painter, face, view.language)
      : cardPicture(painter, fact, view.language);
  }
  if (bigger) return (at.shown ? answerPicture : cardPicture)(painter, fact, view.language);
  // A message cannot lose its picture: the part's title takes the place of clocks and sheets before it.
  const isPictured = hasClocks(part) || isPicturedBefore(view, index, means);
  return isPictured ? titlePicture(painter, part, true) : undefined;
}
