import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { complaintsOf, launchBrowser } from './support/browser.ts';
import { createStage, MAYA, openBoth, type Stage } from './support/stage.ts';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

let browser: Browser;
let stage: Stage;
let page: Page;
let complaints: string[];
beforeAll(async () => {
  [browser, stage] = await Promise.all([
    launchBrowser(),
    createStage({ timeZone: 'Europe/London' }),
  ]);
  await openBoth(stage);
  for (let i = 1; i <= 30; i += 1) await stage.bot.api.sendMessage(MAYA, `Message ${i}`);
  page = await browser.newPage({ viewport: { width: 360, height: 740 } });
  complaints = complaintsOf(page, stage.rehearsal.url);
  await page.goto(`${stage.rehearsal.url}/#${MAYA}`);
  await page.getByText('Message 30', { exact: true }).waitFor();
});
afterAll(async () => {
  await browser.close();
  await stage.rehearsal.close();
});

const below = () => page.getByRole('button', { name: 'New message below' });

/** How far the reader is from the end, in pixels; asked when the page has come to rest. */
const distance = () =>
  page.locator('.chat').evaluate(
    (list) =>
      new Promise<number>((resolve) => {
        const read = () => resolve(list.scrollHeight - list.scrollTop - list.clientHeight);
        requestAnimationFrame(() => requestAnimationFrame(read));
      }),
  );

const scrollUp = () =>
  page.locator('.chat').evaluate(
    (list) =>
      new Promise((resolve) => {
        list.addEventListener('scroll', resolve, { once: true });
        list.scrollTop = 0;
      }),
  );

describe('the end of a long chat', () => {
  it('is where the reader begins, and is followed while the reader is there', async () => {
    expect(await distance()).toBeLessThan(2);
    await stage.bot.api.sendMessage(MAYA, 'The newest');
    await page.getByText('The newest', { exact: true }).waitFor();
    expect(await distance()).toBeLessThan(2);
    expect(await below().count()).toBe(0);
  });

  it('stays in sight when what is unfolded below makes the chat smaller', async () => {
    const height = () => page.locator('.chat').evaluate((list) => list.clientHeight);
    const before = await height();
    await page.getByText('Send a file').click();
    await vi.waitUntil(async () => (await height()) < before);
    expect(await distance()).toBeLessThan(2);
    await page.getByText('Send a file').click();
    await vi.waitUntil(async () => (await height()) === before);
    expect(await distance()).toBeLessThan(2);
  });

  it('is told of and one tap away while the reader is further up', async () => {
    await scrollUp();
    expect(await below().count()).toBe(0);
    await stage.bot.api.sendMessage(MAYA, 'One more');
    await below().click();
    expect(await distance()).toBeLessThan(2);
    await below().waitFor({ state: 'hidden' });
    expect(await page.evaluate(() => document.activeElement?.className)).toBe('chat');
  });

  it('is not told of for a message that only changed', async () => {
    await scrollUp();
    const last = (await stage.client.chat(MAYA)).at(-1)?.id ?? 0;
    await stage.bot.api.editMessageText(MAYA, last, 'Changed');
    await page.getByText('Changed', { exact: true }).waitFor();
    expect(await below().count()).toBe(0);
    expect(complaints).toEqual([]);
  });
});
