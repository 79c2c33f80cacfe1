import { InputFile } from 'grammy';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { createClipMaker } from '../../bot/clip/index.ts';
import { flatClip } from '../bot/clip/support/frames.ts';
import { overflowOf } from '../support/browser-checks.ts';
import { complaintsOf, launchBrowser } from './support/browser.ts';
import { mp4 } from './support/mp4.ts';
import { ogg } from './support/ogg.ts';
import { png } from './support/png.ts';
import { createStage, MAYA, openBoth, START, type Stage } from './support/stage.ts';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

let browser: Browser;
let stage: Stage;
let page: Page;
let complaints: string[];
let clip: Uint8Array;
/** Ranges the player asked for, each with the status of the answer. */
const ranges: [string | undefined, number][] = [];

beforeAll(async () => {
  const maker = createClipMaker();
  [browser, stage, clip] = await Promise.all([
    launchBrowser(),
    createStage({ timeZone: 'Europe/London' }),
    maker.make(flatClip(40, 200, 120)),
  ]);
  await maker.close();
  await openBoth(stage);
  page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  complaints = complaintsOf(page, stage.rehearsal.url);
  page.on('response', (answer) => {
    if (answer.url().includes('/rehearsal/files/'))
      ranges.push([answer.request().headers().range, answer.status()]);
  });
  await page.goto(`${stage.rehearsal.url}/#${MAYA}`);
  await page.getByText('/start').first().waitFor();
});
afterEach(() => expect(complaints.splice(0)).toEqual([]));
afterAll(async () => {
  await browser.close();
  await stage.rehearsal.close();
});

/** A second of silence as a WAV file: 8000 samples of one byte (RIFF, from memory). */
function silence(): Uint8Array {
  const head = Buffer.alloc(44);
  head.write('RIFF', 0, 'latin1');
  head.writeUInt32LE(36 + 8000, 4);
  head.write('WAVEfmt ', 8, 'latin1');
  for (const [value, at] of [
    [16, 16],
    [8000, 24],
    [8000, 28],
    [8000, 40],
  ] as const)
    head.writeUInt32LE(value, at);
  for (const [value, at] of [
    [1, 20],
    [1, 22],
    [1, 32],
    [8, 34],
  ] as const)
    head.writeUInt16LE(value, at);
  head.write('data', 36, 'latin1');
  return Buffer.concat([head, Buffer.alloc(8000, 128)]);
}

function seekTo(video: Locator, seconds: number): Promise<number> {
  return video.evaluate(
    (element: HTMLVideoElement, at) =>
      new Promise<number>((resolve) => {
        element.onseeked = () => resolve(element.currentTime);
        element.currentTime = at;
      }),
    seconds,
  );
}

describe('a clip on the page', () => {
  let id: number;
  const video = () => page.getByLabel(/^Video, 6 seconds: Part 1/);

  it('is in its place, with pause, seek bar and a name, and fits at both widths', async () => {
    const options = { caption: 'Part 1', reply_markup: START };
    id = (await stage.bot.api.sendVideo(MAYA, new InputFile(clip, 'part 1.mp4'), options))
      .message_id;
    await video().waitFor();
    await page.waitForFunction(() => (document.querySelector('video')?.readyState ?? 0) >= 1);
    const read = () =>
      video().evaluate((element: HTMLVideoElement) => ({
        controls: element.controls,
        inline: element.playsInline,
        preload: element.preload,
        autoplay: element.autoplay,
        duration: element.duration,
        size: [element.videoWidth, element.videoHeight],
        isSquare: Math.abs(element.clientWidth - element.clientHeight) <= 1,
      }));
    const expected = {
      controls: true,
      inline: true,
      preload: 'metadata',
      autoplay: false,
      duration: 6,
      size: [480, 480],
      isSquare: true,
    };
    expect(await read()).toEqual(expected);
    await page.setViewportSize({ width: 360, height: 900 });
    expect(await read()).toEqual(expected);
    expect(await overflowOf(page)).toBe(0);
    await page.setViewportSize({ width: 1280, height: 900 });
  });

  it('was asked for in part, and came in part', () => {
    expect(ranges[0]).toEqual(['bytes=0-', 206]);
  });

  it('plays, pauses and seeks by keyboard and by position', async () => {
    await video().focus();
    await page.keyboard.press('Space');
    await page.waitForFunction(() => (document.querySelector('video')?.currentTime ?? 0) > 0);
    await page.keyboard.press('Space');
    expect(await video().evaluate((element: HTMLVideoElement) => element.paused)).toBe(true);
    expect(await seekTo(video(), 5)).toBe(5);
    expect(await seekTo(video(), 1.5)).toBe(1.5);
  });

  it('stays where it was and keeps the focus when caption and buttons change', async () => {
    await seekTo(video(), 3);
    await video().focus();
    await stage.bot.api.editMessageCaption(MAYA, id, { caption: 'Part 1, to be marked' });
    const renamed = page.getByLabel('Video, 6 seconds: Part 1, to be marked');
    await renamed.waitFor();
    const kept = await renamed.evaluate((element: HTMLVideoElement) => [
      element.currentTime,
      document.activeElement === element,
    ]);
    expect(kept).toEqual([3, true]);
  });

  it('that is broken gives way to a link that saves it', async () => {
    await stage.bot.api.sendVideo(MAYA, new InputFile(mp4(), 'odd.mp4'));
    await page.getByText('This browser cannot play the video.').waitFor();
    expect(await page.locator('video').count()).toBe(1);
    const saved = page.waitForEvent('download');
    await page.getByRole('link', { name: 'Save odd.mp4' }).click();
    expect((await saved).suggestedFilename()).toBe('odd.mp4');
  });
});

describe('a document on the page', () => {
  it('that is a picture has a preview and opens in a new tab', async () => {
    await stage.bot.api.sendDocument(MAYA, new InputFile(png(900, 500), 'week 37.png'));
    const link = page.getByRole('link', { name: 'Open week 37.png in a new tab' });
    const natural = await link
      .locator('img')
      .evaluate((image: HTMLImageElement) => image.decode().then(() => image.naturalWidth));
    expect(natural).toBe(900);
    const opened = page.waitForEvent('popup');
    await link.click();
    const tab = await opened;
    await tab.waitForLoadState();
    expect(await tab.evaluate(() => document.contentType)).toBe('image/png');
    await tab.close();
    const saved = page.waitForEvent('download');
    await page.getByRole('link', { name: 'Save week 37.png' }).click();
    expect((await saved).suggestedFilename()).toBe('week 37.png');
  });

  it('that is a PDF opens in a new tab, and a table is only saved', async () => {
    await stage.bot.api.sendDocument(MAYA, new InputFile(Buffer.from('%PDF-1.7\n'), 'week.pdf'));
    await stage.bot.api.sendDocument(MAYA, new InputFile(Buffer.from('a,b'), 'week.csv'));
    const pdf = page.getByRole('link', { name: 'Open week.pdf in a new tab' });
    await pdf.waitFor();
    expect(await pdf.getAttribute('target')).toBe('_blank');
    await page.getByRole('link', { name: 'Save week.csv' }).waitFor();
    expect(await page.getByRole('link', { name: 'Open week.csv' }).count()).toBe(0);
  });
});

describe('sending a file', () => {
  const send = async (name: string, mimeType: string, bytes: Uint8Array, words = '') => {
    await page
      .getByLabel('File', { exact: true })
      .setInputFiles({ name, mimeType, buffer: Buffer.from(bytes) });
    await page.getByLabel('Words with it').fill(words);
    await page.getByRole('button', { name: 'Send the file' }).click();
  };
  const newest = async () => (await stage.client.chat(MAYA)).at(-1);
  const kind = () => page.getByLabel('Send it as').inputValue();

  it('sends a table as a document with words, and the form is empty again', async () => {
    await page.getByText('Send a file').click();
    await send('class.csv', 'text/csv', Buffer.from('Wren\nOtto\n'), 'Kingfisher class');
    await page.getByRole('link', { name: 'Save class.csv' }).waitFor();
    expect(await newest()).toMatchObject({
      from: 'person',
      text: 'Kingfisher class',
      document: { fileName: 'class.csv', mimeType: 'text/csv', size: 10 },
    });
    await vi.waitUntil(async () => (await page.getByLabel('Words with it').inputValue()) === '');
  });

  it('sends a sound as a voice note with a player, and one that cannot be played can be saved', async () => {
    await send('greeting.wav', 'audio/wav', silence());
    const sound = page.getByLabel('Voice note', { exact: true });
    await sound.waitFor();
    await page.waitForFunction(() => (document.querySelector('audio')?.readyState ?? 0) >= 1);
    expect(await sound.evaluate((element: HTMLAudioElement) => element.duration)).toBe(1);
    await send('greeting.ogg', 'audio/ogg', ogg({ seconds: 7 }));
    await page.getByText('This browser cannot play the voice note.').waitFor();
    expect((await newest())?.voice).toMatchObject({ mimeType: 'audio/ogg', duration: 7 });
    expect(await page.locator('.from-person').last().getByRole('link').count()).toBe(1);
  });

  it('sends a picture as a photo and a clip as a video, unless another way is chosen', async () => {
    await send('card.png', 'image/png', png(300, 200));
    await page.getByRole('button', { name: 'Enlarge. Picture', exact: true }).waitFor();
    expect((await newest())?.photo).toMatchObject({ width: 300, height: 200 });
    await send('own.mp4', 'video/mp4', clip, 'Our own');
    await page.getByLabel('Video, 6 seconds: Our own').waitFor();
    const file = { name: 'card.png', mimeType: 'image/png', buffer: Buffer.from(png(300, 200)) };
    await page.getByLabel('File', { exact: true }).setInputFiles(file);
    expect(await kind()).toBe('photo');
    await page.getByLabel('Send it as').selectOption('a document');
    await page.getByRole('button', { name: 'Send the file' }).click();
    await page.getByRole('link', { name: 'Open card.png in a new tab' }).waitFor();
    expect((await newest())?.document?.fileName).toBe('card.png');
  });

  it('keeps what was chosen when it is refused, and says why', async () => {
    await send('empty.csv', 'text/csv', new Uint8Array(), 'Nothing in it');
    await page.getByRole('alert').getByText('empty file').waitFor();
    expect(await page.getByLabel('Words with it').inputValue()).toBe('Nothing in it');
    expect(complaints.splice(0).join()).toContain('400');
  });
});
