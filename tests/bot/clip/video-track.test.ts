import { describe, expect, it } from 'vitest';
import { videoTrack } from '../../../bot/clip/video-track.ts';

const stills = (pictures: number) => ({
  sps: Uint8Array.from(Buffer.from('67420016a681e0f640', 'hex')),
  pps: Uint8Array.from(Buffer.from('68ce0772', 'hex')),
  pictures: Array.from({ length: pictures }, (_, i) => Uint8Array.of(0x65, i)),
});
const timing = (...seconds: number[]) => ({ seconds, picturesPerSecond: 2, size: 480 });

describe('the pictures of a clip', () => {
  it('are each still once and then held for its time', () => {
    const { chunks } = videoTrack(stills(2), timing(2, 2.5));
    expect(chunks.map(({ length }) => length)).toEqual([4, 5]);
    expect(chunks.map((chunk) => chunk.map(({ sync }) => sync))).toEqual([
      [true, false, false, false],
      [true, false, false, false, false],
    ]);
  });

  it('are led by their length', () => {
    const [first, held] = videoTrack(stills(1), timing(2)).chunks[0] ?? [];
    expect([...(first?.data ?? [])]).toEqual([0, 0, 0, 2, 0x65, 0]);
    expect([...(held?.data ?? [])].slice(0, 5)).toEqual([0, 0, 0, 6, 0x61]);
  });

  it('last as long as their times together', () => {
    const samples = videoTrack(stills(3), timing(2, 15, 3.5)).chunks.flat();
    expect(samples.reduce((sum, { duration }) => sum + duration, 0)).toBe(20_500);
  });

  it('without a time for each are refused', () => {
    expect(() => videoTrack(stills(2), timing(3))).toThrow('Got 2 stills for 1 times.');
  });
});
