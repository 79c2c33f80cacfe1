import { execFile } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { expect, it } from 'vitest';
import { createProgram } from '../../../bot/cli/program.ts';
import { aCli } from '../../support/cli-runs.ts';

const run = aCli({});
const CHILD = '019a0000-0000-7000-8000-0000000000c1';

const commands = createProgram({
  cli: {
    environment: {},
    out: () => {},
    err: () => {},
    terminal: null,
    now: () => new Date(0),
    open: async () => Promise.reject(new Error('nothing is opened to describe a command')),
  },
  end: () => {},
}).commands;
const names = commands.map((command) => command.name());

it('there are the commands that the pages name', () => {
  expect(names).toEqual([
    ...['start', 'check', 'migrate', 'invite-teacher', 'simulate-week', 'preview', 'export'],
    ...['import', 'erase', 'erasures', 'backup', 'restore', 'move', 'move-class'],
    ...['dead-letters', 'rebuild'],
  ]);
});

it.each(names)('%s says what it does when asked for help', async (name) => {
  const { code, out, err } = await run(name, '--help');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toMatch(new RegExp(`^Usage: suppersums ${name} \\[options\\]`));
  const description = commands.find((command) => command.name() === name)?.description() ?? '';
  expect(description.length).toBeGreaterThan(20);
  expect(out.replace(/\s+/g, ' ')).toContain(description);
});

it('every command that ends by itself can answer in JSON', () => {
  const silent = commands.filter(({ options }) => options.every(({ long }) => long !== '--json'));
  expect(silent.map((command) => command.name())).toEqual(['start']);
});

it('the help names every command and the exit codes', async () => {
  const { code, out } = await run('--help');
  expect(code).toBe(0);
  for (const name of names) expect(out).toContain(`  ${name} `);
  expect(out).toContain('Exit codes: 0 done, 1 could not be done');
  expect(out).toContain('2 asked for in a wrong way');
});

it('without a command there is the help, and that was a wrong use', async () => {
  const { code, out, err } = await run();
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toContain('Usage: suppersums');
});

it.each([
  [
    ['ereas', CHILD],
    ['ereas', 'erase'],
  ],
  [
    ['rebuild', '--jsno'],
    ['--jsno', '--json'],
  ],
  [['erase'], ['child-id']],
  [
    ['erase', 'Wren'],
    ['“Wren”', '36 characters', 'export --class'],
  ],
  [['export'], ['--child', '--class']],
  [['export', '--child', CHILD, '--class', CHILD], ['one of the two']],
  [
    ['export', '--class', '12'],
    ['“12”', '36 characters', 'move-class'],
  ],
  [
    ['preview', '--way', 'films'],
    ['“films”', 'clip, pictures, single, words'],
  ],
  [
    ['preview', '--language', 'xx'],
    ['“xx”', 'en, af, es, de, fr'],
  ],
  [
    ['dead-letters', 'lsit'],
    ['“lsit”', 'list, replay, drop'],
  ],
  [
    ['dead-letters', 'drop', 'x'],
    ['“x”', '36 characters', 'two numbers'],
  ],
  [
    ['move-class', CHILD],
    ['“”', 'before “:”'],
  ],
  [
    ['move-class', CHILD, 'my_bot'],
    ['“my_bot”', 'before “:”'],
  ],
  [['move'], ['--to']],
  [
    ['move', '--to', 'mysql://host/name'],
    ['mysql://', 'postgres://'],
  ],
  [
    ['restore', 'x.gz', '--stopped-at', 'noon'],
    ['“noon”', '2026-09-14T17:25:00Z'],
  ],
  [
    ['restore', 'x.gz', '--stopped-at', '2026-09-15T08:00:00Z'],
    ['2026-09-15', 'up to now'],
  ],
  [
    ['start', '--role', 'sned'],
    ['“sned”', 'receive, work, send, tick'],
  ],
  [['invite-teacher'], ['BOT_TOKEN']],
  [
    ['import', 'x.json', '--teacher', 'me'],
    ['“me”', '36 characters'],
  ],
])('wrong use ends with 2 and says what would be right: %j', async (args, parts) => {
  const { code, out, err } = await run(...args);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  for (const part of parts) expect(err).toContain(part);
  expect(err).not.toMatch(/^\s+at /m);
});

it('a setting that cannot be used is a wrong use too, and is named', async () => {
  const { code, err } = await aCli({ DATABASE_URL: 'mysql://host/name' })('rebuild');
  expect(code).toBe(2);
  expect(err).toContain('DATABASE_URL: begins with postgres://');
});

it('a command is not given a new database where there should be one already', async () => {
  const { code, err } = await aCli({ DATA_DIR: '/nowhere/suppersums' })('erase', CHILD);
  expect(code).toBe(1);
  expect(err).toContain('There is no database in /nowhere/suppersums/rehearsal');
  expect(err).toContain('DATA_DIR');
});

it('the installed command is a program of its own', async () => {
  const root = fileURLToPath(new URL('../../..', import.meta.url));
  const { version } = JSON.parse(await readFile(`${root}/package.json`, 'utf8'));
  const bin = `${root}/bot/suppersums.js`;
  const { stdout } = await promisify(execFile)(process.execPath, [bin, '--version'], { cwd: '/' });
  expect(stdout).toBe(`${version}\n`);
});
