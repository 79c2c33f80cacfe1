import type { Browser, Page } from 'playwright-core';
import { toYuv420 } from '../../../../bot/clip/yuv.ts';
import type { Drawing } from '../../../../bot/media/drawing.ts';
import { type Raster, rasterise } from '../../../../bot/media/painter.ts';

/** A clip in a browser's own player. */
export interface Screening {
  readonly duration: number;
  /** Brightness of every pixel shown after a seek, rows from the top, 0 to 255. */
  readonly seek: (seconds: number) => Promise<Uint8Array>;
  /** The sound as the browser decodes it, at 16 kHz. */
  readonly listen: () => Promise<Float32Array>;
  readonly close: () => Promise<void>;
}

/** Opens a clip in a page of its own and waits until it can be played. */
export async function screen(browser: Browser, clip: Uint8Array): Promise<Screening> {
  const page = await browser.newPage();
  const source = `data:video/mp4;base64,${Buffer.from(clip).toString('base64')}`;
  await page.setContent('<video muted></video>');
  const duration = await page.evaluate(async (src) => {
    const video = document.querySelector('video');
    if (!video) throw new Error('the page has no video');
    await new Promise((resolve, reject) => {
      video.oncanplaythrough = resolve;
      video.onerror = () => reject(new Error(video.error?.message ?? 'the clip cannot be played'));
      video.src = src;
    });
    return video.duration;
  }, source);
  return {
    duration,
    seek: async (seconds) => new Uint8Array(Buffer.from(await seekIn(page, seconds), 'base64')),
    listen: async () => floatsIn(Buffer.from(await listenIn(page, source), 'base64')),
    close: () => page.close(),
  };
}

function seekIn(page: Page, seconds: number): Promise<string> {
  return page.evaluate(async (at) => {
    const video = document.querySelector('video');
    const context = new OffscreenCanvas(480, 480).getContext('2d', { willReadFrequently: true });
    if (!video || !context) throw new Error('the page has no video or no canvas');
    await new Promise((resolve) => {
      video.onseeked = resolve;
      video.currentTime = at;
    });
    // "seeked" may come a moment before the picture on a busy machine: two frames of the page later it is there.
    for (let frame = 0; frame < 2; frame += 1) await new Promise(requestAnimationFrame);
    context.drawImage(video, 0, 0);
    const { data } = context.getImageData(0, 0, 480, 480);
    let grey = '';
    for (let i = 0; i < data.length; i += 4) {
      const [red = 0, green = 0, blue = 0] = data.subarray(i, i + 3);
      grey += String.fromCharCode(Math.round(0.2126 * red + 0.7152 * green + 0.0722 * blue));
    }
    return btoa(grey);
  }, seconds);
}

function listenIn(page: Page, source: string): Promise<string> {
  return page.evaluate(async (src) => {
    const file = Uint8Array.from(atob(src.slice(src.indexOf(',') + 1)), (c) => c.charCodeAt(0));
    const context = new OfflineAudioContext(1, 1, 16_000);
    const samples = (await context.decodeAudioData(file.buffer)).getChannelData(0);
    let bytes = '';
    for (const byte of new Uint8Array(samples.buffer)) bytes += String.fromCharCode(byte);
    return btoa(bytes);
  }, source);
}

function floatsIn(bytes: Buffer): Float32Array {
  return Float32Array.from({ length: bytes.length / 4 }, (_, i) => bytes.readFloatLE(4 * i));
}

/** The brightness a picture has before it is coded, 0 to 255. */
export function brightnessOf(picture: Drawing | Raster): Float32Array {
  const raster = 'svg' in picture ? rasterise(picture, 480) : picture;
  return Float32Array.from(
    toYuv420(raster).subarray(0, 480 * 480),
    (luma) => ((luma - 16) * 255) / 219,
  );
}

/** The mean difference of two brightnesses. */
export function differenceOf(a: Float32Array, b: Uint8Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += Math.abs((a[i] ?? 0) - (b[i] ?? 0));
  return sum / a.length;
}
