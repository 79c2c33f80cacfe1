import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { withProgress } from '../../../bot/cli/progress.ts';
import { aCli, dataOf } from '../../support/cli-runs.ts';

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'suppersums-preview-'));
});
afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

it('an evening of the invented class is drawn without a database, in the language and way asked for', async () => {
  const to = join(folder, 'evening');
  const args = ['preview', '--to', to, '--way', 'words', '--language', 'de', '--json'];
  const done = dataOf(await aCli({})(...args));
  // Eight screens of five parts and their end, and the marking of the first part; of words only the clocks are drawn, what
  // follows them, and the result.
  expect(done).toEqual({ folder: to, language: 'de', way: 'words', messages: 9, files: 3 });
  const page = await readFile(join(to, 'evening.md'), 'utf8');
  expect(page.split('\n---\n')).toHaveLength(9);
  expect(page).toContain('Pebble Path');
  expect(page).toContain('`Fertig`');
  expect(page).not.toContain('Vorschau beenden');
  const pictures = await readdir(join(to, 'pictures'));
  expect(pictures).toEqual(['message-06.png', 'message-07.png', 'message-09.png']);
  for (const name of pictures) {
    expect(page).toContain(`(pictures/${name})`);
    const bytes = await readFile(join(to, 'pictures', name));
    // The signature of a PNG file: PNG specification (third edition), section 5.2.
    expect([...bytes.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  }
});

it('a folder with somebody’s files is left as it is', async () => {
  const note = join(folder, 'note.txt');
  await writeFile(note, 'Pebble Path');
  for (const command of ['preview', 'simulate-week']) {
    const { code, err } = await aCli({})(command, '--to', folder);
    expect(code).toBe(1);
    expect(err).toContain('Name an empty folder');
  }
  expect(await readFile(note, 'utf8')).toBe('Pebble Path');
});

const work = async (onProgress: (done: number, all: number) => void) => {
  for (const done of [0, 1, 2]) onProgress(done, 2);
  return 'done';
};

it('long work draws its progress on a terminal', async () => {
  const terminal = Object.assign(new PassThrough(), { isTTY: true });
  expect(await withProgress({ terminal }, { json: false, what: 'children' }, work)).toBe('done');
  expect(String(terminal.read())).toContain('2 of 2 children');
});

it('no progress is drawn for a script', async () => {
  const terminal = Object.assign(new PassThrough(), { isTTY: true });
  expect(await withProgress({ terminal }, { json: true, what: 'children' }, work)).toBe('done');
  expect(terminal.read()).toBeNull();
  expect(await withProgress({ terminal: null }, { json: false, what: 'x' }, work)).toBe('done');
});
