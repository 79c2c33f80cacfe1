import { describe, expect, it } from 'vitest';
import { box, findBox, fullBox, u16, u32 } from '../../../../bot/clip/mp4/box.ts';
import { writeMovie } from '../../../../bot/clip/mp4/movie.ts';
import type { Sample, Track } from '../../../../bot/clip/mp4/track.ts';

const sample = (byte: number, length: number, sync = true): Sample => ({
  data: new Uint8Array(length).fill(byte),
  duration: 500,
  sync,
});
const track = (kind: Track['kind'], ...chunks: Sample[][]): Track => ({
  kind,
  timescale: 1000,
  entry: box(kind === 'video' ? 'avc1' : 'mp4a'),
  size: kind === 'video' ? 480 : 0,
  chunks,
});
const STBL = ['moov', 'trak', 'mdia', 'minf', 'stbl'];

/** The numbers of four bytes in a box's content. */
function numbersIn(file: Uint8Array, ...path: string[]): number[] {
  const { begin, end } = findBox(file, path);
  const content = Buffer.from(file.subarray(begin, end));
  return Array.from({ length: content.length / 4 }, (_, i) => content.readUInt32BE(4 * i));
}

describe('a box', () => {
  it('is its length, its type and its content', () => {
    expect([...box('free', Uint8Array.of(7))]).toEqual([0, 0, 0, 9, 102, 114, 101, 101, 7]);
  });

  it('with flags has a version before them', () => {
    expect([...fullBox('tkhd', { version: 1, flags: 3 }).subarray(8)]).toEqual([1, 0, 0, 3]);
  });

  it('takes no number that has too many bytes', () => {
    expect(() => u16(65_536)).toThrow(RangeError);
    expect(() => u32(-1)).toThrow(RangeError);
  });

  it('is found by the way to it', () => {
    const file = box('moov', box('free'), box('trak', box('tkhd', Uint8Array.of(5))));
    const { begin, end } = findBox(file, ['moov', 'trak', 'tkhd']);
    expect([...file.subarray(begin, end)]).toEqual([5]);
  });

  it.each([
    ['is not there', box('moov'), ['moov', 'trak']],
    ['stands after a box without a length', Buffer.alloc(32), ['moov']],
  ])('that %s is not found', (_, file, path) => {
    expect(() => findBox(file, path)).toThrow(RangeError);
  });
});

describe('a movie', () => {
  const video = track(
    'video',
    [sample(1, 9), sample(2, 3, false)],
    [sample(3, 8), sample(4, 3, false)],
    [sample(5, 7)],
  );
  const sound = track('audio', [sample(11, 4)], [sample(12, 4)], [sample(13, 4)]);
  const file = writeMovie({ duration: 2500, tracks: [video, sound] });

  it('lays the chunks of its tracks down in turn', () => {
    const { begin, end } = findBox(file, ['mdat']);
    const order = [...new Set(file.subarray(begin, end))];
    expect(order).toEqual([1, 2, 11, 3, 4, 12, 5, 13]);
    expect(end).toBe(file.length);
  });

  it('points at the first byte of each chunk', () => {
    const [, count, ...offsets] = numbersIn(file, ...STBL, 'stco');
    expect(count).toBe(3);
    expect(offsets.map((at) => file[at])).toEqual([1, 3, 5]);
  });

  it('lists the samples a player can begin at', () => {
    expect(numbersIn(file, ...STBL, 'stss')).toEqual([0, 3, 1, 3, 5]);
  });

  it('has no such list when every sample is one', () => {
    const plain = writeMovie({ duration: 1500, tracks: [sound] });
    expect(() => findBox(plain, [...STBL, 'stss'])).toThrow("Found no box 'stss'");
  });

  it('says how many samples each chunk has, once for equal neighbours', () => {
    expect(numbersIn(file, ...STBL, 'stsc')).toEqual([0, 2, 1, 2, 1, 3, 1, 1]);
  });

  it('lists sizes one by one, or once when all are equal', () => {
    expect(numbersIn(file, ...STBL, 'stsz')).toEqual([0, 0, 5, 9, 3, 8, 3, 7]);
    const plain = writeMovie({ duration: 1500, tracks: [sound] });
    expect(numbersIn(plain, ...STBL, 'stsz')).toEqual([0, 4, 3]);
  });

  it('with tracks of unequal chunks is refused', () => {
    const short = track('audio', [sample(11, 4)]);
    expect(() => writeMovie({ duration: 2500, tracks: [video, short] })).toThrow(RangeError);
  });
});
