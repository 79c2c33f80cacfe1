import { describe, expect, it } from 'vitest';
import { bitReader } from '../../../../bot/clip/h264/bits.ts';
import { heldPicture } from '../../../../bot/clip/h264/held-picture.ts';
import { constrained, readSliceSyntax } from '../../../../bot/clip/h264/parameter-sets.ts';

const hex = (text: string) => new Uint8Array(Buffer.from(text, 'hex'));

/** Both sets as the WebAssembly encoder writes them for 480 x 480. */
const SPS = hex('67420016a681e0f640');
const PPS = hex('68ce0772');

const syntax = readSliceSyntax(SPS, PPS);

describe('the parameter sets', () => {
  it('tell the blocks of the picture and how its slices are written', () => {
    expect(syntax).toEqual({
      picturesId: 0,
      frameNumberBits: 5,
      macroblocks: 900,
      defaultReferences: 1,
      deblockingControl: true,
    });
  });

  it.each([
    ['the Main profile', '674d0016a681e0f640', '68ce0772', 'profile 77'],
    ['arithmetic coding', '67420016a681e0f640', '68ee0772', 'entropy coding mode 1'],
    ['picture order counts', '67420016a9b03c1ec8', '68ce0772', 'picture order count type 0'],
  ])('of a stream with %s are refused', (_, sps, pps, what) => {
    expect(() => readSliceSyntax(hex(sps), hex(pps))).toThrow(`Got ${what} in a parameter set`);
  });

  it('cut short are refused', () => {
    expect(() => readSliceSyntax(SPS.subarray(0, 5), PPS)).toThrow(RangeError);
  });

  it('say Constrained Baseline after a change of two bits, and nothing else changes', () => {
    expect([...constrained(SPS)]).toEqual([...hex('6742c016a681e0f640')]);
    expect(readSliceSyntax(constrained(SPS), PPS)).toEqual(syntax);
  });

  it('need no more than their first four bytes for that', () => {
    expect([...constrained(Uint8Array.of(0x67, 66, 0, 22))]).toEqual([0x67, 66, 0xc0, 22]);
  });

  it('of another profile stay as they are', () => {
    expect([...constrained(hex('674d0016'))]).toEqual([...hex('674d0016')]);
  });
});

describe('a held picture', () => {
  // What the WebAssembly encoder itself wrote for the third, fourth and fifth picture of an unchanging scene.
  it.each([
    [2, '61e21e00e160'],
    [3, '61e31e00e160'],
    [4, '61e41e00e160'],
  ])('number %i is what an encoder writes for an unchanging scene', (since, bytes) => {
    expect([...heldPicture(syntax, since)]).toEqual([...hex(bytes)]);
  });

  it('counts round when its number has no more bits', () => {
    expect(heldPicture(syntax, 33)).toEqual(heldPicture(syntax, 1));
  });

  it('says how many references it uses when the usual number is another', () => {
    const read = bitReader(heldPicture({ ...syntax, defaultReferences: 3 }, 1).subarray(1));
    const header = [read.unsigned(), read.unsigned(), read.unsigned(), read.bits(5)];
    expect([...header, read.bits(1), read.unsigned()]).toEqual([0, 0, 0, 1, 1, 0]);
  });

  it('leaves the deblocking fields out when the set has none', () => {
    const read = bitReader(heldPicture({ ...syntax, deblockingControl: false }, 1).subarray(1));
    read.bits(8 + 3 + 1);
    expect([read.unsigned(), read.bits(1)]).toEqual([900, 1]);
  });

  it.each([0, -1, 1.5, Number.NaN])('number %d is refused', (since) => {
    expect(() => heldPicture(syntax, since)).toThrow(RangeError);
  });
});
