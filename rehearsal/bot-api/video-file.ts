import { type VideoShape, videoShape } from '../video-shape.ts';
import { badRequest } from './envelope.ts';

/** Pixels a side and seconds; greater numbers are cut down to these (server source, from memory). */
const LONGEST_SIDE = 10_000;
const LONGEST_SECONDS = 86_400;

type Given = { readonly [key in keyof VideoShape]: number | undefined };

function cut<K extends keyof VideoShape>(key: K, value: number | undefined, most: number) {
  return value === undefined || value <= 0 ? {} : { [key]: Math.min(value, most) };
}

/**
 * What a call says of its video, without what it leaves open: nought and less count as not given.
 *
 * @example
 * givenShape({ width: 480, height: 0, duration: undefined }); // => { width: 480 }
 */
export function givenShape({ width, height, duration }: Partial<Given>): Partial<VideoShape> {
  return {
    ...cut('width', width, LONGEST_SIDE),
    ...cut('height', height, LONGEST_SIDE),
    ...cut('duration', duration, LONGEST_SECONDS),
  };
}

/**
 * Throws a 400 for a file that is no MP4 with a picture. The code is one of the service's own, from memory; whether the
 * service answers it each time, or keeps such a file as a document, was not verified. Here a bot always hears of it.
 */
export function checkVideo(bytes: Uint8Array): void {
  if (videoShape(bytes) === undefined) throw badRequest('VIDEO_CONTENT_TYPE_INVALID');
}
