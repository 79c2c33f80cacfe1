import { createClipMaker } from '../../clip/index.ts';
import { cardFrame, createPainter, readyFrame } from '../../media/index.ts';
import { type Check, fine, mend } from './check.ts';

const WIDTH = 480;
const ANEW = 'Install anew: npm ci';

/** The fonts: two cards with other words must look different, so neither is blank. */
export const fontCheck: Check = {
  what: 'fonts',
  look: async () => {
    const painter = createPainter();
    const [one, other] = ['Andika', 'Pebble'].map((title) =>
      painter.paint(readyFrame({ title, cards: 10, seconds: 3 }), WIDTH),
    );
    const isDrawn = one && other && Buffer.compare(one, other) !== 0;
    return isDrawn ? fine('Andika, drawn') : mend(`The font Andika draws nothing. ${ANEW}`);
  },
};

/** The encoder: it makes one clip in a thread of its own. */
export const encoderCheck: Check = {
  what: 'encoder',
  look: async ({ config: { ffmpeg } }) => {
    const maker = createClipMaker(ffmpeg === undefined ? {} : { ffmpeg });
    try {
      const picture = cardFrame({ face: { kind: 'text', text: '3 + 4' }, position: 1, of: 1 });
      const clip = await maker.make({
        frames: [{ picture, seconds: 2 }],
        sound: 'none-but-silent',
      });
      return fine(`${ffmpeg ?? 'our own'}, a clip of ${clip.length} bytes`);
    } catch {
      return mend(ffmpeg ? `FFMPEG: ${ffmpeg} makes no clip. Mend it or unset it.` : ANEW);
    } finally {
      await maker.close();
    }
  },
};
