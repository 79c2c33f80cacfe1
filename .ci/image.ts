import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import {
  cpSync,
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { setTimeout as delay } from 'node:timers/promises';
import { freePort } from '../tests/support/free-port.ts';

/** A stage of the Dockerfile, done in a folder that stands for the image's root. */
interface Stage {
  readonly name: string;
  readonly root: string;
  workdir: string;
  readonly env: Record<string, string>;
  entry: string[];
  command: string[];
  probe: string[];
}

// biome-ignore lint/style/noProcessEnv: a script of its own, not part of the bot.
const { PATH = '', HOME = '/tmp' } = process.env;
const PATIENCE_MS = 240_000;

/**
 * Does what bot/Dockerfile says without a container engine: each COPY and RUN in a clean folder, from the committed files that
 * .dockerignore lets in; then starts the image's command with its data elsewhere, asks its health check, and looks whether
 * anything was written beside the data. Not done: the base image, and RUN lines that need the image's own users.
 */
async function main(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'suppersums-image-'));
  try {
    const image = build(readFileSync('bot/Dockerfile', 'utf8'), folder);
    const app = join(image.root, image.workdir);
    const before = listFiles(app);
    const env = {
      ...image.env,
      DATA_DIR: join(folder, 'data'),
      HEALTH_PORT: String(await freePort()),
    };
    const [program = '', ...entry] = image.entry;
    const run = (args: readonly string[], what: string) => {
      const { status } = spawnSync(program, args, {
        ...inImage(app, env, folder),
        stdio: 'inherit',
      });
      if (status !== 0) throw new Error(`${what} ended with ${status}`);
    };
    run([...entry, 'check'], 'check');
    const bot = spawn(program, [...entry, ...image.command], {
      ...inImage(app, { ...env, PORT: '0' }, folder),
      stdio: ['ignore', 'ignore', 'inherit'],
    });
    await untilHealthy(bot, () => {
      const [probe = '', ...args] = image.probe;
      return spawnSync(probe, args, inImage(app, env, folder)).status === 0;
    });
    bot.kill('SIGTERM');
    await once(bot, 'close');
    if (bot.exitCode !== 0) throw new Error(`the bot ended with ${bot.exitCode}`);
    const after = listFiles(app);
    const changed = [...after].filter(([path, mark]) => before.get(path) !== mark);
    if (changed.length > 0) throw new Error(`written beside the data: ${changed[0]?.[0]}`);
    const megabytes = sizeOf(after) / 1e6;
    say(`what we add to the base image: ${after.size} files, ${megabytes.toFixed(0)} MB`);
    say('the image was built in a folder, checked, started, found healthy and stopped');
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Settings of the image and nothing else of ours; its temporary files where a container has memory. */
function inImage(cwd: string, env: Record<string, string>, folder: string) {
  const own = join(folder, 'tmp');
  mkdirSync(own, { recursive: true });
  return { cwd, env: { ...env, PATH, HOME, TMPDIR: own } };
}

function build(dockerfile: string, folder: string): Stage {
  const stages: Stage[] = [];
  for (const line of instructions(dockerfile)) {
    const [word = '', ...rest] = line.split(' ');
    const text = rest.join(' ');
    const stage = stages.at(-1);
    if (word === 'FROM') {
      stages.push(newStage(join(folder, `stage-${stages.length}`), rest.at(-1) ?? ''));
    } else if (!stage) {
      throw new Error(`before the first FROM: ${line}`);
    } else {
      follow(stage, stages, word, text);
    }
  }
  const last = stages.at(-1);
  if (!last) throw new Error('the Dockerfile has no stage');
  return last;
}

/** Lines without comments, continued ones put together. */
function instructions(dockerfile: string): string[] {
  return dockerfile
    .replace(/^#.*\n/gm, '')
    .replaceAll('\\\n', ' ')
    .split('\n')
    .filter((line) => line.trim() !== '');
}

function newStage(root: string, name: string): Stage {
  return { name, root, workdir: '/', env: {}, entry: [], command: [], probe: [] };
}

function follow(stage: Stage, stages: readonly Stage[], word: string, text: string): void {
  const cwd = join(stage.root, stage.workdir);
  if (word === 'WORKDIR') {
    stage.workdir = text;
    mkdirSync(join(stage.root, text), { recursive: true });
  } else if (word === 'ENV') {
    const [name = '', value = ''] = text.split('=');
    stage.env[name] = value;
  } else if (word === 'COPY') copy(stage, stages, text.split(' '));
  else if (word === 'RUN') run(text, cwd);
  else if (word === 'ENTRYPOINT') stage.entry = JSON.parse(text);
  else if (word === 'CMD') stage.command = JSON.parse(text);
  else if (word === 'HEALTHCHECK') stage.probe = JSON.parse(text.replace(/^.*CMD /, ''));
  else if (!['VOLUME', 'USER', 'EXPOSE', 'STOPSIGNAL'].includes(word)) {
    throw new Error(`.ci/image.ts does not know ${word}: teach it`);
  }
}

function copy(stage: Stage, stages: readonly Stage[], words: readonly string[]): void {
  const from = words[0]?.startsWith('--from=') ? words[0].slice('--from='.length) : undefined;
  const source = stages.find(({ name }) => name === from);
  if (from !== undefined && !source) throw new Error(`there is no stage ${from}`);
  const what = words.slice(from === undefined ? 0 : 1, -1);
  const to = join(stage.root, stage.workdir, words.at(-1) ?? '');
  for (const each of what) {
    if (source) cpSync(join(source.root, each), to, { recursive: true });
    else copyCommitted(each, what.length > 1 || to.endsWith('/') ? join(to, each) : to, each);
  }
}

/** As an engine would get it: only what is committed, less what .dockerignore shuts out again. */
function copyCommitted(path: string, to: string, root: string): void {
  const args = ['ls-files', '--cached', '--others', '--exclude-standard', '--', path];
  const { stdout } = spawnSync('git', args, { encoding: 'utf8' });
  const files = stdout.split('\n').filter((file) => existsSync(file) && !isShutOut(file));
  if (files.length === 0) throw new Error(`there is nothing to copy at ${path}`);
  for (const file of files) {
    const target = file === root ? to : join(to, file.slice(root.length));
    mkdirSync(dirname(target), { recursive: true });
    cpSync(file, target);
  }
}

function isShutOut(file: string): boolean {
  const lines = readFileSync('.dockerignore', 'utf8').split('\n');
  const isIn = (place: string) => file === place || file.startsWith(`${place}/`);
  const isLetIn = lines.some((line) => line.startsWith('!') && isIn(line.slice(1)));
  return !isLetIn || lines.some((line) => /^[^!#*]/.test(line) && isIn(line));
}

function run(command: string, cwd: string): void {
  if (/--owner|chown|useradd/.test(command)) {
    say(`not done here, it needs the image's own users: ${command}`);
    return;
  }
  if (/(^|\s)\//.test(command))
    throw new Error(`a path from the root cannot be done here: ${command}`);
  say(`RUN ${command}`);
  const { status } = spawnSync('sh', ['-c', command], {
    cwd,
    env: { PATH, HOME },
    stdio: 'inherit',
  });
  if (status !== 0) throw new Error(`RUN ended with ${status}: ${command}`);
}

async function untilHealthy(bot: ChildProcess, isHealthy: () => boolean): Promise<void> {
  const end = performance.now() + PATIENCE_MS;
  while (performance.now() < end) {
    if (bot.exitCode !== null) throw new Error(`the bot ended with ${bot.exitCode}`);
    if (isHealthy()) return;
    await delay(500);
  }
  throw new Error('the health check never said yes');
}

/** Each file with its size and the time of its last change. */
function listFiles(folder: string): Map<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true });
  return new Map(
    files.flatMap((entry) => {
      if (!entry.isFile()) return [];
      const path = join(entry.parentPath, entry.name);
      const { size, mtimeMs } = lstatSync(path);
      return [[path, `${size} ${mtimeMs}`] as const];
    }),
  );
}

function sizeOf(files: ReadonlyMap<string, string>): number {
  return [...files.values()].reduce((sum, mark) => sum + Number(mark.split(' ')[0]), 0);
}

function say(line: string): void {
  process.stdout.write(`image: ${line}\n`);
}

main().catch((error) => {
  process.stderr.write(`image: ${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(1);
});
