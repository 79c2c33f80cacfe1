import { bitReader } from './bits.ts';
import { unescapeUnit } from './nal.ts';

/** What a slice header depends on: the part of both parameter sets that a held picture needs. */
export interface SliceSyntax {
  readonly picturesId: number;
  readonly frameNumberBits: number;
  readonly macroblocks: number;
  readonly defaultReferences: number;
  readonly deblockingControl: boolean;
}

const BASELINE = 66;

/**
 * Reads both parameter sets of a Baseline stream as our encoders write it: whole frames, one slice group, no B pictures.
 * Source: ITU-T H.264, 7.3.2.1 and 7.3.2.2.
 *
 * @throws {RangeError} when the stream uses anything else; a picture held by guesswork would show as rubbish.
 */
export function readSliceSyntax(sps: Uint8Array, pps: Uint8Array): SliceSyntax {
  return { ...readSequence(sps), ...readPictures(pps) };
}

function readSequence(sps: Uint8Array): Pick<SliceSyntax, 'frameNumberBits' | 'macroblocks'> {
  const read = bitReader(unescapeUnit(sps).subarray(1));
  only('profile', read.bits(8), BASELINE);
  read.bits(16);
  read.unsigned();
  const frameNumberBits = read.unsigned() + 4;
  only('picture order count type', read.unsigned(), 2);
  read.unsigned();
  read.bits(1);
  const columns = read.unsigned() + 1;
  const rows = read.unsigned() + 1;
  only('frames-only flag', read.bits(1), 1);
  return { frameNumberBits, macroblocks: columns * rows };
}

function readPictures(
  pps: Uint8Array,
): Pick<SliceSyntax, 'picturesId' | 'defaultReferences' | 'deblockingControl'> {
  const read = bitReader(unescapeUnit(pps).subarray(1));
  const picturesId = read.unsigned();
  read.unsigned();
  only('entropy coding mode', read.bits(1), 0);
  read.bits(1);
  only('number of further slice groups', read.unsigned(), 0);
  const defaultReferences = read.unsigned() + 1;
  read.unsigned();
  only('weighted prediction', read.bits(1), 0);
  read.bits(2);
  read.signed();
  read.signed();
  read.signed();
  const deblockingControl = read.bits(1) === 1;
  read.bits(1);
  only('redundant pictures flag', read.bits(1), 0);
  return { picturesId, defaultReferences, deblockingControl };
}

function only(what: string, got: number, wanted: number): void {
  if (got !== wanted) {
    throw new RangeError(`Got ${what} ${got} in a parameter set: only ${wanted} can be held.`);
  }
}

/**
 * The sequence parameter set with the bits that say Constrained Baseline (sets 0 and 1). The tools that plain Baseline
 * adds (slice groups, arbitrary order, redundant slices) are in use by none of our encoders, and many phones decode only
 * the constrained profile. Source: ITU-T H.264, A.2.1.1.
 *
 * @example
 * constrained(Uint8Array.of(0x67, 66, 0, 22)); // => 0x67, 66, 0xc0, 22
 */
export function constrained(sps: Uint8Array): Uint8Array {
  return sps.map((byte, at) => (at === 2 && sps[1] === BASELINE ? byte | 0xc0 : byte));
}
