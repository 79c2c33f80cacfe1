import { InputFile } from 'grammy';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { complaintsOf, launchBrowser } from './support/browser.ts';
import { png } from './support/png.ts';
import { buttons, createStage, MAYA, START, type Stage, TOBI } from './support/stage.ts';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });
const WIDTHS = [360, 1280];

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** A tiny bot: a card with a picture, whose button turns it into the next one. */
function installBot({ bot }: Stage): void {
  bot.command('start', (ctx) =>
    ctx.replyWithPhoto(new InputFile(png(320, 200)), {
      caption: 'Card 1 of 2',
      reply_markup: START,
    }),
  );
  bot.callbackQuery('v1:start', async (ctx) => {
    await ctx.editMessageCaption({
      caption: 'Card 2 of 2',
      reply_markup: buttons([{ text: 'Got it', callback_data: 'v1:got' }]),
    });
    await ctx.answerCallbackQuery({ text: 'Well said' });
  });
  bot.callbackQuery('v1:got', (ctx) =>
    ctx.answerCallbackQuery({ text: 'Finished', show_alert: true }),
  );
  bot.command('link', (ctx) => ctx.reply('Join: https://t.me/harbour_lane_bot?start=otto'));
}

let stage: Stage;
let running: Promise<void>;
let page: Page;
let complaints: string[];

/** Before each test: the bot runs, Maya has her first card, the page shows it. */
function useOpenPage(width: number): void {
  beforeEach(async () => {
    stage = await createStage({ timeZone: 'Europe/London' });
    installBot(stage);
    await stage.bot.api.setMyCommands([{ command: 'start', description: 'Begin' }]);
    running = stage.bot.start();
    await stage.client.say(MAYA, '/start');
    page = await browser.newPage({ viewport: { width, height: 900 } });
    complaints = complaintsOf(page, stage.rehearsal.url);
    await page.goto(stage.rehearsal.url);
    await page.getByText('Card 1 of 2').waitFor();
  });

  afterEach(async () => {
    await page.close();
    await stage.bot.stop();
    await running;
    await stage.rehearsal.close();
  });
}

describe.each(WIDTHS)('a phone on the page at %i px', (width) => {
  useOpenPage(width);

  it('says that it is a rehearsal, and what time it is', async () => {
    expect(await page.locator('#notice').textContent()).toContain('Nothing leaves this computer');
    expect(await page.locator('.now').textContent()).toBe('It is Monday 7 September 2026, 18:30');
    expect(complaints).toEqual([]);
  });

  it('a button is tapped by keyboard and keeps the focus', async () => {
    await page.getByRole('button', { name: 'Start', exact: true }).focus();
    await page.keyboard.press('Enter');
    await page.getByText('Card 2 of 2').waitFor();
    await page.getByRole('status').getByText('Well said').waitFor();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Got it');
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').getByText('Finished').waitFor();
    await page.keyboard.press('Escape');
    expect(complaints).toEqual([]);
  });

  it('a picture is shown and can be enlarged', async () => {
    const picture = page.getByRole('button', { name: 'Enlarge. Picture: Card 1 of 2' });
    expect(
      await picture
        .locator('img')
        .evaluate((image: HTMLImageElement) => image.decode().then(() => image.naturalWidth)),
    ).toBe(320);
    await picture.click();
    await page.getByRole('dialog', { name: 'Picture' }).waitFor();
    expect(complaints).toEqual([]);
  });
});

describe.each(WIDTHS)('the desk at %i px', (width) => {
  useOpenPage(width);

  it('a link of the bot opens on the phone that is chosen', async () => {
    await stage.client.say(MAYA, '/link');
    await page
      .getByLabel('Phone to open the link on')
      .selectOption({ label: "Tobi, Otto's helper" });
    await page.getByRole('button', { name: 'Open it' }).click();
    await page.getByRole('button', { name: /^Tobi.*new/ }).waitFor();
    expect((await stage.client.chat(TOBI))[0]?.text).toBe('/start otto');
    expect(complaints).toEqual([]);
  });

  it('the clock moves with its buttons', async () => {
    await page.getByRole('button', { name: 'Go to nudge time 19:00' }).click();
    await page.getByText('It is Monday 7 September 2026, 19:00').waitFor();
    await page.getByRole('button', { name: 'Next day' }).click();
    await page.getByText('It is Tuesday 8 September 2026, 19:00').waitFor();
    expect(complaints).toEqual([]);
  });

  it('fits its width and has no control smaller than 24 px', async () => {
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
    ).toBeLessThanOrEqual(0);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('button, input, select, summary')].flatMap((control) => {
        const { width: w, height: h } = control.getBoundingClientRect();
        return w > 0 && (w < 24 || h < 24) ? [`${control.textContent} ${w}x${h}`] : [];
      }),
    );
    expect(small).toEqual([]);
  });
});
