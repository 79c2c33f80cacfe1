import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseEnv } from 'node:util';
import { expect, it } from 'vitest';
import { readConfig } from '../../bot/roots/config.ts';
import { SETTINGS } from '../../bot/roots/settings.ts';
import { envExample } from './env-example.ts';

const FILE = readFileSync(join(import.meta.dirname, '..', '..', '.env.example'), 'utf8');

it('.env.example is written from the table of settings (npm run settings)', () => {
  expect(FILE).toBe(envExample());
  expect(envExample().includes('\nBOT_TOKEN=\n')).toBe(true);
});

it('copied as it is, it rehearses: nothing is set yet', () => {
  const given = parseEnv(FILE);
  expect(given).toEqual({ POSTGRES_PASSWORD: '', BOT_TOKEN: '' });
  expect(readConfig({ ...given }).mode).toBe('rehearsal');
});

it('with every line taken in, each setting is there with an example that is accepted', () => {
  const all = parseEnv(FILE.replace(/^# ?(?=[A-Z_]+=)/gm, ''));
  expect(Object.keys(all).sort()).toEqual(['POSTGRES_PASSWORD', ...Object.keys(SETTINGS)].sort());
  // No real bot may choose its time, and nobody has a stand-in's address as well.
  const { CLOCK_START, API_ROOT, BOT_TOKEN, ...rest } = all;
  expect([CLOCK_START, API_ROOT, BOT_TOKEN].every((value) => value !== undefined)).toBe(true);
  expect(readConfig({ ...rest, BOT_TOKEN: '123456:ABC-DEF' }).mode).toBe('live');
});
