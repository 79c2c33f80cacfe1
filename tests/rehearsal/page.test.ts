import { InputFile } from 'grammy';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { axeFindings, overflowOf, smallControls } from '../support/browser-checks.ts';
import { complaintsOf, launchBrowser } from './support/browser.ts';
import { png } from './support/png.ts';
import { buttons, createStage, MAYA, START, type Stage, TOBI } from './support/stage.ts';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });
const INES = 4103;
const ROBIN = 7001;

let browser: Browser;
let stage: Stage;
let running: Promise<void>;
let page: Page;
let complaints: string[];

/** A tiny bot: a card with a picture, whose button turns it into the next one. */
function installBot({ bot }: Stage): void {
  bot.command('start', async (ctx) => {
    if (ctx.match !== '') return void (await ctx.reply(`You joined with ${ctx.match}`));
    await ctx.replyWithPhoto(new InputFile(png(320, 200)), {
      caption: 'Card 1 of 2',
      reply_markup: START,
    });
  });
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

beforeAll(async () => {
  [browser, stage] = await Promise.all([
    launchBrowser(),
    createStage({ timeZone: 'Europe/London' }),
  ]);
  installBot(stage);
  await stage.client.addAccount({ id: INES, name: 'Ines', note: "Pip's helper" });
  await stage.bot.api.setMyCommands([{ command: 'start', description: 'Begin' }]);
  running = stage.bot.start();
  await stage.client.say(MAYA, '/start');
  page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  complaints = complaintsOf(page, stage.rehearsal.url);
  await page.goto(stage.rehearsal.url);
});
afterEach(() => expect(complaints.splice(0)).toEqual([]));
afterAll(async () => {
  await browser.close();
  await stage.bot.stop();
  await running;
  await stage.rehearsal.close();
});

const phone = (name: string) => page.getByRole('region', { name });
const button = (name: string | RegExp) => page.getByRole('button', { name, exact: true });
const focused = () => page.evaluate(() => document.activeElement?.textContent);

/** Which phones lie on the desk, from left to right. */
const onDesk = () => page.locator('.phone:visible h2').allTextContents();

describe('a phone on the page', () => {
  it('stands below the words that say it is a rehearsal', async () => {
    await page.getByText('Card 1 of 2').waitFor();
    const notice = page.locator('#notice');
    expect(await notice.isVisible()).toBe(true);
    expect(await notice.textContent()).toContain('Rehearsal.');
    expect(await notice.textContent()).toContain('Nothing leaves this computer.');
    expect(await page.title()).toContain('Rehearsal');
  });

  it('shows a picture, which can be enlarged', async () => {
    const picture = button('Enlarge. Picture: Card 1 of 2');
    const width = await picture
      .locator('img')
      .evaluate((image: HTMLImageElement) => image.decode().then(() => image.naturalWidth));
    expect(width).toBe(320);
    await picture.click();
    await page.getByRole('dialog', { name: 'Picture' }).waitFor();
    await page.keyboard.press('Escape');
  });

  it('has its buttons tapped by keyboard, keeps the focus and reads out what changed', async () => {
    await button('Start').focus();
    await page.keyboard.press('Enter');
    await phone('Maya').getByRole('status').getByText('Well said').waitFor();
    await button('Got it').waitFor();
    expect(await focused()).toBe('Got it');
    expect(await page.locator('.heard[aria-live]').textContent()).toBe(
      'Maya sees: Picture: Card 2 of 2',
    );
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').getByText('Finished').waitFor();
    await page.keyboard.press('Escape');
  });

  it('opens a link of the bot on the phone that is chosen, and shows it there', async () => {
    await page.getByLabel('Write as Maya').fill('/link');
    await page.keyboard.press('Enter');
    await page.getByLabel('Phone to open the link on').selectOption("Tobi, Otto's helper");
    await button('Open it').click();
    await phone('Tobi').getByText('You joined with otto').waitFor();
    expect((await stage.client.chat(TOBI))[0]?.text).toBe('/start otto');
    expect(await onDesk()).toEqual(["MayaWren's helper", "TobiOtto's helper"]);
  });
});

describe('joining with a slip', () => {
  it.each([
    ['a link as it is printed', 't.me/harbour_lane_bot?start=F4GJ', 'F4GJ'],
    ['a code with its gaps', 'F4GJ NG31 TARW', 'F4GJNG31TARW'],
    ['a link among other words', 'Otto: https://t.me/harbour_lane_bot?start=ab-1 tonight', 'ab-1'],
  ])('takes %s', async (_, typed, payload) => {
    await button(/^Tobi/).click();
    const more = phone('Tobi').locator('details', { hasText: 'Join or block' });
    if ((await more.getAttribute('open')) === null) await more.locator('summary').click();
    const slip = page.getByLabel('Join with a slip');
    await slip.fill(typed);
    await slip.press('Enter');
    await phone('Tobi').getByText(`You joined with ${payload}`, { exact: true }).waitFor();
  });

  it('is offered first on a phone that has not opened the chat; a link to elsewhere is refused in words', async () => {
    await page.getByText('New phone').click();
    await page.getByLabel('Name').fill('Robin’s helper');
    await page.keyboard.press('Enter');
    const robin = phone('Robin’s helper');
    const slip = robin.getByLabel('Join with a slip');
    await slip.fill('https://t.me/another_bot?start=F4GJ');
    await slip.press('Enter');
    await page.getByRole('alert').getByText('Not a link to this bot').waitFor();
    expect(await slip.inputValue()).toBe('https://t.me/another_bot?start=F4GJ');
    await slip.fill('F4GJ');
    await slip.press('Enter');
    await robin.getByText('You joined with F4GJ', { exact: true }).waitFor();
    expect(await page.getByRole('alert').count()).toBe(0);
    expect((await stage.client.chat(ROBIN)).length).toBe(2);
    // The browser notes each refusal by itself.
    expect(complaints.splice(0).join()).toContain('400');
  });
});

describe('phones side by side', () => {
  it('are up to four, stay after a reload and are put away', async () => {
    await button(/^Maya/).click();
    for (const name of ['Tobi', 'Ines', 'Robin’s helper']) await button(`Beside: ${name}`).click();
    await phone('Robin’s helper').waitFor();
    const all = ["MayaWren's helper", "TobiOtto's helper", "InesPip's helper", 'Robin’s helper'];
    expect(await onDesk()).toEqual(all);
    await page.reload();
    await phone('Robin’s helper').waitFor();
    expect(await onDesk()).toEqual(all);
    await button('Put away: Maya').click();
    await phone('Maya').waitFor({ state: 'detached' });
    expect(await onDesk()).toEqual(all.slice(1));
  });

  it('each block the bot and let it in again', async () => {
    await phone('Tobi').getByText('Join or block').click();
    await phone('Tobi').getByRole('button', { name: 'Block the bot', exact: true }).click();
    await button('Unblock the bot').waitFor();
    await button(/^Tobi.*has blocked the bot/).waitFor();
    await expect(stage.bot.api.sendMessage(TOBI, 'Hello')).rejects.toThrow('blocked');
    await button('Unblock the bot').click();
    await page.getByLabel('Write as Tobi').waitFor();
  });

  it('hold nothing axe-core objects to', async () => {
    expect(await axeFindings(page)).toEqual([]);
    expect(await smallControls(page)).toEqual([]);
    expect(await overflowOf(page)).toBe(0);
  });
});

describe('at a phone’s own width', () => {
  it('the list comes first; the phone chosen takes its place and the focus', async () => {
    await page.setViewportSize({ width: 360, height: 740 });
    await page.goto(`${stage.rehearsal.url}/#`);
    await button(/^Maya/).waitFor();
    expect(await onDesk()).toEqual([]);
    expect(await axeFindings(page)).toEqual([]);
    await button(/^Maya/).click();
    await phone('Maya').waitFor();
    expect(await onDesk()).toEqual(["MayaWren's helper"]);
    expect(await page.getByRole('navigation').isVisible()).toBe(false);
    expect(await focused()).toBe("MayaWren's helper");
  });

  it('chat and composer fit the window, and axe-core finds nothing', async () => {
    const composer = await button('Send').boundingBox();
    expect((composer?.y ?? 740) + (composer?.height ?? 0)).toBeLessThan(740);
    expect(await overflowOf(page)).toBe(0);
    expect(await smallControls(page)).toEqual([]);
    expect(await axeFindings(page)).toEqual([]);
  });

  it('what is new elsewhere is told, and the browser’s way back leads to the list', async () => {
    await stage.bot.api.sendMessage(ROBIN, 'Good evening');
    await button('Phones (1 new)').waitFor();
    await page.goBack();
    await button(/^Robin’s helper 1 new/).waitFor();
    expect(await focused()).toContain('Maya');
    await button(/^Robin/).click();
    await phone('Robin’s helper').getByText('Good evening', { exact: true }).waitFor();
    await button('Phones').click();
    await button(/^Robin’s helper$/).waitFor();
  });

  it('a name of one long word is broken, in the list and on the phone', async () => {
    const name = 'Kingfisher'.repeat(6);
    await stage.client.addAccount({ id: ROBIN + 1, name, note: 'otter'.repeat(25) });
    await stage.client.say(ROBIN + 1, '/start');
    await button(new RegExp(`^${name}`)).waitFor();
    expect(await overflowOf(page)).toBe(0);
    await button(new RegExp(`^${name}`)).click();
    await page.getByLabel(`Write as ${name}`).waitFor();
    expect(await overflowOf(page)).toBe(0);
  });
});
