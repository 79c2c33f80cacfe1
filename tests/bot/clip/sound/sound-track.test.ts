import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SILENCE, TICK } from '../../../../bot/clip/sound/packets.ts';
import { soundTrack } from '../../../../bot/clip/sound/sound-track.ts';

const PACKET = 1024 / 16_000;
const seconds = fc.array(
  fc.integer({ min: 4, max: 30 }).map((halves) => halves / 2),
  { minLength: 1, maxLength: 44 },
);
const total = (all: readonly number[]) => all.reduce((sum, each) => sum + each, 0);
const ticksIn = (all: readonly number[]) => {
  const packets = soundTrack(all, 'tick').chunks.flat();
  return packets.flatMap(({ data }, i) => (data === TICK[0] ? [i] : []));
};

describe('the sound of a clip', () => {
  it('lasts as long as its pictures and less than one packet longer', () => {
    fc.assert(
      fc.property(seconds, (all) => {
        const length = soundTrack(all, 'tick').chunks.flat().length * PACKET;
        expect(length).toBeGreaterThanOrEqual(total(all));
        expect(length).toBeLessThan(total(all) + PACKET);
      }),
    );
  });

  it('is 63 packets for four seconds', () => {
    expect(soundTrack([2, 2], 'tick').chunks.flat().length).toBe(63);
  });

  it('has one chunk a frame', () => {
    expect(soundTrack([2, 15, 3], 'tick').chunks.length).toBe(3);
  });

  it('ticks at each change of frame, at most 32 ms away, and not at the start', () => {
    fc.assert(
      fc.property(seconds, (all) => {
        const starts = all.map((_, i) => total(all.slice(0, i))).slice(1);
        const ticks = ticksIn(all);
        expect(ticks.length).toBe(starts.length);
        for (const [i, tick] of ticks.entries()) {
          expect(Math.abs(tick * PACKET - (starts[i] ?? 0))).toBeLessThanOrEqual(0.032 + 1e-9);
        }
      }),
    );
  });

  it('plays each tick whole', () => {
    const packets = soundTrack([2, 2], 'tick').chunks.flat();
    const [tick = 0] = ticksIn([2, 2]);
    expect(packets.slice(tick, tick + 3).map(({ data }) => data)).toEqual(TICK);
    expect(packets[tick + 3]?.data).toBe(SILENCE);
  });

  it('is silence throughout when nothing else is asked', () => {
    const packets = soundTrack([3, 3, 3], 'none-but-silent').chunks.flat();
    expect(packets.every(({ data }) => data === SILENCE)).toBe(true);
  });
});
