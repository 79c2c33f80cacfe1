import { describe, expect, it } from 'vitest';
import { lintFiles } from './lint-files.ts';

/** A file that imports from somewhere and uses what it imports. */
const importing = (from: string) =>
  `import { thing } from '${from}';\n\nexport const it = thing;\n`;
const reading = (expression: string) => `export const read = () => ${expression};\n`;
const linesOf = (count: number) =>
  `export function long() {\n${"  work('x');\n".repeat(count)}}\n\nfunction work(_: string) {}\n`;

interface Case {
  readonly what: string;
  readonly folder: string;
  readonly text: string;
  readonly rule: string;
}

const forbidden = (folder: string, ...froms: string[]): Case[] =>
  froms.map((from) => ({
    what: `${folder} importing ${from}`,
    folder,
    text: importing(from),
    rule: 'noRestrictedImports',
  }));
const sneaking = (folder: string, text: string): Case => ({
  what: `${folder} with ${text.trim()}`,
  folder,
  text,
  rule: 'noRestrictedImports',
});
const unreadable = (folder: string, ...expressions: string[]): Case[] =>
  expressions.map((expression) => ({
    what: `${folder} reading ${expression}`,
    folder,
    text: reading(expression),
    rule: 'plugin',
  }));
const everywhere = (rule: string, what: string, text: string): Case[] =>
  ['drills', 'db', 'jobs', 'bot', 'rehearsal', 'tests'].map((folder) => ({
    what: `${what} in ${folder}`,
    folder,
    text,
    rule,
  }));

const DRIVERS = [
  'drizzle-orm',
  'drizzle-orm/pg-core',
  '../../db/schema/index.ts',
  'pg-boss',
  'postgres',
  '@electric-sql/pglite',
];
const CLOCK = ['Date.now()', 'Date.now', 'new Date()', 'new Date', 'performance.now()'];
const ENVIRONMENT = reading('process.env.PORT');

const OFFENDING: readonly Case[] = [
  ...['texts', 'screens', 'features', 'send', 'digest', 'paper', 'media'].flatMap((folder) =>
    unreadable(`bot/${folder}`, "'Good evening, Wren'", '`Good evening, Wren`'),
  ),
  ...forbidden(
    'drills/evening',
    '../../db/index.ts',
    '../../bot/texts/words.ts',
    '../../jobs/index.ts',
    '../../rehearsal/client.ts',
    'zod',
    'node:crypto',
    'ts-fsrs/dist/index.mjs',
  ),
  ...forbidden('drills', '../db/index.ts'),
  ...forbidden('db/books', '../../bot/texts/words.ts', '../../jobs/tick.ts'),
  ...forbidden('db/books', '../../rehearsal/client.ts'),
  ...forbidden('jobs', ...DRIVERS, '../db/schema/people.ts', '../bot/send/courier.ts'),
  ...forbidden('jobs', '../rehearsal/client.ts'),
  ...forbidden('bot/features', ...DRIVERS, '../../jobs/index.ts', '../../rehearsal/client.ts'),
  ...forbidden('bot', ...DRIVERS, '../jobs/index.ts', '../rehearsal/client.ts'),
  ...forbidden('rehearsal', '../db/index.ts', '../bot/deps.ts', '../jobs/tick.ts'),
  ...forbidden('rehearsal/page', '../../drills/index.ts'),
  sneaking('drills', "export * from '../db/index.ts';\n"),
  sneaking('drills', "export const it = await import('../db/index.ts');\n"),
  sneaking('db', "export type { Screen } from '../bot/screens/screen.ts';\n"),
  sneaking('bot', "export const it = await import('../jobs/index.ts');\n"),
  ...unreadable('drills', ...CLOCK, 'Math.random()', 'Math.random', 'crypto.randomUUID()'),
  ...unreadable('db/books', ...CLOCK),
  ...unreadable('jobs', ...CLOCK),
  ...unreadable('bot/features', ...CLOCK),
  ...everywhere('noProcessEnv', 'process.env', ENVIRONMENT),
  ...everywhere('noConsole', 'console', "console.log('Wren');\n"),
  ...everywhere('noExplicitAny', 'any', 'export const it: any = 1;\n'),
  ...everywhere(
    'noNonNullAssertion',
    'a non-null assertion',
    'export const first = (all: number[]) => all.at(0)!.toFixed();\n',
  ),
  ...everywhere(
    'noExcessiveLinesPerFunction',
    'a function with 61 lines between its braces',
    linesOf(61),
  ),
];

const allowed = (path: string, text: string) => ({ path, text });

const FINE = [
  allowed('drills/evening/fine.ts', importing('../ladder/rung.ts')),
  allowed('drills/fine.ts', importing('./ladder/rung.ts')),
  allowed('drills/fine-date.ts', reading('new Date(0).getTime()')),
  allowed('drills/memory/fine.ts', importing('ts-fsrs')),
  allowed('db/books/fine.ts', importing('../../drills/index.ts')),
  allowed('db/books/fine-driver.ts', importing('drizzle-orm')),
  allowed('db/books/fine-schema.ts', importing('../schema/index.ts')),
  allowed('jobs/fine.ts', importing('../db/index.ts')),
  allowed('jobs/fine-drills.ts', importing('../drills/index.ts')),
  allowed('bot/features/fine.ts', importing('../../db/index.ts')),
  allowed('bot/features/fine-drills.ts', importing('../../drills/index.ts')),
  allowed('bot/features/fine-library.ts', importing('grammy')),
  allowed('bot/features/fine-date.ts', reading('new Date(0)')),
  allowed('bot/texts/fine.ts', reading("['evening-offer', 'Wren']")),
  allowed('bot/texts/fine-error.ts', reading("new Error('no such card')")),
  allowed('bot/media/fine-drawing.ts', reading('`<text x="1">two words</text>`')),
  allowed('bot/cli/commands/fine.ts', importing('../../../jobs/index.ts')),
  allowed('bot/cli/main.ts', ENVIRONMENT),
  allowed('bot/roots/fine.ts', importing('../../jobs/index.ts')),
  allowed('bot/roots/fine-environment.ts', ENVIRONMENT),
  allowed('bot/roots/fine-clock.ts', reading('new Date()')),
  allowed(
    'bot/main.ts',
    `import { jobs } from '../jobs/index.ts';\n\njobs(process.env, new Date());\n`,
  ),
  allowed('rehearsal/fine.ts', importing('hono')),
  allowed('tests/fine.ts', importing('../bot/create-bot.ts')),
  allowed('tests/fine-function.ts', linesOf(60)),
];

const offending = OFFENDING.map((each, at) => ({ ...each, path: `${each.folder}/case-${at}.ts` }));
const findings = await lintFiles(
  new Map([...offending, ...FINE].map(({ path, text }) => [path, text])),
);

describe('an error of the linter', () => {
  it.each(offending)('is $what', ({ path, rule }) => {
    expect(findings.get(path)?.map((finding) => finding.rule)).toEqual([rule]);
  });

  it('about an import says what the folder may import', () => {
    const messages = offending
      .filter(({ rule }) => rule === 'noRestrictedImports')
      .flatMap(({ path }) => findings.get(path)?.map(({ message }) => message) ?? []);
    expect(
      messages.filter((message) => !/^(drills|db|jobs|bot|rehearsal)\/ /.test(message)),
    ).toEqual([]);
  });
});

describe('no error of the linter', () => {
  it.each(FINE)('is in $path', ({ path }) => {
    expect(findings.get(path)).toEqual([]);
  });
});
