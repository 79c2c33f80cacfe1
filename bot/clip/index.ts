/** Clips: a part's cards as a short timed video, made in a thread of its own and kept on disk. */

export {
  CLIP_SIZE,
  ClipError,
  type ClipFrame,
  type ClipInput,
  type ClipMaker,
  type ClipProblem,
  type ClipSound,
} from './clip.ts';
export { type ClipMakerOptions, createClipMaker } from './clip-maker.ts';
export { type Clips, type ClipsDeps, createClips } from './clips.ts';
export { type CachedClipsOptions, createCachedClipMaker } from './store/cached-clips.ts';
export { clipHash } from './store/clip-hash.ts';
export { type ClipStore, createClipStore } from './store/clip-store.ts';
