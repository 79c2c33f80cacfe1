import {
  answerOf,
  type DrillPart,
  type FactId,
  faceOf,
  type Language,
} from '../../drills/index.ts';
import { clockAid, clockAidSheet, loneCard, type Painter, restFrame } from '../media/index.ts';
import { solved } from '../texts/cards.ts';
import { clockAidRules, clockAidTitle, clockAidWords } from '../texts/clock-aid.ts';
import { stoppedTitle } from '../texts/stop-today.ts';
import { pictureOf } from './pictures.ts';
import type { Picture } from './screen.ts';

/** A clock, an explained clock and a written card alone on their pictures: small files, since there is one for each card. */
const CLOCK_PIXELS = 360;
const AID_PIXELS = 432;
const CARD_PIXELS = 480;
const REST_PIXELS = 240;

/** One card alone, in the class's language. */
export function cardPicture(painter: Painter, fact: FactId, language: Language): Picture {
  const face = faceOf(fact, language);
  return pictureOf(painter, loneCard(face), face.kind === 'clock' ? CLOCK_PIXELS : CARD_PIXELS);
}

/** A card with its answer, as large. A clock stays as it is: its answer is words. */
export function answerPicture(painter: Painter, fact: FactId, language: Language): Picture {
  const face = faceOf(fact, language);
  if (face.kind === 'clock') return cardPicture(painter, fact, language);
  const text = solved(face.text, answerOf(fact, language));
  return pictureOf(painter, loneCard({ kind: 'text', text }), CARD_PIXELS);
}

/** How one clock is read, in the reader's language, and its time in the class's. */
export function aidPicture(
  painter: Painter,
  { hour, minute }: { readonly hour: number; readonly minute: number },
  language: Language,
): Picture {
  const words = clockAidWords({ hour, minute }, language);
  return pictureOf(painter, clockAid({ hour, minute, ...words }), AID_PIXELS);
}

/** All clocks of a part with their answers and how they are read; null for a part without clocks. */
export function aidSheet(painter: Painter, part: DrillPart, language: Language): Picture | null {
  if (part.kind !== 'facts') return null;
  const clocks = part.cards.flatMap((fact, card) => {
    const face = faceOf(fact, language);
    if (face.kind !== 'clock') return [];
    return [{ number: card + 1, ...face, ...clockAidWords(face, language) }];
  });
  if (clocks.length === 0) return null;
  const drawing = clockAidSheet({ title: clockAidTitle(), rules: clockAidRules(), clocks });
  return pictureOf(painter, drawing);
}

/** Takes the cards' place on a message once the family has stopped for the day. */
export function restPicture(painter: Painter): Picture {
  return pictureOf(painter, restFrame(stoppedTitle()), REST_PIXELS);
}
