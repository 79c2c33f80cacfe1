import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Pure functions, which need no database. */
const PURE = [
  'drills',
  'bot/media',
  'bot/texts',
  'bot/screens',
  'bot/callback',
  'bot/input',
  'bot/paper',
].map((folder) => `tests/${folder}/**/*.test.ts`);

/** Real processes that are killed, a week from a backup, every button by everybody: `npm run test:long`, which CI runs after these. */
const LONG = [
  'e2e/roles',
  'e2e/crash',
  'e2e/restored-week',
  'e2e/wrong-actors',
  'db/upgrade/releases',
].map((file) => `tests/${file}.test.ts`);
// biome-ignore lint/style/noProcessEnv: the test runner passes nothing else from the command line.
const skipped = process.env.LONG === 'yes' ? [] : LONG;

/** Files share a process: that saves loading everything for each, and databases are kept from one to the next. */
const common = { testTimeout: 60_000, hookTimeout: 60_000, maxWorkers: 2, isolate: false };

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    ...common,
    globalSetup: ['tests/support/global-postgres.ts'],
    projects: [
      { extends: true, test: { name: 'pure', include: PURE } },
      {
        extends: true,
        test: { name: 'whole', include: ['tests/**/*.test.ts'], exclude: [...PURE, ...skipped] },
      },
    ],
  },
});
