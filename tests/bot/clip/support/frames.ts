import type { ClipFrame, ClipInput, ClipSound } from '../../../../bot/clip/index.ts';
import { cardFrame } from '../../../../bot/media/card-frame.ts';
import { endFrame, readyFrame } from '../../../../bot/media/outer-frames.ts';
import type { Raster } from '../../../../bot/media/painter.ts';
import type { CardFace } from '../../../../drills/index.ts';

/** Kinds of cards a part may hold. */
export type Kind = 'sums' | 'doubles' | 'words' | 'clocks' | 'mixed';

const WORDS = [
  'seventy-three',
  'one hundred and twelve',
  'fourteen',
  'one hundred and eighty-eight',
  'twenty-nine',
];
const MIXED = ['sums', 'doubles', 'words', 'clocks'] as const;

/** Card `i` of a kind. The first twenty mixed cards differ from each other. */
export function faceFor(kind: Kind, i: number): CardFace {
  if (kind === 'sums') return { kind: 'text', text: `${i % 10} + ${(i * 7) % 10}` };
  if (kind === 'doubles') return { kind: 'text', text: `${i % 2 ? 'half of' : 'double'} ${i + 2}` };
  if (kind === 'words') return { kind: 'text', text: WORDS[i % WORDS.length] ?? '' };
  if (kind === 'clocks') return { kind: 'clock', hour: (i % 12) + 1, minute: (i * 35) % 60 };
  return faceFor(MIXED[i % MIXED.length] ?? 'sums', Math.floor(i / 4));
}

/** A part as a family gets it: a ready frame, the cards, and a frame after the last. */
export function partFrames(kind: Kind, cards: number, seconds = 3): ClipFrame[] {
  const title = 'Doubles';
  const faces = Array.from({ length: cards }, (_, i) => faceFor(kind, i));
  return [
    { picture: readyFrame({ title, cards, seconds: Math.ceil(seconds) }), seconds },
    ...faces.map((face, i) => ({
      picture: cardFrame({ face, position: i + 1, of: cards, title }),
      seconds,
    })),
    { picture: endFrame(), seconds },
  ];
}

/** A part as input to a maker. */
export function partClip(kind: Kind, cards: number, sound: ClipSound = 'tick'): ClipInput {
  return { frames: partFrames(kind, cards), sound };
}

/** A square of one grey, as pixels. */
export function flat(value: number, size = 480): Raster {
  const pixels = new Uint8Array(size * size * 4).fill(value);
  return { pixels, width: size, height: size };
}

/** A clip of flat greys that stay two seconds each: the cheapest there is. */
export function flatClip(...greys: number[]): ClipInput {
  return {
    frames: greys.map((grey) => ({ picture: flat(grey), seconds: 2 })),
    sound: 'none-but-silent',
  };
}
