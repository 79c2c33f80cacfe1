import { createHash } from 'node:crypto';
import type { EveningView } from '../../db/index.ts';
import {
  answerOf,
  type DrillPart,
  faceOf,
  type Language,
  rungById,
  runNumbers,
} from '../../drills/index.ts';
import { readIn } from '../language/index.ts';
import {
  cardSheet,
  type Drawing,
  drawable,
  type Painter,
  readyFrame,
  resultCard,
  runSheet,
} from '../media/index.ts';
import { comparison, ownEveningsOnly } from '../texts/evening.ts';
import { shortPartTitle } from '../texts/part-title.ts';
import { dayName } from '../texts/words.ts';
import type { Picture } from './screen.ts';

/** Wide enough for a phone at twice its density, small enough for a phone plan. */
const PIXELS = 720;
/** Less sharp, so that five clips and the result together stay under 250 kB; type is large enough for it. */
const RESULT_PIXELS = 504;
const TITLE_PIXELS = 240;
/** Cards to say again at breakfast. */
const SAY_AGAIN = 3;

/** A drawing as a picture: named by content, painted on demand. */
export function pictureOf(painter: Painter, drawing: Drawing, pixels = PIXELS): Picture {
  return {
    hash: createHash('sha256').update(`${pixels} ${drawing.svg}`).digest('hex'),
    paint: () => painter.paint(drawing, pixels),
  };
}

/** A part's cards on one sheet, or a run's number square, in the class's language. No answers on it. */
export function partPicture(painter: Painter, part: DrillPart, language: Language): Picture {
  return pictureOf(
    painter,
    readIn(language, () => partDrawing(part, language)),
  );
}

function partDrawing(part: DrillPart, language: Language): Drawing {
  const title = shortPartTitle(part);
  if (part.kind === 'facts') {
    const faces = part.cards.map((fact) => faceOf(fact, language));
    return cardSheet({ title, faces });
  }
  const rung = rungById(part.rung);
  const numbers = runNumbers(part);
  const limit = rung?.kind === 'run' ? rung.limit : Math.max(...numbers);
  return runSheet({ title, numbers, limit });
}

/** A part's title, and how many cards or where the count starts: a few kilobytes. Untimed, it names no pace. */
export function titlePicture(painter: Painter, part: DrillPart, untimed = false): Picture {
  const title = shortPartTitle(part);
  const drawing =
    part.kind === 'run'
      ? cardSheet({ title, faces: [{ kind: 'text', text: String(part.start) }] })
      : readyFrame({
          title,
          cards: part.cards.length,
          seconds: untimed ? undefined : part.seconds,
        });
  return pictureOf(painter, drawing, TITLE_PIXELS);
}

/** The end of an evening on one card. */
export function resultPicture(painter: Painter, view: EveningView): Picture {
  const marked = view.drill.parts.flatMap((part, index) => {
    const scored = view.results[index];
    return scored ? [{ part, scored }] : [];
  });
  const missed = marked.flatMap(({ part, scored }) =>
    part.kind === 'facts' ? part.cards.filter((_, card) => scored.missed.includes(card)) : [],
  );
  const child = drawable(view.nickname, '');
  return pictureOf(
    painter,
    resultCard({
      title: child === '' ? dayName(view.day) : `${child} · ${dayName(view.day)}`,
      lines: marked.map(({ part, scored }) => ({
        label: shortPartTitle(part),
        right: scored.right,
        asked: scored.asked,
        note: comparison(scored),
      })),
      sayAgain: [...new Set(missed)].slice(0, SAY_AGAIN).map((fact) => ({
        face: faceOf(fact, view.language),
        answer: answerOf(fact, view.language),
      })),
      footer: ownEveningsOnly(),
    }),
    RESULT_PIXELS,
  );
}
