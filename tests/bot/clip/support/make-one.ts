import { createClipMaker } from '../../../../bot/clip/index.ts';
import { flatClip } from './frames.ts';

/** Makes one clip in a process of its own, tells its bytes, and leaves the maker open. */
const clip = await createClipMaker().make(flatClip(0, 255));
process.stdout.write(String(clip.length));
