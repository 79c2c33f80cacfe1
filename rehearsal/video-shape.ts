/** Width and height in pixels, length in seconds. */
export interface VideoShape {
  readonly width: number;
  readonly height: number;
  readonly duration: number;
}

/** A box of an MP4 file (ISO/IEC 14496-12, 4.2): four characters and what is inside. */
interface Box {
  readonly type: string;
  readonly body: DataView;
}

function typeAt(view: DataView, at: number): string {
  return String.fromCharCode(...[0, 1, 2, 3].map((i) => view.getUint8(at + i)));
}

/** Length of the box at `at` with its header; 0 means "to the end", 1 that 64 bits follow. */
function boxLength(view: DataView, at: number): { header: number; length: number } | undefined {
  const left = view.byteLength - at;
  if (left < 8) return undefined;
  const short = view.getUint32(at);
  if (short === 0) return { header: 8, length: left };
  if (short !== 1) return { header: 8, length: short };
  return left < 16 ? undefined : { header: 16, length: Number(view.getBigUint64(at + 8)) };
}

/** The boxes in a row; undefined when they do not fill the bytes exactly, as in a file cut short. */
function boxesOf(view: DataView): Box[] | undefined {
  const boxes: Box[] = [];
  let at = 0;
  while (at < view.byteLength) {
    const { header, length } = boxLength(view, at) ?? { header: 8, length: 0 };
    if (length < header || at + length > view.byteLength) return undefined;
    const body = new DataView(view.buffer, view.byteOffset + at + header, length - header);
    boxes.push({ type: typeAt(view, at + 4), body });
    at += length;
  }
  return boxes;
}

function bodiesOf(boxes: readonly Box[] | undefined, type: string): DataView[] {
  return (boxes ?? []).flatMap((box) => (box.type === type ? [box.body] : []));
}

function isLong(box: DataView): boolean {
  return box.byteLength > 0 && box.getUint8(0) === 1;
}

/** Seconds of the movie header (8.2.2); undefined when it is too short or has no time scale. */
function durationOf(header: DataView | undefined): number | undefined {
  if (header === undefined || header.byteLength < (isLong(header) ? 32 : 20)) return undefined;
  const scale = header.getUint32(isLong(header) ? 20 : 12);
  const units = isLong(header) ? Number(header.getBigUint64(24)) : header.getUint32(16);
  return scale === 0 ? undefined : Math.round(units / scale);
}

/** Pixels of a track header (8.3.2), kept there as 16.16 fixed point. A track of sound has none. */
function sizeOf(header: DataView): readonly { width: number; height: number }[] {
  const at = isLong(header) ? 88 : 76;
  if (header.byteLength < at + 8) return [];
  const width = header.getUint16(at);
  const height = header.getUint16(at + 4);
  return width === 0 || height === 0 ? [] : [{ width, height }];
}

/**
 * Reads size and length from the headers of an MP4 file (ISO/IEC 14496-12): of the first track that has a size, the length
 * rounded to whole seconds. Undefined for a file that is cut short, has no picture or is anything else.
 *
 * @example
 * videoShape(mp4({ width: 480, height: 360, seconds: 12 })); // => { width: 480, height: 360, duration: 12 }
 */
export function videoShape(bytes: Uint8Array): VideoShape | undefined {
  const boxes = boxesOf(new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength));
  if (boxes?.[0]?.type !== 'ftyp') return undefined;
  const movie = bodiesOf(boxes, 'moov').flatMap((body) => boxesOf(body) ?? []);
  const duration = durationOf(bodiesOf(movie, 'mvhd')[0]);
  const tracks = bodiesOf(movie, 'trak').flatMap((body) => bodiesOf(boxesOf(body), 'tkhd'));
  const size = tracks.flatMap(sizeOf)[0];
  return duration === undefined || size === undefined ? undefined : { ...size, duration };
}
