import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';

/** The Nodes that are promised; `.ci/run` itself runs on the first. */
const ALL = ['20.19', '22', '24', '26'];
/** Tests that are quick and meet what differs between Nodes: computation, texts, pictures, both databases, a whole evening. */
const FAST = [
  ...['tests/drills', 'tests/language', 'tests/docs', 'tests/bot/texts', 'tests/bot/media'],
  ...['tests/bot/screens', 'tests/bot/callback', 'tests/bot/input', 'tests/bot/paper'],
  ...['tests/db/open.test.ts', 'tests/db/zones.test.ts', 'tests/e2e/evening.test.ts'],
];

// biome-ignore lint/style/noProcessEnv: a script of its own, not part of the bot.
const { BOT_TOKEN: _token, DATABASE_URL: _url, ...ENVIRONMENT } = process.env;

/**
 * Runs the fast tests, `suppersums check` and the smoke run of `npm start` on other Nodes, which come from the package registry.
 * Without arguments on the newest; with some, like `20.19 22`, on these; with `all` on every one that is promised.
 */
function main(): void {
  const [first, ...others] = process.argv.slice(2);
  const wanted = first === undefined ? ALL.slice(-1) : first === 'all' ? ALL : [first, ...others];
  const folder = mkdtempSync(join(tmpdir(), 'suppersums-nodes-'));
  try {
    for (const version of wanted) tryOn(version, folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function tryOn(version: string, folder: string): void {
  const bin = fetchNode(version, join(folder, version));
  // First in the path, so that npm and whatever it starts run on it too.
  const path = `${bin}${delimiter}${ENVIRONMENT.PATH ?? ''}`;
  const env = { ...ENVIRONMENT, PATH: path, DATA_DIR: join(folder, version, 'data') };
  const run = (what: string, args: readonly string[]) => {
    process.stdout.write(`== Node ${version}: ${what}\n`);
    const { status } = spawnSync(join(bin, 'node'), args, { env, stdio: 'inherit' });
    if (status !== 0) throw new Error(`${what} failed on Node ${version}`);
  };
  run('version', ['--version']);
  const vitest = join('node_modules', 'vitest', 'vitest.mjs');
  run('fast tests', [vitest, 'run', '--config', 'tests/vitest.config.ts', ...FAST]);
  run('suppersums check', ['bot/suppersums.js', 'check']);
  run('smoke run', ['--import', 'tsx', '.ci/smoke.ts']);
}

/** The folder of a `node` program of this version for this computer. */
function fetchNode(version: string, folder: string): string {
  const platform = process.platform === 'win32' ? 'win' : process.platform;
  const name = `node-${platform}-${process.arch}`;
  const { status } = spawnSync(
    'npm',
    ['install', '--no-save', '--no-audit', '--no-fund', '--prefix', folder, `${name}@${version}`],
    { stdio: 'inherit' },
  );
  if (status !== 0) throw new Error(`${name}@${version} could not be fetched`);
  return join(folder, 'node_modules', name, 'bin');
}

try {
  main();
} catch (error) {
  process.stderr.write(`nodes: ${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(1);
}
