import { InputFile } from 'grammy';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { createClipMaker } from '../../bot/clip/index.ts';
import { flatClip } from '../bot/clip/support/frames.ts';
import { complaintsOf, launchBrowser } from './support/browser.ts';
import { mp4 } from './support/mp4.ts';
import { png } from './support/png.ts';
import { createStage, MAYA, openBoth, START, type Stage } from './support/stage.ts';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });
const WIDTHS = [360, 1280];

let browser: Browser;
let clip: Uint8Array;
beforeAll(async () => {
  const maker = createClipMaker();
  [browser, clip] = await Promise.all([launchBrowser(), maker.make(flatClip(40, 200, 120))]);
  await maker.close();
});
afterAll(() => browser.close());

let stage: Stage;
let page: Page;
let complaints: string[];

/** Before each test: the page shows Maya's phone, on which nothing happened yet but the start. */
function useOpenPage(width: number): void {
  beforeEach(async () => {
    stage = await createStage({ timeZone: 'Europe/London' });
    await openBoth(stage);
    page = await browser.newPage({ viewport: { width, height: 900 } });
    complaints = complaintsOf(page, stage.rehearsal.url);
    await page.goto(stage.rehearsal.url);
    await page.getByText('/start').first().waitFor();
  });

  afterEach(async () => {
    await page.close();
    await stage.rehearsal.close();
  });
}

async function sendClip(): Promise<number> {
  const file = new InputFile(clip, 'part 1.mp4');
  const options = { caption: 'Part 1', reply_markup: START };
  return (await stage.bot.api.sendVideo(MAYA, file, options)).message_id;
}

/** The clip on the page, once its length is known. */
async function readyClip(): Promise<Locator> {
  const video = page.getByLabel('Video, 6 seconds: Part 1');
  await video.waitFor();
  await page.waitForFunction(() => (document.querySelector('video')?.readyState ?? 0) >= 1);
  return video;
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

describe.each(WIDTHS)('a clip on the page at %i px', (width) => {
  useOpenPage(width);

  it('is in its place, with pause, seek bar and a name, and fits', async () => {
    await sendClip();
    const video = await readyClip();
    const shown = await video.evaluate((element: HTMLVideoElement) => ({
      controls: element.controls,
      inline: element.playsInline,
      preload: element.preload,
      autoplay: element.autoplay,
      duration: element.duration,
      size: [element.videoWidth, element.videoHeight],
      isSquare: Math.abs(element.clientWidth - element.clientHeight) <= 1,
    }));
    expect(shown).toEqual({
      controls: true,
      inline: true,
      preload: 'metadata',
      autoplay: false,
      duration: 6,
      size: [480, 480],
      isSquare: true,
    });
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
    ).toBeLessThanOrEqual(0);
    expect(complaints).toEqual([]);
  });

  it('plays, pauses and seeks by keyboard and by position', async () => {
    await sendClip();
    const video = await readyClip();
    await video.focus();
    await page.keyboard.press('Space');
    await page.waitForFunction(() => (document.querySelector('video')?.currentTime ?? 0) > 0);
    await page.keyboard.press('Space');
    expect(await video.evaluate((element: HTMLVideoElement) => element.paused)).toBe(true);
    expect(await seekTo(video, 5)).toBe(5);
    expect(await seekTo(video, 1.5)).toBe(1.5);
    expect(complaints).toEqual([]);
  });

  it('stays where it was and keeps the focus when caption and buttons change', async () => {
    const id = await sendClip();
    const video = await readyClip();
    await seekTo(video, 3);
    await video.focus();
    await stage.bot.api.editMessageCaption(MAYA, id, { caption: 'Part 1, to be marked' });
    const renamed = page.getByLabel('Video, 6 seconds: Part 1, to be marked');
    await renamed.waitFor();
    const kept = await renamed.evaluate((element: HTMLVideoElement) => [
      element.currentTime,
      document.activeElement === element,
    ]);
    expect(kept).toEqual([3, true]);
    expect(complaints).toEqual([]);
  });
});

describe.each(WIDTHS)('a broken clip on the page at %i px', (width) => {
  useOpenPage(width);

  it('gives way to a link that saves it', async () => {
    await stage.bot.api.sendVideo(MAYA, new InputFile(mp4(), 'odd.mp4'));
    await page.getByText('This browser cannot play the video.').waitFor();
    expect(await page.locator('video').count()).toBe(0);
    const saved = page.waitForEvent('download');
    await page.getByRole('link', { name: 'Save odd.mp4' }).click();
    expect((await saved).suggestedFilename()).toBe('odd.mp4');
  });
});

it('a player asks for a part of the file and gets it', async () => {
  const own = await createStage();
  await openBoth(own);
  await own.bot.api.sendVideo(MAYA, new InputFile(clip, 'part 1.mp4'));
  const other = await browser.newPage();
  const answers: [string | undefined, number][] = [];
  other.on('response', (answer) => {
    if (answer.url().includes('/rehearsal/files/'))
      answers.push([answer.request().headers().range, answer.status()]);
  });
  await other.goto(own.rehearsal.url);
  await other.getByLabel('Video, 6 seconds').waitFor();
  await other.waitForFunction(() => (document.querySelector('video')?.readyState ?? 0) >= 1);
  await other.close();
  await own.rehearsal.close();
  expect(answers[0]).toEqual(['bytes=0-', 206]);
});

describe.each(WIDTHS)('a document on the page at %i px', (width) => {
  useOpenPage(width);

  it('that is a picture has a preview and opens in a new tab', async () => {
    const file = new InputFile(png(900, 500), 'week 37.png');
    await stage.bot.api.sendDocument(MAYA, file);
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
    expect(complaints).toEqual([]);
  });

  it('that is a PDF opens in a new tab, and a table is only saved', async () => {
    await stage.bot.api.sendDocument(MAYA, new InputFile(Buffer.from('%PDF-1.7\n'), 'week.pdf'));
    await stage.bot.api.sendDocument(MAYA, new InputFile(Buffer.from('a,b'), 'week.csv'));
    const pdf = page.getByRole('link', { name: 'Open week.pdf in a new tab' });
    await pdf.waitFor();
    expect(await pdf.getAttribute('target')).toBe('_blank');
    await page.getByRole('link', { name: 'Save week.csv' }).waitFor();
    expect(await page.getByRole('link', { name: 'Open week.csv' }).count()).toBe(0);
    expect(await page.locator('.preview').count()).toBe(0);
  });
});

describe('the end of a long chat', () => {
  useOpenPage(360);
  const below = () => page.getByRole('button', { name: 'New message below' });
  const distance = () =>
    page
      .locator('.chat')
      .first()
      .evaluate((list) => list.scrollHeight - list.scrollTop - list.clientHeight);

  beforeEach(async () => {
    for (let i = 1; i <= 30; i += 1) await stage.bot.api.sendMessage(MAYA, `Message ${i}`);
    await page.getByText('Message 30', { exact: true }).waitFor();
  });

  it('is followed while the reader is there', async () => {
    await stage.bot.api.sendMessage(MAYA, 'The newest');
    await page.getByText('The newest').waitFor();
    expect(await distance()).toBeLessThan(2);
    expect(await below().count()).toBe(0);
  });

  it('is told of and one tap away while the reader is further up', async () => {
    await page
      .locator('.chat')
      .first()
      .evaluate(
        (list) =>
          new Promise((resolve) => {
            list.addEventListener('scroll', resolve, { once: true });
            list.scrollTop = 0;
          }),
      );
    expect(await below().count()).toBe(0);
    await stage.bot.api.sendMessage(MAYA, 'The newest');
    await below().click();
    expect(await distance()).toBeLessThan(2);
    await below().waitFor({ state: 'hidden' });
    expect(await page.evaluate(() => document.activeElement?.className)).toBe('chat');
    expect(complaints).toEqual([]);
  });

  it('is not told of for a message that only changed', async () => {
    const list = page.locator('.chat').first();
    await list.evaluate(
      (element) =>
        new Promise((resolve) => {
          element.addEventListener('scroll', resolve, { once: true });
          element.scrollTop = 0;
        }),
    );
    const last = (await stage.client.chat(MAYA)).at(-1)?.id ?? 0;
    await stage.bot.api.editMessageText(MAYA, last, 'Changed');
    await page.getByText('Changed', { exact: true }).waitFor();
    expect(await below().count()).toBe(0);
  });
});
