import { spawn } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { setTimeout as delay } from 'node:timers/promises';
import { BUTTONS } from '../bot/texts/buttons.ts';
import { type ChatMessage, RehearsalClient } from '../rehearsal/client.ts';

/** What a fresh copy of the project does not have. */
const LEFT_OUT = new Set(['node_modules', '.git', 'data', 'demo-week', 'artefacts', 'coverage']);

/** Starts `npm start` from a copy of the project in a fresh folder, plays one evening for one family over HTTP, stops it. */
const PIP = 2005;
const MONDAY = '2026-09-14T17:00:00Z';
const PATIENCE_MS = 60_000;

async function main(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'suppersums-smoke-'));
  cpSync(process.cwd(), folder, {
    recursive: true,
    filter: (path) => !LEFT_OUT.has(basename(path)),
  });
  symlinkSync(join(process.cwd(), 'node_modules'), join(folder, 'node_modules'));
  const bot = startBot(folder);
  let failure: unknown = null;
  try {
    await playEvening(new RehearsalClient(await until('the address', bot.address)));
  } catch (error) {
    failure = error;
  }
  const stopped = await bot.stop();
  rmSync(folder, { recursive: true, force: true });
  if (failure) throw failure;
  if (!stopped) throw new Error('the bot did not stop on SIGINT');
  process.stdout.write(
    'smoke: an evening was played from the message to the result, and the bot stopped\n',
  );
}

/** `npm start` with no settings but a free port and a Monday. */
function startBot(folder: string) {
  // biome-ignore lint/style/noProcessEnv: a script of its own, not part of the bot.
  const env = { ...process.env, PORT: '0', TZ: 'UTC', CLOCK_START: MONDAY };
  for (const name of ['BOT_TOKEN', 'DATABASE_URL', 'DATA_DIR', 'API_ROOT']) delete env[name];
  const child = spawn('npm', ['start'], {
    cwd: folder,
    env,
    // A group of its own, so that stopping reaches npm and what it started, as Ctrl-C does.
    detached: true,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let out = '';
  child.stdout.on('data', (chunk) => {
    out += String(chunk);
  });
  // `close` comes when the last process that holds our pipe is gone: the bot itself, not only npm.
  const closed = new Promise<boolean>((resolve) => child.on('close', () => resolve(true)));
  const signal = (name: 'SIGINT' | 'SIGKILL') => {
    if (child.pid) process.kill(-child.pid, name);
  };
  return {
    address: async () => /http:\/\/[\d.:]+/.exec(out)?.[0],
    stop: async (): Promise<boolean> => {
      signal('SIGINT');
      const stopped = await Promise.race([closed, delay(PATIENCE_MS, false, { ref: false })]);
      if (!stopped) signal('SIGKILL');
      return stopped;
    },
  };
}

async function playEvening(client: RehearsalClient): Promise<void> {
  await client.moveTo(new Date('2026-09-14T17:30:00Z'));
  const shows = (text: string) => until(text, async () => newest(client, text));
  const offer = await shows('Pip · Monday');
  const tap = (label: string) => client.tapLabel(PIP, label, offer.id);
  await tap(BUTTONS.start);
  for (let part = 1; part <= 5; part += 1) {
    const screen = await shows(`Part ${part} of 5`);
    if (!screen.video && !screen.photo) throw new Error(`part ${part} has nothing to look at`);
    await tap(part === 5 ? BUTTONS.allSaid : BUTTONS.allRight);
  }
  await shows('How many pages');
  await tap('2');
  const result = await shows('2 pages done');
  if (!result.text.includes('10 of 10')) throw new Error(`the result says: ${result.text}`);
}

async function newest(client: RehearsalClient, text: string): Promise<ChatMessage | undefined> {
  const chat = await client.chat(PIP);
  return chat.findLast((message) => message.from === 'bot' && message.text.includes(text));
}

async function until<T>(what: string, look: () => Promise<T | undefined>): Promise<T> {
  const end = performance.now() + PATIENCE_MS;
  while (performance.now() < end) {
    const found = await look();
    if (found !== undefined) return found;
    await delay(100);
  }
  throw new Error(`waited in vain for ${what}`);
}

main().catch((error) => {
  process.stderr.write(`smoke: ${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(1);
});
