import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import type { Overview } from '../../rehearsal/phone-api/views.ts';
import type { Stop } from '../../rehearsal/server.ts';
import { axeFindings } from '../support/browser-checks.ts';
import { complaintsOf, launchBrowser } from './support/browser.ts';
import { createStage, createTestClock, MAYA, openBoth, type Stage } from './support/stage.ts';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });
const clock = createTestClock();
/** Where the clock was moved to, in order. */
const moves: string[] = [];
/** Called while the clock moves. */
let whileMoving = async (): Promise<void> => {};

/** A bot's evening at 18:30 in London each day, and its digest on Fridays at 20:00. */
function stops(): Stop[] {
  const at = (hour: number, minute: number, isDay: (day: Date) => boolean): Date => {
    const day = new Date(clock.now());
    day.setUTCHours(hour - 1, minute, 0, 0);
    while (day <= clock.now() || !isDay(day)) day.setUTCDate(day.getUTCDate() + 1);
    return day;
  };
  return [
    {
      id: 'digest',
      label: 'the next digest',
      at: at(20, 0, (day) => day.getUTCDay() === 5),
      endsWeek: true,
    },
    { id: 'evening', label: 'the next evening', at: at(18, 30, () => true) },
  ];
}

let browser: Browser;
let stage: Stage;
let page: Page;
let complaints: string[];
beforeAll(async () => {
  const control = {
    now: clock.now,
    moveTo: async (instant: Date) => {
      clock.set(instant);
      moves.push(instant.toISOString());
      await whileMoving();
    },
    stops: async () => stops(),
  };
  [browser, stage] = await Promise.all([
    launchBrowser(),
    createStage({ clock, control, timeZone: 'Europe/London' }),
  ]);
  await openBoth(stage);
  page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  complaints = complaintsOf(page, stage.rehearsal.url);
  await page.goto(stage.rehearsal.url);
});
afterEach(() => expect(complaints.splice(0)).toEqual([]));
afterAll(async () => {
  await browser.close();
  await stage.rehearsal.close();
});

const button = (name: string | RegExp) => page.getByRole('button', { name, exact: true });
const itIs = (words: string) =>
  page.locator('.now').getByText(`It is ${words}`, { exact: true }).waitFor();

describe('the clock bar', () => {
  it('says what time it is, and of each button to which day and time it goes', async () => {
    await itIs('Monday 7 September 2026, 18:30');
    const labels = await page.locator('.stops button').allTextContents();
    expect(labels).toEqual([
      'Go to the next digest Fri 11 Sept, 20:00',
      'Go to the next evening Tue 8 Sept, 18:30',
      'Run the week',
      '+30 min',
      '+1 day',
    ]);
  });

  it('moves the clock, keeps the focus and names the next stop anew', async () => {
    await button('Go to the next evening Tue 8 Sept, 18:30').focus();
    await page.keyboard.press('Enter');
    await itIs('Tuesday 8 September 2026, 18:30');
    await button('Go to the next evening Wed 9 Sept, 18:30').waitFor();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(
      'Go to the next evening Wed 9 Sept, 18:30',
    );
    await button('+30 min').click();
    await itIs('Tuesday 8 September 2026, 19:00');
    await button('+1 day').click();
    await itIs('Wednesday 9 September 2026, 19:00');
  });

  it('runs the week from stop to stop up to its end, and no further', async () => {
    moves.length = 0;
    await button('Run the week').click();
    await itIs('Friday 11 September 2026, 20:00');
    await button('Go to the next digest Fri 18 Sept, 20:00').waitFor();
    await page.getByText('Moved to Friday 11 September 2026, 20:00.').waitFor();
    expect(moves).toEqual([
      '2026-09-10T17:30:00.000Z',
      '2026-09-11T17:30:00.000Z',
      '2026-09-11T19:00:00.000Z',
    ]);
  });

  it('stops a running week where it is told to', async () => {
    moves.length = 0;
    whileMoving = () => button('Stop here').click();
    await button('Run the week').click();
    await page.getByText('Moved to Saturday 12 September 2026, 18:30.').waitFor();
    whileMoving = async () => {};
    expect(moves).toHaveLength(1);
    expect(await button('Stop here').count()).toBe(0);
  });
});

describe('faults on purpose', () => {
  const overview = (): Promise<Overview> =>
    fetch(`${stage.rehearsal.url}/rehearsal/overview`).then((answer) => answer.json());
  const waiting = () => page.locator('.waiting').textContent();
  const setFault = async (what: string, calls: string) => {
    await page.getByLabel('What goes wrong').selectOption(what);
    await page.getByLabel('With which calls of the bot').selectOption(calls);
    await button('Let it go wrong').click();
  };

  it('are set, listed, strike and are gone', async () => {
    await page.getByText('Faults on purpose').click();
    await page.getByText('Nothing is set to go wrong.').waitFor();
    await setFault('a 502 page instead of an answer', 'sendMessage');
    await page.getByText('The next sendMessage call: a 502 page instead').waitFor();
    await expect(stage.bot.api.sendMessage(MAYA, 'Lost')).rejects.toThrow();
    await page.getByText('Nothing is set to go wrong.').waitFor();
    await stage.bot.api.sendMessage(MAYA, 'Arrived');
    await page.getByText('Arrived', { exact: true }).waitFor();
    expect(await page.getByText('Lost', { exact: true }).count()).toBe(0);
  });

  it('are taken back before they strike', async () => {
    await page.getByLabel('How many times').fill('3');
    await setFault('the line is cut before the call is applied', 'any call, also one for updates');
    await page.getByText('The next 3 calls: the line is cut before').waitFor();
    await button('Let all go well').click();
    await page.getByText('Nothing is set to go wrong.').waitFor();
    await stage.bot.api.sendMessage(MAYA, 'Went well');
    expect(await waiting()).toBe('Nothing is set to go wrong.');
  });

  it('cover the service’s rate limits', async () => {
    await page.getByLabel('Refuse calls that come too fast').check();
    const answers = await Promise.allSettled(
      Array.from({ length: 25 }, (_, i) => stage.bot.api.sendMessage(MAYA, `Fast ${i}`)),
    );
    expect(answers.some(({ status }) => status === 'rejected')).toBe(true);
    await page.getByLabel('Refuse calls that come too fast').uncheck();
    await vi.waitUntil(async () => !(await overview()).limited);
  });
});

describe('the network log', () => {
  it('shows what the bot called, for whom, with what answer and how long it took', async () => {
    await page.getByText('Network log').click();
    const row = page.getByRole('row', { name: /Arrived/ });
    await row.waitFor();
    const cells = await row.getByRole('cell').allTextContents();
    expect(cells.slice(0, 4)).toEqual(['Sat 12 Sept, 18:30', 'sendMessage', '200', 'Maya']);
    expect(cells[4]).toMatch(/^\d+ ms$/);
    expect(JSON.parse(cells[5] ?? '')).toMatchObject({ chat_id: MAYA, text: 'Arrived' });
  });

  it('unfolds a long call, which stays unfolded when others come', async () => {
    const text = 'Long '.repeat(60).trim();
    await stage.bot.api.sendMessage(MAYA, text);
    const long = page.locator('tr', { hasText: 'Long' });
    await long.locator('summary').click();
    await stage.bot.api.sendMessage(MAYA, 'After it');
    await page.getByRole('row', { name: /After it/ }).waitFor();
    expect(JSON.parse((await long.locator('pre').textContent()) ?? '')).toMatchObject({ text });
    expect(await long.locator('pre').isVisible()).toBe(true);
  });

  it('shows only what failed when asked to', async () => {
    await page.getByLabel('Only what failed').check();
    await page.getByRole('row', { name: /Arrived/ }).waitFor({ state: 'detached' });
    const failed = page.getByRole('row', { name: /Lost/ });
    expect((await failed.getByRole('cell').allTextContents())[2]).toBe('502');
    // It changes nothing but the log.
    await expect(stage.bot.api.sendMessage(999, 'Refused')).rejects.toThrow('chat not found');
    await page.getByRole('row', { name: /Refused/ }).waitFor();
  });

  it('holds, with all panels open, nothing axe-core objects to', async () => {
    expect(await axeFindings(page)).toEqual([]);
  });
});
