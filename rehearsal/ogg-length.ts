const CAPTURE = 'OggS';
const HEAD = 'OpusHead';
/** The smallest page header (RFC 3533, 6). */
const PAGE_HEADER = 27;
/** Opus counts 48,000 samples a second whatever was recorded (RFC 7845, 4). */
const SAMPLES_A_SECOND = 48_000;

/**
 * The length of a recording in whole seconds, rounded: of an Ogg file with Opus sound, from the position its last page
 * gives (RFC 3533, 6; RFC 7845, 4.3). Undefined for anything else. A recording that starts late or is chained to another
 * one is taken as one that starts at nought.
 *
 * @example
 * oggLength(ogg({ seconds: 7 })); // => 7
 */
export function oggLength(bytes: Uint8Array): number | undefined {
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (file.subarray(0, CAPTURE.length).toString('latin1') !== CAPTURE) return undefined;
  const head = file.indexOf(HEAD);
  const last = file.lastIndexOf(CAPTURE);
  if (head < 0 || head + 12 > file.length || last + PAGE_HEADER > file.length) return undefined;
  const skipped = file.readUInt16LE(head + 10);
  const samples = Number(file.readBigInt64LE(last + 6)) - skipped;
  return samples < 0 ? undefined : Math.round(samples / SAMPLES_A_SECOND);
}
