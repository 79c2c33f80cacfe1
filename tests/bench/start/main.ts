import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as delay } from 'node:timers/promises';
import { parseArgs } from 'node:util';
import { startRehearsal } from '../../../rehearsal/server.ts';
import { median, say } from '../flood/figures.ts';
import { type BotRun, startAndWait } from './bot-run.ts';
import { makeClass } from './class-of.ts';
import { installSize } from './install-size.ts';

const TOKEN = '0:rehearsal-bench';
const CHILDREN = 30;
const BARE_RUNS = 5;
const OURS = [process.execPath, 'bot/suppersums.js', 'start'] as const;

/**
 * Prints how soon a bot with the embedded database is ready, what it holds in memory when nothing happens, and what is
 * installed. Everything runs against the stand-in, which is in this process and not counted. `--idle` is how many seconds nothing
 * happens before the memory is read, `--starts` how often it is started.
 */
async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      idle: { type: 'string', default: '20' },
      starts: { type: 'string', default: '3' },
    },
  });
  const folder = mkdtempSync(join(tmpdir(), 'suppersums-start-'));
  const rehearsal = await startRehearsal({
    ...{ port: 0, token: TOKEN, botUsername: 'harbour_lane_bot', botName: 'Suppersums' },
    control: { now: () => new Date(), moveTo: async () => {}, stops: async () => [] },
  });
  const { apiRoot: API_ROOT } = rehearsal;
  const settings = { BOT_TOKEN: TOKEN, API_ROOT, DATA_DIR: folder, LOG_LEVEL: 'error' };
  try {
    const bare = median(Array.from({ length: BARE_RUNS }, bareMs));
    say(`Node ${process.versions.node}; node -e '' takes ${bare.toFixed(0)} ms`);
    const first = await startAndWait(OURS, settings);
    report('first start, which makes the database', first, bare);
    await first.stop();
    await makeClass(folder, CHILDREN, new Date());
    await startOften(Number(values.starts), settings, bare);
    await stayIdle(Number(values.idle), settings, bare);
  } finally {
    await rehearsal.close();
    rmSync(folder, { recursive: true, force: true });
  }
  const { packages, mb, prunedMb } = installSize();
  say(
    `installed to run: ${packages} packages, ${mb.toFixed(0)} MB; ${prunedMb.toFixed(0)} MB without maps and type declarations`,
  );
}

async function startOften(
  starts: number,
  settings: Readonly<Record<string, string>>,
  bare: number,
): Promise<void> {
  const runs: BotRun[] = [];
  for (let count = 0; count < starts; count += 1) {
    const run = await startAndWait(OURS, settings);
    runs.push(run);
    const { stopMs } = await run.stop();
    report(`start with ${CHILDREN} children`, run, bare);
    say(`  stopped in ${stopMs.toFixed(0)} ms`);
  }
  const middle = median(runs.map(({ readyMs }) => readyMs));
  say(`in the middle ${middle.toFixed(0)} ms, ${(middle / bare).toFixed(0)} bare Nodes`);
}

async function stayIdle(
  seconds: number,
  settings: Readonly<Record<string, string>>,
  bare: number,
): Promise<void> {
  for (const [what, command] of [
    ['node bot/suppersums.js start', OURS],
    ['npm start', ['npm', 'start']],
  ] as const) {
    const run = await startAndWait(command, settings);
    report(what, run, bare);
    await delay(seconds * 1_000);
    const { bot, all } = run.memory();
    say(
      `  after ${seconds} s without work: ${bot.toFixed(0)} MB, with what started it ${all.toFixed(0)} MB`,
    );
    await run.stop();
  }
}

function report(what: string, { readyMs, cpuSeconds }: BotRun, bare: number): void {
  const cpu = cpuSeconds === null ? '' : `, ${cpuSeconds.toFixed(1)} s of processor`;
  say(
    `${what}: ready after ${readyMs.toFixed(0)} ms, ${(readyMs / bare).toFixed(0)} bare Nodes${cpu}`,
  );
}

function bareMs(): number {
  const start = performance.now();
  spawnSync(process.execPath, ['-e', '']);
  return performance.now() - start;
}

await main();
