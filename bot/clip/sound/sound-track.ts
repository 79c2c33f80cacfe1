import type { ClipSound } from '../clip.ts';
import { soundEntry } from '../mp4/sample-entries.ts';
import type { Sample, Track } from '../mp4/track.ts';
import { AUDIO_SPECIFIC_CONFIG, PACKET_SAMPLES, SAMPLE_RATE, SILENCE, TICK } from './packets.ts';

/**
 * The sound of a clip whose frames stay `seconds` each: silence, or a tick at each change of frame (none at the start,
 * where nothing changes). A tick begins at the packet nearest its change, at most 32 ms away. One chunk a frame; the last
 * packet may run past the last frame, never short of it.
 *
 * @example
 * soundTrack([2, 2], 'tick').chunks.flat().length; // => 63, at 64 ms each
 */
export function soundTrack(seconds: readonly number[], sound: ClipSound): Track {
  const starts = startsOf(seconds);
  const total = Math.ceil(packetsIn(starts.at(-1) ?? 0));
  const packets: Uint8Array[] = Array.from({ length: total }, () => SILENCE);
  if (sound === 'tick') {
    for (const start of starts.slice(1, -1)) packets.splice(nearest(start), TICK.length, ...TICK);
  }
  const last = seconds.length - 1;
  return {
    kind: 'audio',
    timescale: SAMPLE_RATE,
    entry: soundEntry({ sampleRate: SAMPLE_RATE, config: AUDIO_SPECIFIC_CONFIG }),
    size: 0,
    chunks: seconds.map((_, i) =>
      packets
        .slice(nearest(starts[i] ?? 0), i === last ? total : nearest(starts[i + 1] ?? 0))
        .map(toSample),
    ),
  };
}

/** When each frame begins, in seconds, and when the last one ends. */
function startsOf(seconds: readonly number[]): number[] {
  const starts = [0];
  for (const each of seconds) starts.push((starts.at(-1) ?? 0) + each);
  return starts;
}

const packetsIn = (seconds: number) => (seconds * SAMPLE_RATE) / PACKET_SAMPLES;
const nearest = (seconds: number) => Math.round(packetsIn(seconds));
const toSample = (data: Uint8Array): Sample => ({ data, duration: PACKET_SAMPLES, sync: true });
