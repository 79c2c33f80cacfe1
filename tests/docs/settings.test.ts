import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { SETTINGS, settings, settingsTable } from '../../bot/roots/settings.ts';
import { withSettings } from './settings-in.ts';

const ROOT = join(import.meta.dirname, '..', '..');
const NAMES = Object.keys(SETTINGS);

it('the README has the table of settings as it is (npm run settings writes it)', () => {
  const readme = readFileSync(join(ROOT, 'README.md'), 'utf8');
  expect(withSettings(readme)).toBe(readme);
});

it('the table has a row for each setting, with name, meaning, default and example', () => {
  const [head, , ...rows] = settingsTable().split('\n');
  expect(head).toMatch(/^\| setting +\| meaning +\| default +\| example +\|$/);
  const cells = rows.map((row) => row.split('|').map((cell) => cell.trim()));
  expect(cells.map(([, name]) => name)).toEqual(NAMES.map((name) => `\`${name}\``));
  expect(cells.filter((row) => row.length !== 6 || row.slice(1, 5).includes(''))).toEqual([]);
  expect(rows[0]?.startsWith('| `BOT_TOKEN`')).toBe(true);
});

it.each(Object.entries(SETTINGS))(
  'the example of %s is taken as it stands',
  (name, { example }) => {
    expect(settings.safeParse({ [name]: example }).success).toBe(true);
  },
);

it('every setting that is read in the code is in the table', () => {
  const code = ['bot', 'db', 'jobs', 'rehearsal'].flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts'))
      .map((file) => readFileSync(join(ROOT, folder, file), 'utf8')),
  );
  const named = code.flatMap((text) =>
    [...text.matchAll(/(?:process\.env|environment)(?:\.|\[')(?<name>[A-Z_]+)/g)].map(
      (found) => found.groups?.name ?? '',
    ),
  );
  expect(named.filter((name) => !NAMES.includes(name))).toEqual([]);
  // Each one of the table is used: by its name, where the configuration is made of them.
  const config = readFileSync(join(ROOT, 'bot/roots/config.ts'), 'utf8');
  expect(NAMES.filter((name) => !config.includes(name))).toEqual([]);
});
