import { mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { clearHalfLoaded, noteDemoLoaded } from '../../../bot/roots/demo-marker.ts';

let folder: string;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'suppersums-marker-'));
  await mkdir(join(folder, 'database'));
  await writeFile(join(folder, 'chats.json'), '{}');
  await writeFile(join(folder, 'lock'), '1');
});
afterEach(() => rm(folder, { recursive: true, force: true }));

it('a rehearsal stopped while its class was loading starts afresh, its lock kept', async () => {
  await clearHalfLoaded(folder);
  expect(await readdir(folder)).toEqual(['lock']);
});

it('a rehearsal that was loaded to the end is left as it is', async () => {
  await noteDemoLoaded(folder);
  const before = await readdir(folder);
  await clearHalfLoaded(folder);
  expect(await readdir(folder)).toEqual(before);
  expect(before).toContain('database');
});
