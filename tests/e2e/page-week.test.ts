import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { addBreak, type TeacherScope } from '../../db/index.ts';
import { complaintsOf, launchBrowser } from '../rehearsal/support/browser.ts';
import { axeFindings, overflowOf, smallControls } from '../support/browser-checks.ts';
import { type BrowserWorld, openBrowserWorld } from '../support/browser-world.ts';
import { makeSmallClass } from '../support/small-class.ts';
import { day } from '../support/term.ts';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });
const WIDE = { width: 1280, height: 900 };
const NARROW = { width: 360, height: 740 };
const TEACHER = 1001;
/** Asked for in every nudge. */
const STILL_TIME = /Still time/;

// Friday 18 September 2026, British Summer Time: evening, nudge and digest of one day.
let world: BrowserWorld;
let browser: Browser;
let page: Page;
let complaints: string[];
let scope: TeacherScope;
/** Wren's link as a slip has it in print. */
let slip: string;

beforeAll(async () => {
  [world, browser] = await Promise.all([
    openBrowserWorld('2026-09-18T16:25:00Z', 'Europe/London'),
    launchBrowser(),
  ]);
  const title = 'Kingfisher class, Harbour Lane School';
  const school = await makeSmallClass(world, ['Wren'], { title });
  scope = school.scope;
  slip = (school.links.get('Wren') ?? '').replace('https://', '');
  await world.run();
  page = await browser.newPage({ viewport: NARROW });
  complaints = complaintsOf(page, world.rehearsal.url);
  await page.goto(world.rehearsal.url);
});
afterEach(() => expect(complaints.splice(0)).toEqual([]));
afterAll(async () => {
  await browser.close();
  await world.close();
});

const button = (name: string | RegExp) => page.getByRole('button', { name, exact: true });
const newest = () => page.locator('.phone:visible .entry').last();
const says = (text: string | RegExp) => newest().getByText(text).first().waitFor();

async function moveTo(stop: string): Promise<void> {
  const moves = page.getByText('Move the clock');
  if (await moves.isVisible()) await moves.click();
  await button(new RegExp(`^Go to ${stop}`)).click();
  await page.getByText(/^Moved to /).waitFor();
  if (await moves.isVisible()) await moves.click();
}

/** What is wrong with the page as it stands. */
async function flaws(): Promise<unknown[]> {
  const found: unknown[] = [...(await axeFindings(page)), ...(await smallControls(page))];
  const overflow = await overflowOf(page);
  return overflow > 0 ? [...found, `${overflow} px too wide`] : found;
}

describe('a family at the width of a phone', () => {
  it('joins with its slip', async () => {
    await page.getByText('New phone').click();
    await page.getByLabel('Name').fill('Wren’s helper');
    await page.keyboard.press('Enter');
    await page.getByLabel('Join with a slip').fill(slip);
    await page.keyboard.press('Enter');
    await button(BUTTONS.agree).click();
    await says('You are Wren’s helper now');
  });

  it('is sent its evening, and a nudge when nobody has marked it', async () => {
    await moveTo('the next evening');
    await button(BUTTONS.start).waitFor();
    expect(await page.getByText(STILL_TIME).count()).toBe(0);
    await moveTo('the next nudge time');
    await says(STILL_TIME);
    await newest().getByRole('button', { name: BUTTONS.start, exact: true }).click();
    await says(/Part 1 of 2/);
  });

  it('watches the first part as a clip', async () => {
    const clip = newest().locator('video');
    await clip.waitFor();
    await page.waitForFunction(() => (document.querySelector('video')?.readyState ?? 0) >= 1);
    await clip.focus();
    await page.keyboard.press('Space');
    await page.waitForFunction(() => (document.querySelector('video')?.currentTime ?? 0) > 0);
    await page.keyboard.press('Space');
  });

  it('marks by taps, takes one back, and sees its result', async () => {
    await button(BUTTONS.someMissed).click();
    await button(/^1\. /).click();
    await button(/^2\. /).click();
    await button(/^✗ 2\. /).click();
    await button(/^2\. /).waitFor();
    await button(BUTTONS.done).click();
    await says(/Part 2 of 2/);
    await button(BUTTONS.allSaid).click();
    await says(/4 of 5/);
    expect(await flaws()).toEqual([]);
  });
});

describe('the teacher at the width of a desk', () => {
  it('is brought the digest, whose picture opens', async () => {
    await page.setViewportSize(WIDE);
    await moveTo('the next digest');
    await button(new RegExp(`^Beside: Phone ${TEACHER}`)).click();
    const link = page.getByRole('link', { name: /Open digest-.*\.png in a new tab/ });
    await link.waitFor();
    const opened = page.waitForEvent('popup');
    await link.click();
    const tab = await opened;
    await tab.waitForLoadState();
    expect(await tab.evaluate(() => document.images[0]?.naturalWidth)).toBeGreaterThan(720);
    await tab.close();
    await page.getByRole('link', { name: /^Save digest-.*\.csv/ }).waitFor();
  });

  it('is told the date of the digest after, beside what the family sees', async () => {
    await button(/^Go to the next digest Fri 25 Sept, 20:00$/).waitFor();
    expect(await page.locator('.phone:visible').count()).toBe(2);
    expect(await flaws()).toEqual([]);
    expect(world.logged.filter(({ level }) => level === 'error')).toEqual([]);
  });

  it('is offered no digest of a week off, and no school day in it', async () => {
    const off = { first: day('2026-09-21'), last: day('2026-09-25') };
    await addBreak(world.store, scope, { break: off, title: 'Week off', now: world.now() });
    const at = async (id: string) =>
      (await world.client.stops()).find((stop) => stop.id.startsWith(id))?.at.toISOString();
    expect(await at('digest')).toBe('2026-10-02T19:00:00.000Z');
    expect(await at('school-day')).toBe('2026-09-28T07:00:00.000Z');
    expect(await at('evening')).toBe('2026-09-28T16:30:00.000Z');
  });
});
