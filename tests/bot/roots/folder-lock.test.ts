import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { FolderInUse, lockFolder } from '../../../bot/roots/folder-lock.ts';

/** A process that lives, for sure: this one. */
const LIVING = process.pid;
const OURS = process.pid + 1;

async function folder(): Promise<string> {
  const made = await mkdtemp(join(tmpdir(), 'suppersums-lock-'));
  onTestFinished(() => rm(made, { recursive: true, force: true }));
  return made;
}

/** The number of a process that has ended. */
async function dead(): Promise<number> {
  const child = spawn(process.execPath, ['-e', '']);
  await once(child, 'exit');
  if (child.pid === undefined) throw new Error('the process did not start');
  return child.pid;
}

const ownerOf = (path: string) => readFile(join(path, 'lock'), 'utf8');

it('a folder that is not there yet is made and taken', async () => {
  const path = join(await folder(), 'new', 'data');
  await lockFolder(path, OURS);
  expect(await ownerOf(path)).toBe(String(OURS));
});

it('a folder in use by a living process is refused, and the refusal says whose it is and what to do', async () => {
  const path = await folder();
  await lockFolder(path, LIVING);
  const second = lockFolder(path, OURS);
  await expect(second).rejects.toThrow(FolderInUse);
  await expect(second).rejects.toThrow(
    `${path} is in use by process ${LIVING}. Stop that one first, or set DATA_DIR to another folder.`,
  );
  expect(await ownerOf(path)).toBe(String(LIVING));
});

it('a lock left by a process that no longer lives is taken over', async () => {
  const path = await folder();
  await lockFolder(path, await dead());
  await lockFolder(path, OURS);
  expect(await ownerOf(path)).toBe(String(OURS));
});

it('a lock left under our own number by an earlier start is taken over', async () => {
  const path = await folder();
  await lockFolder(path, LIVING);
  await lockFolder(path, LIVING);
  expect(await ownerOf(path)).toBe(String(LIVING));
});

it.each(['', 'hello', '-1', '0'])('a lock that names nobody is taken over: %j', async (content) => {
  const path = await folder();
  await writeFile(join(path, 'lock'), content);
  await lockFolder(path, OURS);
  expect(await ownerOf(path)).toBe(String(OURS));
});

it('a folder let go can be taken again, and letting go twice does no harm', async () => {
  const path = await folder();
  const release = await lockFolder(path, LIVING);
  await release();
  await release();
  await lockFolder(path, OURS);
  expect(await ownerOf(path)).toBe(String(OURS));
});

it('a folder that cannot be made is an error of its own, not a folder in use', async () => {
  const file = join(await folder(), 'file');
  await writeFile(file, '');
  const refused = lockFolder(file, OURS);
  await expect(refused).rejects.toThrow('EEXIST');
  await expect(refused).rejects.not.toThrow(FolderInUse);
});
