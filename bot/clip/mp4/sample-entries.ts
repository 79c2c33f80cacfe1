import { ascii, box, fullBox, u8, u16, u32, zeros } from './box.ts';

/** What an H.264 decoder is told: both parameter sets, and the size in pixels. */
export interface VideoEntry {
  readonly sps: Uint8Array;
  readonly pps: Uint8Array;
  readonly size: number;
}

const SEVENTY_TWO_DPI = 0x480000;

/**
 * The sample entry of an H.264 track: size, decoder configuration and colour.
 * Source: ISO/IEC 14496-15, 5.3.3 and 5.4.2 (`avcC`); ISO/IEC 14496-12, 12.1.3 and 12.1.5 (`colr`).
 */
export function videoEntry({ sps, pps, size }: VideoEntry): Buffer {
  return box(
    'avc1',
    zeros(6),
    u16(1),
    zeros(16),
    u16(size, size),
    u32(SEVENTY_TWO_DPI, SEVENTY_TWO_DPI, 0),
    u16(1),
    zeros(32),
    u16(24, 0xffff),
    box('avcC', decoderConfiguration(sps, pps)),
    limitedBt709(),
  );
}

function decoderConfiguration(sps: Uint8Array, pps: Uint8Array): Buffer {
  const lengthsOfFourBytes = 0xff;
  const oneSequenceSet = 0xe1;
  return Buffer.concat([
    u8(1),
    sps.subarray(1, 4),
    u8(lengthsOfFourBytes, oneSequenceSet),
    u16(sps.length),
    sps,
    u8(1),
    u16(pps.length),
    pps,
  ]);
}

/** Primaries, transfer and matrix are all number 1, BT.709, in Recommendation ITU-T H.273; the range is limited. */
function limitedBt709(): Buffer {
  return box('colr', ascii('nclx'), u16(1, 1, 1), u8(0));
}

/** What an AAC decoder is told. `config` is the AudioSpecificConfig. */
export interface SoundEntry {
  readonly sampleRate: number;
  readonly config: Uint8Array;
}

const TAG = { stream: 3, decoder: 4, specific: 5, sync: 6 } as const;
const MPEG4_AUDIO = 0x40;
const AUDIO_STREAM = 0x15;
/** A buffer and a peak rate that no packet of ours comes near. */
const BUFFER_BYTES = 768;
const PEAK_RATE = 48_000;
const USUAL_RATE = 4_000;

/** The sample entry of a mono AAC track. Source: ISO/IEC 14496-14, 6.7; descriptors: ISO/IEC 14496-1, 7.2.6. */
export function soundEntry({ sampleRate, config }: SoundEntry): Buffer {
  const decoder = descriptor(
    TAG.decoder,
    u8(MPEG4_AUDIO, AUDIO_STREAM, 0),
    u16(BUFFER_BYTES),
    u32(PEAK_RATE, USUAL_RATE),
    descriptor(TAG.specific, config),
  );
  const stream = descriptor(TAG.stream, u16(0), u8(0), decoder, descriptor(TAG.sync, u8(2)));
  return box(
    'mp4a',
    zeros(6),
    u16(1),
    zeros(8),
    u16(1, 16),
    zeros(4),
    u16(sampleRate, 0),
    fullBox('esds', {}, stream),
  );
}

function descriptor(tag: number, ...parts: readonly Uint8Array[]): Buffer {
  const content = Buffer.concat(parts);
  return Buffer.concat([u8(tag, content.length), content]);
}
