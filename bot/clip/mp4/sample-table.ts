import { box, fullBox, u32 } from './box.ts';
import { type Sample, samplesOf, type Track } from './track.ts';

/**
 * The sample table box: description, times, sync samples, chunks, sizes and chunk offsets of one track.
 * A track whose samples are all sync samples has no `stss`, as the standard asks. Source: ISO/IEC 14496-12, 8.5 to 8.7.
 */
export function sampleTable(track: Track, offsets: readonly number[]): Buffer {
  const samples = samplesOf(track);
  return box(
    'stbl',
    fullBox('stsd', {}, u32(1), track.entry),
    timeToSample(samples),
    ...(samples.every(({ sync }) => sync) ? [] : [syncSamples(samples)]),
    sampleToChunk(track.chunks),
    sampleSizes(samples),
    fullBox('stco', {}, u32(offsets.length, ...offsets)),
  );
}

/** Values that repeat, as pairs of how often and what. */
function runs(values: readonly number[]): [count: number, value: number][] {
  const found: [number, number][] = [];
  for (const value of values) {
    const last = found.at(-1);
    if (last?.[1] === value) last[0] += 1;
    else found.push([1, value]);
  }
  return found;
}

function timeToSample(samples: readonly Sample[]): Buffer {
  const entries = runs(samples.map(({ duration }) => duration));
  return fullBox('stts', {}, u32(entries.length, ...entries.flat()));
}

function syncSamples(samples: readonly Sample[]): Buffer {
  const numbers = samples.flatMap(({ sync }, index) => (sync ? [index + 1] : []));
  return fullBox('stss', {}, u32(numbers.length, ...numbers));
}

function sampleToChunk(chunks: Track['chunks']): Buffer {
  let first = 1;
  const entries = runs(chunks.map(({ length }) => length)).map(([count, perChunk]) => {
    const entry = [first, perChunk, 1];
    first += count;
    return entry;
  });
  return fullBox('stsc', {}, u32(entries.length, ...entries.flat()));
}

function sampleSizes(samples: readonly Sample[]): Buffer {
  const sizes = samples.map(({ data }) => data.length);
  const first = sizes[0] ?? 0;
  return sizes.every((size) => size === first)
    ? fullBox('stsz', {}, u32(first, sizes.length))
    : fullBox('stsz', {}, u32(0, sizes.length, ...sizes));
}
