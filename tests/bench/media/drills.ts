import type { ClipInput } from '../../../bot/clip/index.ts';
import { cardFrame } from '../../../bot/media/card-frame.ts';
import { endFrame, readyFrame } from '../../../bot/media/outer-frames.ts';
import { type CardFace, createRandom, faceOf, RUNGS } from '../../../drills/index.ts';

/** The five parts of an evening as a class would start with: ten cards each, but where a rung has fewer facts. */
export const USUAL_EVENING = [
  'bonds.to10',
  'takeaway.to10',
  'doubles.to10',
  'halves.to20',
  'clock.mixed',
] as const;

/** A part of a rung: its facts in an order that the seed decides, as many as asked, over again where they run out. */
export function rungClip(rungId: string, seed: string, cards?: number): ClipInput {
  const rung = RUNGS.find(({ id }) => id === rungId);
  if (rung?.kind !== 'facts')
    throw new RangeError(`Got rung ${rungId}: the ladder has no facts of that name.`);
  const faces = createRandom(seed)
    .shuffle(rung.facts)
    .map((fact) => faceOf(fact));
  const count = cards ?? rung.cards;
  const shown = Array.from({ length: count }, (_, i) => faces[i % faces.length]);
  return framed(
    rung.title,
    shown.flatMap((face) => face ?? []),
    rung.seconds,
  );
}

function framed(title: string, faces: readonly CardFace[], seconds: number): ClipInput {
  const cards = faces.map((face, i) => ({
    picture: cardFrame({ face, position: i + 1, of: faces.length }),
    seconds,
  }));
  return {
    frames: [
      { picture: readyFrame({ title, cards: faces.length, seconds }), seconds },
      ...cards,
      { picture: endFrame(), seconds },
    ],
    sound: 'tick',
  };
}
