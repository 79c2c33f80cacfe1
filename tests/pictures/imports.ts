import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const HOUSE = ['bot', 'jobs', 'db', 'drills', 'rehearsal'];
const CODE = /\.(?:ts|js|mjs)$/;
const IMPORT =
  /(?:^|\n)\s*(?:import|export)\b[^'"`;]*?from\s*'([^']+)'|\bimport\(\s*'([^']+)'\s*\)/g;

/** One file of ours that imports another of ours; types count like everything else. Paths as from the project's folder. */
export interface Import {
  readonly from: string;
  readonly to: string;
}

/** Every import between files of ours outside the tests. */
export function readImports(): Import[] {
  return HOUSE.flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
      .filter((file) => CODE.test(file))
      .flatMap((file) =>
        importsIn(join(folder, file), readFileSync(join(ROOT, folder, file), 'utf8')),
      ),
  );
}

/**
 * The imports of one file that lead to a file of ours.
 *
 * @example
 * importsIn('bot/main.ts', "import { a } from './roots/a.ts';"); // [{ from: 'bot/main.ts', to: 'bot/roots/a.ts' }]
 */
export function importsIn(file: string, text: string): Import[] {
  return [...text.matchAll(IMPORT)]
    .map(([, still, lazy]) => still ?? lazy ?? '')
    .filter((name) => name.startsWith('.'))
    .map((name) => ({ from: file, to: relative(ROOT, resolve(ROOT, dirname(file), name)) }));
}

/**
 * Which rooms import which: pairs without doubles, none of a room with itself. `roomOf` is null for a file that is not shown.
 *
 * @example
 * roomsOf([{ from: 'jobs/tick.ts', to: 'db/index.ts' }], (file) => file.split('/')[0] ?? null); // [{ from: 'jobs', to: 'db' }]
 */
export function roomsOf(
  imports: readonly Import[],
  roomOf: (file: string) => string | null,
): Import[] {
  const pairs = new Map<string, Import>();
  for (const each of imports) {
    const [from, to] = [roomOf(each.from), roomOf(each.to)];
    if (from !== null && to !== null && from !== to) pairs.set(`${from} ${to}`, { from, to });
  }
  return [...pairs.values()].sort((a, b) =>
    `${a.from} ${a.to}`.localeCompare(`${b.from} ${b.to}`, 'en'),
  );
}
