import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Pure functions and nothing they could leave behind: these share a process, which saves loading everything for each file. */
const PURE = [
  'drills',
  'bot/media',
  'bot/texts',
  'bot/screens',
  'bot/callback',
  'bot/input',
  'bot/paper',
].map((folder) => `tests/${folder}/**/*.test.ts`);

const common = { testTimeout: 60_000, hookTimeout: 60_000, maxWorkers: 2 };

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    ...common,
    globalSetup: ['tests/support/global-postgres.ts'],
    projects: [
      { extends: true, test: { name: 'pure', include: PURE, isolate: false } },
      { extends: true, test: { name: 'whole', include: ['tests/**/*.test.ts'], exclude: PURE } },
    ],
  },
});
