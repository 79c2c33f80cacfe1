import { spawnSync } from 'node:child_process';
import { lstatSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

/** What a run needs of node_modules: packages, and megabytes (10^6 bytes) of their files' lengths. */
export interface InstallSize {
  readonly packages: number;
  readonly mb: number;
  /** Without maps and type declarations, as the image has it. */
  readonly prunedMb: number;
}

const NOT_NEEDED = /\.(map|d\.[cm]?ts)$/;

/** Adds up the packages that `npm ci --omit=dev` would install on this computer. */
export function installSize(): InstallSize {
  const { stdout } = spawnSync('npm', ['ls', '--omit=dev', '--all', '--parseable'], {
    encoding: 'utf8',
  });
  const [, ...folders] = [...new Set(stdout.trim().split('\n'))];
  const sizes = folders.flatMap(sizesIn);
  const sum = (of: typeof sizes) => of.reduce((total, { bytes }) => total + bytes, 0) / 1e6;
  return {
    packages: folders.length,
    mb: sum(sizes),
    prunedMb: sum(sizes.filter(({ name }) => !NOT_NEEDED.test(name))),
  };
}

/** The files of a package; packages inside it are counted by themselves. */
function sizesIn(folder: string): { readonly name: string; readonly bytes: number }[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return entry.name === 'node_modules' ? [] : sizesIn(path);
    return [{ name: entry.name, bytes: lstatSync(path).size }];
  });
}
