import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readFileSync } from 'node:fs';
import { setTimeout as delay } from 'node:timers/promises';
import { freePort } from '../../support/free-port.ts';

/** A tick of the processor's clock, as Linux tells it in /proc. */
const TICKS_A_SECOND = 100;
const LOOK_MS = 10;
const PATIENCE_MS = 300_000;

/** A bot that was started and is ready. */
export interface BotRun {
  /** From its start to the first 200 of `/ready`. */
  readonly readyMs: number;
  /** What it has used of a processor by then, in seconds; null where the system does not tell. */
  readonly cpuSeconds: number | null;
  /** Memory that is in use now: of the bot, and of everything that was started for it, in MB. */
  memory(): { readonly bot: number; readonly all: number };
  stop(): Promise<{ readonly stopMs: number }>;
}

/** Starts a bot and waits until it is ready. `command` is a program and its arguments. */
export async function startAndWait(
  command: readonly [string, ...string[]],
  settings: Readonly<Record<string, string>>,
): Promise<BotRun> {
  const port = await freePort();
  const [program, ...args] = command;
  // biome-ignore lint/style/noProcessEnv: npm needs a path and a home; a bench is no part of the bot.
  const env = { ...process.env, ...settings, HEALTH_PORT: String(port) };
  const start = performance.now();
  const child = spawn(program, args, {
    env,
    detached: true,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  const closed = once(child, 'close');
  await untilReady(port, child, start + PATIENCE_MS);
  const readyMs = performance.now() - start;
  const pid = child.pid ?? 0;
  return {
    readyMs,
    cpuSeconds: cpuOf(botOf(pid)),
    memory: () => {
      const sizes = family(pid).map(({ mb }) => mb);
      // npm and what it starts in between are smaller than the bot.
      return { bot: Math.max(...sizes), all: sizes.reduce((sum, mb) => sum + mb, 0) };
    },
    stop: async () => {
      const asked = performance.now();
      process.kill(-pid, 'SIGTERM');
      await closed;
      return { stopMs: performance.now() - asked };
    },
  };
}

async function untilReady(port: number, child: ChildProcess, end: number): Promise<void> {
  while (performance.now() < end) {
    if (child.exitCode !== null) throw new Error(`the bot ended with ${child.exitCode}`);
    const answer = await fetch(`http://127.0.0.1:${port}/ready`).catch(() => null);
    if (answer?.ok) return;
    await delay(LOOK_MS);
  }
  throw new Error('the bot was not ready in time');
}

/** A process and those it started, with their memory. */
function family(root: number): { readonly pid: number; readonly mb: number }[] {
  const { stdout } = spawnSync('ps', ['-A', '-o', 'pid=,ppid=,rss='], { encoding: 'utf8' });
  const all = stdout.split('\n').map((line) => line.trim().split(/\s+/).map(Number));
  const members = new Set([root]);
  for (let before = 0; before < members.size; ) {
    before = members.size;
    for (const [pid = 0, parent = 0] of all) if (members.has(parent)) members.add(pid);
  }
  return all.flatMap(([pid = 0, , kilobytes = 0]) =>
    members.has(pid) ? [{ pid, mb: kilobytes / 1024 }] : [],
  );
}

function botOf(root: number): number {
  return family(root).reduce((most, each) => (each.mb > most.mb ? each : most)).pid;
}

function cpuOf(pid: number): number | null {
  const file = `/proc/${pid}/stat`;
  if (!existsSync(file)) return null;
  // After the name in brackets: user and system time are the 12th and 13th fields.
  const fields = readFileSync(file, 'utf8').split(') ')[1]?.split(' ') ?? [];
  return (Number(fields[11]) + Number(fields[12])) / TICKS_A_SECOND;
}
