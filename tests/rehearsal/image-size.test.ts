import { describe, expect, it } from 'vitest';
import { imageSize } from '../../rehearsal/image-size.ts';
import { png } from './support/png.ts';

describe('imageSize', () => {
  it('reads a PNG', () => {
    expect(imageSize(png(640, 400))).toEqual({ width: 640, height: 400, mimeType: 'image/png' });
  });

  it('finds the frame of a JPEG behind other segments', () => {
    const jpeg = Buffer.from(
      'ffd8' + 'ffe00004abcd' + 'ffc40003aa' + 'ffc0000b0801900280' + '0101110000',
      'hex',
    );
    expect(imageSize(jpeg)).toEqual({ width: 640, height: 400, mimeType: 'image/jpeg' });
  });

  it('does not read anything else or a cut-off header', () => {
    expect(imageSize(Buffer.from('GIF89a'))).toBeUndefined();
    expect(imageSize(png(5, 5).subarray(0, 20))).toBeUndefined();
    expect(imageSize(Buffer.from('ffd8ffe0', 'hex'))).toBeUndefined();
    expect(imageSize(new Uint8Array())).toBeUndefined();
  });
});
