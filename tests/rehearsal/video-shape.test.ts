import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { videoShape } from '../../rehearsal/video-shape.ts';
import { mp4 } from './support/mp4.ts';
import { png } from './support/png.ts';

const side = fc.integer({ min: 1, max: 65_535 });

describe('videoShape', () => {
  it('reads size and length', () => {
    expect(videoShape(mp4({ width: 480, height: 360, seconds: 12 }))).toEqual({
      width: 480,
      height: 360,
      duration: 12,
    });
  });

  it('reads short and long headers alike', () => {
    fc.assert(
      fc.property(
        side,
        side,
        fc.integer({ min: 0, max: 40_000 }),
        fc.boolean(),
        (width, height, seconds, isLong) => {
          expect(videoShape(mp4({ width, height, seconds, isLong }))).toEqual({
            width,
            height,
            duration: seconds,
          });
        },
      ),
    );
  });

  it('rounds the length to whole seconds, whatever the scale', () => {
    expect(videoShape(mp4({ seconds: 12.4, scale: 15_360 }))?.duration).toBe(12);
    expect(videoShape(mp4({ seconds: 12.5, scale: 2 }))?.duration).toBe(13);
  });

  it('takes a last box that reaches to the end', () => {
    const open = Buffer.concat([mp4(), Buffer.from('\0\0\0\0mdatpictures', 'latin1')]);
    expect(videoShape(open)).toMatchObject({ width: 480 });
  });

  it('finds none without a picture track or a time scale', () => {
    expect(videoShape(mp4({ width: 0 }))).toBeUndefined();
    expect(videoShape(mp4({ scale: 0 }))).toBeUndefined();
  });

  it('finds none in a picture, in words and in nothing', () => {
    expect(videoShape(png(9, 9))).toBeUndefined();
    expect(videoShape(Buffer.from('no video'))).toBeUndefined();
    expect(videoShape(new Uint8Array())).toBeUndefined();
  });

  it('finds none in a file cut short anywhere but between the boxes', () => {
    const whole = mp4({ data: new Uint8Array(20), isLong: true });
    const withoutData = whole.length - 36;
    for (let length = 0; length < whole.length; length += 1) {
      const shape = videoShape(whole.subarray(0, length));
      if (length !== withoutData) expect([length, shape]).toEqual([length, undefined]);
    }
    expect(videoShape(whole)).toBeDefined();
  });

  it('never throws, whatever the bytes after a right beginning', () => {
    const start = mp4().subarray(0, 20);
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(() => videoShape(Buffer.concat([start, bytes]))).not.toThrow();
      }),
    );
    const whole = mp4({ data: new Uint8Array(9) });
    fc.assert(
      fc.property(fc.nat(whole.length - 1), fc.nat(255), (at, value) => {
        const broken = Uint8Array.from(whole);
        broken[at] = value;
        expect(() => videoShape(broken)).not.toThrow();
      }),
    );
  });
});
