import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Command } from 'commander';
import { describe, expect, it } from 'vitest';
import { createProgram } from '../../bot/cli/program.ts';
import { TYPED_COMMANDS } from '../../bot/features/typed-commands.ts';
import { openStore } from '../../bot/roots/open-store.ts';
import { SETTINGS } from '../../bot/roots/settings.ts';
import { type Known, linksIn, marksIn, unknownIn } from './named-in.ts';

const ROOT = join(import.meta.dirname, '..', '..');
const read = (path: string) => readFileSync(join(ROOT, path), 'utf8');
const exists = (path: string) => existsSync(join(ROOT, path));
const PAGES = [
  ...['README.md', 'DEVELOPERS.md', 'CHANGELOG.md', 'rehearsal/README.md'],
  ...readdirSync(join(ROOT, 'bot/guides'))
    .filter((file) => file.endsWith('.md'))
    .map((file) => `bot/guides/${file}`),
];

/** Also written with a stroke: what a process answers on a port, and commands of the service's own bot for bots. */
const NOT_OURS = [
  ...['live', 'ready', 'metrics', 'unblock', 'deactivate'],
  ...['newbot', 'revoke', 'deletebot'],
];

const known: Known = {
  scripts: new Set(Object.keys(JSON.parse(read('package.json')).scripts)),
  commands: commandsOf(),
  constants: new Set([...Object.keys(SETTINGS), ...constantsOfCode()]),
  typed: new Set([...Object.keys(TYPED_COMMANDS), ...NOT_OURS]),
  // A file of the code may be named without its end.
  exists: (path) => exists(path) || exists(`${path}.ts`),
};

function commandsOf(): Known['commands'] {
  const program = createProgram({
    cli: {
      ...{ environment: {}, terminal: null, open: openStore, now: () => new Date(0) },
      ...{ out: () => {}, err: () => {} },
    },
    end: () => {},
  });
  const optionsOf = ({ options }: Command) =>
    new Set(['--help', ...options.map(({ long }) => long ?? '')]);
  return new Map([
    ['help', new Set<string>()],
    ...program.commands.map((command) => [command.name(), optionsOf(command)] as const),
  ]);
}

/** Constants that pages may name as the code does, and what a container is set with. */
function constantsOfCode(): string[] {
  const files = ['bot', 'db', 'drills', 'jobs', 'rehearsal', 'tests'].flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts') && !file.startsWith('docs/'))
      .map((file) => `${folder}/${file}`),
  );
  const settable = ['docker-compose.yml', 'package.json'].flatMap((file) => [
    ...read(file).matchAll(/\b([A-Z][A-Z0-9_]+)[:=]/g),
  ]);
  const constants = files.flatMap((file) => [
    ...read(file).matchAll(/(?:\bconst |\btype |'|: )([A-Z][A-Z0-9_]+)\b/g),
  ]);
  return [...settable, ...constants].map(([, name]) => name ?? '');
}

describe.each(PAGES)('%s', (path) => {
  const page = read(path);

  it('names no script, command, setting or file that is not there', () => {
    expect(unknownIn(page, known)).toEqual([]);
  });

  it('links to what is there, and says in words what a picture shows', () => {
    const broken = linksIn(page).filter(({ target, words, isPicture }) => {
      const [file = '', mark] = target.split('#');
      const to = file === '' ? path : join(dirname(path), file);
      if (!exists(to) || (isPicture && words.length < 20)) return true;
      return mark !== undefined && !marksIn(read(to)).includes(mark);
    });
    expect(broken).toEqual([]);
  });
});

it.each([
  ['a script', 'Run `npm run dance`.', 'npm run dance'],
  ['a script in a block', '```\nnpm run dance\n```\n', 'npm run dance'],
  ['a command', '`npx suppersums dance`', 'suppersums dance'],
  ['an option', '`npx suppersums backup x.gz --loud`', 'suppersums backup --loud'],
  ['a setting', '`LOUD_NESS`', 'LOUD_NESS'],
  ['a setting in a command', '```\nLOUDNESS=3 npm start\n```\n', 'LOUDNESS'],
  ['a file', '`bot/texts/dance.ts`', 'bot/texts/dance.ts'],
  ['a command in the chat', '`/dance 3`', '/dance'],
])('%s that is not there is found', (_, page, found) => {
  expect(unknownIn(page, known)).toEqual([found]);
});

it('what is there is not complained of', () => {
  const page =
    '`npm start`, `npm run lint`, `npx suppersums backup x.gz --check`, `BOT_TOKEN`, `bot/texts/`, `/time 18:15`';
  expect(unknownIn(page, known)).toEqual([]);
});
