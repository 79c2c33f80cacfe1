import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { createClipMaker } from '../../bot/clip/index.ts';
import { createRandom } from '../../drills/index.ts';
import { flat, partClip } from '../bot/clip/support/frames.ts';
import {
  brightnessOf,
  differenceOf,
  type Screening,
  screen,
} from '../bot/clip/support/screening.ts';
import { launchBrowser } from '../rehearsal/support/browser.ts';

/**
 * What is played is decided by Chromium's own reader and decoders (npm package @sparticuz/chromium), against the pictures as they
 * were before coding. It stands for the players in phones, which are not at hand here.
 */
vi.setConfig({ testTimeout: 240_000, hookTimeout: 120_000 });

const maker = createClipMaker();
const input = partClip('mixed', 15);
const SECONDS = 3;
let browser: Browser;
let shown: Screening;
beforeAll(async () => {
  browser = await launchBrowser();
  shown = await screen(browser, await maker.make(input));
});
afterAll(async () => {
  await browser.close();
  await maker.close();
});

describe('a clip of fifteen cards in a browser', () => {
  it('lasts from the ready frame to the end of the last', () => {
    expect(shown.duration).toBe(input.frames.length * SECONDS);
  });

  it('shows the right card after each of 60 shuffled seeks', async () => {
    const sources = input.frames.map(({ picture }) => brightnessOf(picture));
    const random = createRandom('shuffled seeks');
    for (let i = 0; i < 60; i += 1) {
      const seconds = 0.02 + random.next() * (shown.duration - 0.04);
      const seen = await shown.seek(seconds);
      const differences = sources.map((source) => differenceOf(source, seen));
      const nearest = differences.indexOf(Math.min(...differences));
      expect([seconds, nearest]).toEqual([seconds, Math.floor(seconds / SECONDS)]);
      expect(differences[nearest]).toBeLessThan(4);
    }
  });

  it.each([1, 4, 11])(
    'shows card %i the same, pixel for pixel, as long as it stays',
    async (card) => {
      const begin = card * SECONDS;
      const first = await shown.seek(begin + 0.1);
      for (const later of [0.6, 1.6, 2.9]) {
        expect(Buffer.from(first).equals(await shown.seek(begin + later))).toBe(true);
      }
    },
  );

  it('sounds at each change of card and is silent in between', async () => {
    const samples = await shown.listen();
    const loud = (from: number, to: number) =>
      samples
        .slice(from * 16_000, to * 16_000)
        .reduce((most, each) => Math.max(most, Math.abs(each)), 0);
    for (let frame = 1; frame < input.frames.length; frame += 1) {
      const change = frame * SECONDS;
      expect(loud(change - 0.1, change + 0.2)).toBeGreaterThan(0.05);
      expect(loud(change + 0.3, change + SECONDS - 0.2)).toBeLessThan(0.005);
    }
    expect(loud(0, 2.5)).toBeLessThan(0.005);
  });
});

it.each([16, 90, 128, 200, 255])('a flat grey of %i is shown as bright as it was', async (grey) => {
  const clip = await maker.make({
    frames: [{ picture: flat(grey), seconds: 2 }],
    sound: 'none-but-silent',
  });
  const plain = await screen(browser, clip);
  expect(differenceOf(brightnessOf(flat(grey)), await plain.seek(1))).toBeLessThan(3);
  await plain.close();
});
