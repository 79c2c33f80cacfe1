export interface ImageSize {
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  readonly mimeType: 'image/png' | 'image/jpeg';
}

const PNG_SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

function pngSize(view: DataView): ImageSize | undefined {
  if (view.byteLength < 24) return undefined;
  if (!PNG_SIGNATURE.every((byte, i) => view.getUint8(i) === byte)) return undefined;
  return { width: view.getUint32(16), height: view.getUint32(20), mimeType: 'image/png' };
}

/** Start-of-frame markers of JPEG (ITU-T T.81, table B.1): C0-CF without DHT, JPG and DAC. */
function isStartOfFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
}

function jpegSize(view: DataView): ImageSize | undefined {
  if (view.byteLength < 4 || view.getUint16(0) !== 0xffd8) return undefined;
  let at = 2;
  while (at + 9 <= view.byteLength && view.getUint8(at) === 0xff) {
    const marker = view.getUint8(at + 1);
    if (isStartOfFrame(marker)) {
      return {
        height: view.getUint16(at + 5),
        width: view.getUint16(at + 7),
        mimeType: 'image/jpeg',
      };
    }
    at += marker === 0xff ? 1 : 2 + view.getUint16(at + 2);
  }
  return undefined;
}

/** Reads width and height from the header of a PNG or JPEG; undefined for anything else. */
export function imageSize(bytes: Uint8Array): ImageSize | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return pngSize(view) ?? jpegSize(view);
}
