import type { DrillPart, FactPart, Language } from '../../drills/index.ts';
import { faceOf } from '../../drills/index.ts';
import { type ClipInput, type Clips, clipHash } from '../clip/index.ts';
import { readIn } from '../language/index.ts';
import { cardFrame, endFrame, readyFrame } from '../media/index.ts';
import { shortPartTitle } from '../texts/part-title.ts';
import type { Clip } from './screen.ts';

/** How long the frames around the cards stay, in seconds: time to look up, and time to put the phone down. */
const READY_SECONDS = 4;
const END_SECONDS = 2;

/**
 * A part's cards as a clip: a ready frame, each card at the part's pace, an end frame. No answer is in it, and nobody's name. It is
 * silent: a tick hurries some children. All of it is in the class's `language`: a class shares its clips.
 *
 * @example
 * clipOf(part, 'en').frames.length; // => 12 for a part of ten cards
 */
export function clipOf(part: FactPart, language: Language): ClipInput {
  return readIn(language, () => drawnClip(part, language));
}

function drawnClip(part: FactPart, language: Language): ClipInput {
  const { cards, seconds } = part;
  const ready = readyFrame({ title: shortPartTitle(part), cards: cards.length, seconds });
  return {
    sound: 'none-but-silent',
    frames: [
      { picture: ready, seconds: READY_SECONDS },
      ...cards.map((fact, index) => ({
        picture: cardFrame({ face: faceOf(fact, language), position: index + 1, of: cards.length }),
        seconds,
      })),
      { picture: endFrame(), seconds: END_SECONDS },
    ],
  };
}

/** The clip of a part; none for a counting run, which stays on its number square, and none where nobody makes clips. */
export function partClip(
  clips: Clips | undefined,
  part: DrillPart,
  language: Language,
): Clip | undefined {
  if (clips === undefined || part.kind !== 'facts') return undefined;
  const input = clipOf(part, language);
  const seconds = input.frames.reduce((total, frame) => total + frame.seconds, 0);
  return { hash: clipHash(input), seconds, make: () => clips.soon(input) };
}
