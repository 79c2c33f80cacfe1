import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createCanvas, loadImage } from '@napi-rs/canvas';
import type { Page } from 'playwright-core';
import { encodeIndexedPng } from '../../bot/media/png.ts';
import { DEMO_FAMILIES, DEMO_TEACHER, loadDemoClass } from '../../bot/roots/demo-class.ts';
import { habitOf, inventedChild } from '../../bot/roots/demo-families.ts';
import { Phone, type Player } from '../../bot/roots/phone.ts';
import { openStage, type Stage } from '../../bot/roots/stage.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { issueTeacherInvite } from '../../db/index.ts';
import { launchBrowser } from '../rehearsal/support/browser.ts';

/**
 * Plays what the teacher's page tells, and keeps the newest messages of a phone of the rehearsal page as pictures:
 * `npm run guide-pictures`, or with a folder to write to.
 */
const FOLDER =
  process.argv[2] ?? fileURLToPath(new URL('../../bot/guides/pictures', import.meta.url));
const NEWCOMER = 1100;
const PIP = 2005;
const ZONE = 'Europe/London';
const MOST_COLOURS = 32;

/** Which messages are kept: how many, and how many newer ones are left out. */
interface Part {
  readonly messages?: number;
  readonly newer?: number;
}

/** Keeps the newest message of a phone as a picture, or several, one above the other. */
type Keep = (name: string, phone: number, part?: Part) => Promise<void>;

async function main(): Promise<void> {
  await mkdir(FOLDER, { recursive: true });
  const stage = await openStage(new Date('2026-09-14T08:00:00Z'));
  const browser = await launchBrowser();
  try {
    const page = await browser.newPage({
      viewport: { width: 400, height: 900 },
      deviceScaleFactor: 1.5,
      timezoneId: ZONE,
      // The page allows no styles of others; ours take the rest of the chat out of sight.
      bypassCSP: true,
    });
    const keep: Keep = (name, phone, part = {}) =>
      keepMessages(page, `${stage.url}/#${phone}`, { name, messages: 1, newer: 0, ...part });
    await setUpClass(stage, keep);
    await loadDemoClass({ ...stage, zone: ZONE });
    await playWeek(stage);
    await readDigest(stage, keep);
    await openSettings(stage, keep);
  } finally {
    await browser.close();
    await stage.close();
  }
  process.stdout.write(`Pictures are in ${FOLDER}\n`);
}

async function keepMessages(
  page: Page,
  url: string,
  { name, messages, newer }: Required<Part> & { name: string },
): Promise<void> {
  // Another address first: going to a mark on the same page would not read it anew.
  await page.goto('about:blank');
  await page.goto(url);
  const entries = page.locator('.phone:visible .chat > .entry');
  await entries.last().waitFor();
  await page.waitForLoadState('networkidle', { timeout: 3000 }).catch(() => {});
  const all = await entries.count();
  // The rest of the chat is taken out of sight, so that the list is as high as what is kept.
  await page.addStyleTag({
    content: `.phone .chat { position: static; overflow: visible } .phone { height: auto }
      .notice, .top, .margin small { display: none }
      .phone .entry:nth-child(-n + ${all - messages - newer}) { display: none }
      .phone .entry:nth-last-child(-n + ${newer}) { display: none }`,
  });
  const shot = await page.locator('.phone:visible .chat').screenshot();
  await writeFile(join(FOLDER, `${name}.png`), await inFewColours(shot));
}

/** A page has few colours: a third of the bytes say the same. */
async function inFewColours(png: Buffer): Promise<Uint8Array> {
  const image = await loadImage(png);
  const { width, height } = image;
  const context = createCanvas(width, height).getContext('2d');
  context.drawImage(image, 0, 0);
  const { data } = context.getImageData(0, 0, width, height);
  return encodeIndexedPng(new Uint8Array(data), width, height, MOST_COLOURS);
}

async function setUpClass(stage: Stage, keep: Keep): Promise<void> {
  await stage.client.addAccount({ id: NEWCOMER, name: 'Class teacher', note: 'teacher' });
  const teacher = new Phone(stage, NEWCOMER);
  await teacher.open(`t-${await issueTeacherInvite(stage.store, stage.clock.now())}`);
  await teacher.tap(BUTTONS.newClass);
  await teacher.say('Kingfisher class, Harbour Lane School');
  await teacher.tap('London · ');
  await teacher.tap(BUTTONS.addChildren);
  await teacher.say('Wren\nJuniper\nOtto\nMabel\nKestrel\nPip\nSaffron\nBramble');
  await keep('children-added', NEWCOMER, { messages: 2 });
  await teacher.tap(BUTTONS.firstPlan);
  await teacher.tap('Year 2');
  await keep('first-plan', NEWCOMER);
  await teacher.tap(BUTTONS.usePlan);
}

async function playWeek(stage: Stage): Promise<void> {
  for (let day = 0; day < 5; day += 1) {
    const date = `2026-09-${14 + day}`;
    await stage.goTo(new Date(`${date}T16:30:00Z`));
    for (const { id, helps } of DEMO_FAMILIES) {
      if (habitOf(id, day) !== 'plays') continue;
      const phone = new Phone(stage, id);
      for (const nickname of helps) {
        const offers = await phone.messagesWith(`${nickname} · `);
        const offer = offers.findLast(({ buttons }) =>
          buttons.flat().some(({ text }) => text === BUTTONS.start),
        );
        await phone.playEvening(sureOfSome(inventedChild(nickname, day)), offer?.id);
      }
    }
    await stage.goTo(new Date(`${date}T19:00:00Z`));
  }
}

/** Nobody misses anything in the first and the third part, so that the digest has something to propose. */
function sureOfSome(player: Player): Player {
  return (part, isRun) => (part === 1 || part === 3 ? [] : player(part, isRun));
}

async function readDigest(stage: Stage, keep: Keep): Promise<void> {
  const teacher = new Phone(stage, DEMO_TEACHER);
  const chat = await teacher.chat();
  const at = chat.findLastIndex(({ text }) => text.includes('Right of asked'));
  const newer = chat.length - 1 - at;
  await keep('digest', DEMO_TEACHER, { newer });
  await teacher.tap(BUTTONS.proposals, chat[at]?.id);
  await keep('proposals', DEMO_TEACHER, { newer });
  await teacher.say('/class');
  await keep('class', DEMO_TEACHER);
  await teacher.tap(BUTTONS.classNow);
  await teacher.tap(BUTTONS.childPages);
  const pip = (await teacher.buttons()).find((label) => label.includes('Pip'));
  await teacher.tap(pip ?? 'Pip');
  await keep('child-page', DEMO_TEACHER);
}

async function openSettings(stage: Stage, keep: Keep): Promise<void> {
  const pip = new Phone(stage, PIP);
  await pip.say('/settings');
  await keep('settings', PIP);
}

// Senders that wait for their turn would keep the process alive.
await main().then(() => process.exit(0));
