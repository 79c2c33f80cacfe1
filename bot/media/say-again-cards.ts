import type { CardFace } from '../../drills/facts/card-face.ts';
import { clockFace } from './clock-face.ts';
import { MARGIN, PHONE_WIDTH } from './drawing.ts';
import { faceLines } from './face-line.ts';
import { type FittedFace, fitFace } from './fit-face.ts';
import { fitFaces } from './fit-faces.ts';
import type { Stretch } from './heading.ts';
import { PALETTE } from './palette.ts';
import { box, text } from './svg.ts';

/** A card to say once more, with its answer. */
export interface SayAgainCard {
  readonly face: CardFace;
  readonly answer: string;
}

const GAP = 10;
const FACE_HEIGHT = 54;
const CLOCK_HEIGHT = 108;
const ANSWER_HEIGHT = 58;
const LIMITS = { size: 26, phraseFrom: 18, wordFrom: 14, minSize: 11 };

/** A heading and one row of cards, each face over its answer; nothing at all when there are no cards. */
export function sayAgainCards(
  cards: readonly SayAgainCard[],
  heading: string,
  top: number,
): Stretch {
  if (cards.length === 0) return { svg: '', bottom: top };
  const columns = Math.max(2, cards.length);
  const width = (PHONE_WIDTH - 2 * MARGIN - (columns - 1) * GAP) / columns;
  const room = { ...LIMITS, maxWidth: width - 10 };
  const faces = fitFaces(
    cards.map(({ face }) => (face.kind === 'text' ? face.text : '')),
    { ...room, maxHeight: FACE_HEIGHT - 4 },
  );
  // Each answer has a size of its own, so that a long time of day does not shrink the plain numbers beside it.
  const answers = cards.map(({ answer }) =>
    fitFace(answer, { ...room, maxHeight: ANSWER_HEIGHT - 4 }),
  );
  const faceHeight = cards.some(({ face }) => face.kind === 'clock') ? CLOCK_HEIGHT : FACE_HEIGHT;
  const y = top + 38;
  const drawn = cards.map(({ face }, i) => {
    const x = MARGIN + i * (width + GAP);
    const upper = { x: x + width / 2, y: y + faceHeight / 2 };
    const lower = { x: x + width / 2, y: y + faceHeight + ANSWER_HEIGHT / 2 };
    return (
      box({ x, y, width, height: faceHeight + ANSWER_HEIGHT, r: 10 }, { fill: PALETTE.tint }) +
      box(
        { x: x + 1.5, y: y + 1.5, width: width - 3, height: faceHeight - 1.5, r: 9 },
        { fill: PALETTE.card },
      ) +
      (face.kind === 'clock'
        ? clockFace({
            hour: face.hour,
            minute: face.minute,
            cx: upper.x,
            cy: upper.y,
            radius: CLOCK_HEIGHT / 2 - 5.5,
          })
        : setAt(upper, faces[i])) +
      setAt(lower, answers[i])
    );
  });
  const title = text({ x: MARGIN, y: top + 22, size: 20, weight: 700 }, heading);
  return { svg: title + drawn.join(''), bottom: y + faceHeight + ANSWER_HEIGHT + 16 };
}

function setAt(at: { x: number; y: number }, face: FittedFace | undefined): string {
  return face === undefined ? '' : faceLines({ ...at, size: face.size }, face.lines);
}
