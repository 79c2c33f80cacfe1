import { writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { loadDemoClass } from '../../bot/roots/demo-class.ts';
import { Phone } from '../../bot/roots/phone.ts';
import { openStage } from '../../bot/roots/stage.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import type { ChatMessage, RehearsalClient } from '../../rehearsal/client.ts';
import { launchBrowser } from '../rehearsal/support/browser.ts';

/** Draws the README's picture of an evening from what the bot really sends: `npm run picture`. */
const PIP = 2005;
const FILE = fileURLToPath(new URL('evening.png', import.meta.url));

async function main(): Promise<void> {
  const stage = await openStage(new Date('2026-09-15T09:00:00Z'));
  await loadDemoClass({ ...stage, zone: 'Europe/London' });
  await stage.goTo(new Date('2026-09-15T16:30:00Z'));
  const panels = await playAndCopy(new Phone(stage, PIP), stage.client);
  await stage.close();
  const browser = await launchBrowser();
  const page = await browser.newPage({
    viewport: { width: 1320, height: 900 },
    deviceScaleFactor: 1.5,
  });
  await page.setContent(sheet(panels));
  await writeFile(FILE, await page.locator('main').screenshot());
  await browser.close();
}

async function playAndCopy(pip: Phone, client: RehearsalClient): Promise<string[]> {
  const panels: string[] = [];
  const copy = async (title: string) => {
    panels.push(await panel(title, await pip.last(), client));
  };
  await copy('1. At the family’s time');
  await pip.tap(BUTTONS.start);
  await copy('2. The child answers aloud');
  await pip.tap(BUTTONS.someMissed);
  const card = (await pip.buttons()).find((label) => label.startsWith('4. '));
  await pip.tap(card ?? '4. ');
  await copy('3. Tap what was missed');
  await pip.tap(BUTTONS.done);
  for (let part = 2; part <= 5; part += 1) {
    await pip.tap(part === 5 ? BUTTONS.allSaid : BUTTONS.allRight);
  }
  await pip.tap('2');
  await copy('4. Against one’s own best only');
  return panels;
}

async function panel(title: string, shown: ChatMessage, client: RehearsalClient): Promise<string> {
  const picture = shown.photo
    ? `<img alt="" src="data:image/png;base64,${Buffer.from(await client.file(shown.photo.fileId)).toString('base64')}">`
    : '';
  const text = shown.text
    .split('\n')
    .map((line) => `<p>${escaped(line)}</p>`)
    .join('');
  const buttons = shown.buttons
    .map(
      (row) =>
        `<div class="row">${row.map((b) => `<span>${escaped(b.text)}</span>`).join('')}</div>`,
    )
    .join('');
  return `<section><h2>${escaped(title)}</h2><article>${picture}${text}${buttons}</article></section>`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

function sheet(panels: readonly string[]): string {
  return `<!doctype html><style>
    main { display: grid; grid-template-columns: repeat(4, 1fr); gap: 20px; padding: 20px;
      background: #efe8da; color: #2b2622; font: 15px/1.4 Georgia, 'DejaVu Serif', serif; align-items: start; }
    h2 { font-size: 17px; margin: 0 0 8px; }
    article { background: #fffdf7; border: 1px solid #8a7d68; padding: 12px; }
    img { width: 100%; display: block; margin-bottom: 8px; }
    p { margin: 0 0 4px; } p:first-of-type { font-weight: bold; }
    .row { display: flex; gap: 6px; margin-top: 6px; }
    .row span { flex: 1; border: 1px solid #2b2622; padding: 5px 2px; text-align: center; font-size: 13px; }
  </style><main>${panels.join('')}</main>`;
}

main().catch((error) => {
  process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
  process.exit(1);
});
