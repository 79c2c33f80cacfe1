import { bitWriter } from './bits.ts';
import { escapeUnit, NAL } from './nal.ts';
import type { SliceSyntax } from './parameter-sets.ts';

const HIGHEST_REFERENCE = 3 << 5;

/**
 * A picture that shows the one before it once more: a P slice in which every macroblock is skipped, some ten bytes.
 * It spares encoding the same still again for each of its seconds. `since` counts pictures from the last IDR picture, from 1.
 *
 * Source: ITU-T H.264, 7.3.3 (slice header), 7.3.4 (`mb_skip_run`) and 8.4.1.1 (a skipped macroblock with no moving
 * neighbours repeats the reference).
 *
 * @throws {RangeError} when `since` is not a whole number from 1.
 */
export function heldPicture(syntax: SliceSyntax, since: number): Uint8Array {
  if (!Number.isInteger(since) || since < 1) {
    throw new RangeError(`Got ${since}: a held picture is counted from 1.`);
  }
  const write = bitWriter();
  write.unsigned(0); // first macroblock
  write.unsigned(0); // slice type P
  write.unsigned(syntax.picturesId);
  write.bits(since % 2 ** syntax.frameNumberBits, syntax.frameNumberBits);
  if (syntax.defaultReferences === 1) {
    write.bits(0, 1);
  } else {
    write.bits(1, 1);
    write.unsigned(0);
  }
  write.bits(0, 2); // reference list as it is, marking as usual
  write.unsigned(0); // quantiser unchanged
  if (syntax.deblockingControl) for (let i = 0; i < 3; i += 1) write.unsigned(0);
  write.unsigned(syntax.macroblocks);
  return escapeUnit(Uint8Array.of(HIGHEST_REFERENCE | NAL.slice, ...write.close()));
}
