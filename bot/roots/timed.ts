import type { Meter } from '../../db/index.ts';
import type { ClipMaker } from '../clip/index.ts';
import type { Painter } from '../media/index.ts';

/** A painter whose work is timed. */
export function timedPainter(painter: Painter, meter: Meter): Painter {
  return {
    paint: (drawing, width) => {
      const start = performance.now();
      const picture = painter.paint(drawing, width);
      meter.drawn('picture', performance.now() - start);
      return picture;
    },
  };
}

/** A maker of clips whose work is timed: what is made, not what is found. */
export function timedMaker(maker: ClipMaker, meter: Meter): ClipMaker {
  return {
    ...maker,
    make: async (input) => {
      const start = performance.now();
      const clip = await maker.make(input);
      meter.drawn('clip', performance.now() - start);
      return clip;
    },
  };
}
