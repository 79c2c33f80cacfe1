import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { readConfig } from '../../bot/roots/config.ts';
import { createLog } from '../../bot/roots/log.ts';
import { runRehearsal } from '../../bot/roots/run-rehearsal.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { launchBrowser } from '../rehearsal/support/browser.ts';

/**
 * Plays a Friday of the demo class on the rehearsal page and keeps what is seen, at the width of a phone and of a desk:
 * `npm run screens`, or with a folder to write to.
 */
const FOLDER =
  process.argv[2] ?? fileURLToPath(new URL('../../artefacts/screens', import.meta.url));
const FRIDAY = '2026-09-18T15:00:00Z';
const PHONE = { width: 360, height: 740 };
const DESK = { width: 1280, height: 900 };
const WALL = { width: 1920, height: 1000 };
const TEACHER = 1001;
const PIP = 2005;

/** The page with what this script does on it again and again. */
function handsOn(page: Page, url: string) {
  const tap = (name: string | RegExp) =>
    page.getByRole('button', { name, exact: true }).last().click();
  return {
    tap,
    see: (text: string | RegExp) => page.locator('.phone:visible').getByText(text).last().waitFor(),
    moveTo: async (stop: string) => {
      const moves = page.getByText('Move the clock');
      if (await moves.isVisible()) await moves.click();
      await tap(new RegExp(`^Go to the next ${stop}`));
      await page.getByText(/^Moved to /).waitFor({ state: 'attached', timeout: 120_000 });
      if (await moves.isVisible()) await moves.click();
    },
    show: async (size: typeof PHONE, ids: readonly number[]) => {
      await page.setViewportSize(size);
      await page.goto(`${url}/#${ids.join(',')}`);
    },
    keep: async (name: string, fullPage = false) => {
      // A picture or the first frame of a clip may still be on its way.
      await page.waitForLoadState('networkidle', { timeout: 3000 }).catch(() => {});
      await page.mouse.move(0, 0);
      await page.evaluate(() => scrollTo(0, 0));
      await page.screenshot({ path: join(FOLDER, `${name}.png`), fullPage });
    },
  };
}

type Hands = ReturnType<typeof handsOn>;

async function playFamily(page: Page, { tap, see, moveTo, show, keep }: Hands): Promise<void> {
  await show(PHONE, []);
  await keep('phone-01-list');
  await page.getByText('New phone').click();
  await page.getByLabel('Name').fill('Robin’s helper');
  await page.keyboard.press('Enter');
  await see('has not opened this chat yet');
  await keep('phone-02-slip');
  await show(PHONE, [PIP]);
  await moveTo('evening');
  await see(BUTTONS.start);
  await keep('phone-03-evening');
  await tap(BUTTONS.start);
  await see(/Part 1 of/);
  await keep('phone-04-part');
  await tap(BUTTONS.someMissed);
  await tap(/^2\. /);
  await see(/^✗ 2\. /);
  await keep('phone-05-marking');
  await page.getByText('Send a file').click();
  await keep('phone-06-file', true);
}

async function playTeacher(page: Page, { see, moveTo, show, keep }: Hands): Promise<void> {
  await show(DESK, [TEACHER, PIP]);
  await keep('desk-01-evening');
  await moveTo('nudge time');
  await show(DESK, [2003, 2004]);
  await see('Still time');
  await keep('desk-02-nudge');
  await moveTo('digest');
  await show(DESK, [TEACHER]);
  await see(/^Open digest/);
  await keep('desk-03-digest');
  await show(PHONE, [TEACHER]);
  await see(/^Open digest/);
  await keep('phone-07-digest');
  await show(WALL, [TEACHER, PIP, 2003, 2007]);
  await see('Still time');
  await keep('wall-01-four-phones');
  await page.getByText('Faults on purpose').click();
  await page.getByLabel('What goes wrong').selectOption('a 502 page instead of an answer');
  await page.getByRole('button', { name: 'Let it go wrong' }).click();
  await page.getByText('Network log').click();
  await page.getByRole('row').nth(3).waitFor();
  await keep('wall-02-tools', true);
}

async function main(): Promise<void> {
  await mkdir(FOLDER, { recursive: true });
  const dataDir = await mkdtemp(join(tmpdir(), 'suppersums-screens-'));
  const config = readConfig({ DATA_DIR: dataDir, PORT: '0', CLOCK_START: FRIDAY });
  if (config.mode !== 'rehearsal') throw new Error('no token was given, so this is a rehearsal');
  const service = await runRehearsal(config, createLog('error'), 'Europe/London');
  const browser = await launchBrowser();
  try {
    await service.app.start(() => {});
    const page = await browser.newPage();
    const hands = handsOn(page, /http:\/\/\S+/.exec(service.welcome)?.[0] ?? '');
    await playFamily(page, hands);
    await playTeacher(page, hands);
  } finally {
    await browser.close();
    await service.stop();
    await rm(dataDir, { recursive: true, force: true });
  }
  process.stdout.write(`Screens are in ${FOLDER}\n`);
}

// Senders that wait for their turn would keep the process alive.
await main().then(() => process.exit(0));
