import { createRequire } from 'node:module';
import { isMainThread } from 'node:worker_threads';
import type { H264MP4Encoder } from 'h264-mp4-encoder';
import { findBox } from '../mp4/box.ts';
import type { Yuv420 } from '../yuv.ts';
import { NAL, nalType, splitByLength } from './nal.ts';
import type { CodedStills } from './stills.ts';

type Library = typeof import('h264-mp4-encoder');

/**
 * Encodes stills with the WebAssembly encoder.
 *
 * @throws {TypeError} in the main thread: loading the package hooks `uncaughtException` and `unhandledRejection` of its
 *   thread, and an unrelated rejection would then end the whole process.
 * @throws {RangeError} when the encoder gives another number of pictures than it was given.
 */
export async function encodeStills(
  pictures: readonly Yuv420[],
  size: number,
  qp: number,
): Promise<CodedStills> {
  if (isMainThread) throw new TypeError('Stills are encoded in a worker thread only.');
  const library: Library = createRequire(import.meta.url)('h264-mp4-encoder');
  const encoder = await library.createH264MP4Encoder();
  try {
    return encodeWith(encoder, pictures, size, qp);
  } finally {
    encoder.delete();
  }
}

function encodeWith(
  encoder: H264MP4Encoder,
  pictures: readonly Yuv420[],
  size: number,
  qp: number,
): CodedStills {
  encoder.width = size;
  encoder.height = size;
  encoder.frameRate = 1;
  encoder.quantizationParameter = qp;
  encoder.speed = 0;
  // Every picture stands for itself; held pictures are written by our own muxer.
  encoder.groupOfPictures = 1;
  encoder.initialize();
  for (const picture of pictures) encoder.addFrameYuv(picture);
  encoder.finalize();
  const file = encoder.FS.readFile(encoder.outputFilename);
  encoder.FS.unlink(encoder.outputFilename);
  const stills = stillsIn(file);
  if (stills.pictures.length === pictures.length) return stills;
  throw new RangeError(`Got ${stills.pictures.length} pictures for ${pictures.length}.`);
}

const TO_CONFIGURATION = ['moov', 'trak', 'mdia', 'minf', 'stbl', 'stsd', 'avc1', 'avcC'];
/** Bytes before the first box inside: a version and a count; the fields of a visual sample entry. */
const SKIP = { stsd: 8, avc1: 78 };

/** The parameter sets and pictures in the MP4 file the encoder writes. Its one track fills the media box without a gap. */
function stillsIn(file: Uint8Array): CodedStills {
  const { begin } = findBox(file, TO_CONFIGURATION, SKIP);
  const sps = unitAt(file, begin + 6);
  const pps = unitAt(file, begin + 6 + 2 + sps.length + 1);
  const media = findBox(file, ['mdat']);
  const units = splitByLength(file.subarray(media.begin, media.end));
  return { sps, pps, pictures: units.filter((unit) => nalType(unit) === NAL.idr) };
}

function unitAt(file: Uint8Array, at: number): Uint8Array {
  const length = (file[at] ?? 0) * 256 + (file[at + 1] ?? 0);
  return file.subarray(at + 2, at + 2 + length);
}
