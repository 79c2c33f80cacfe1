import { execFile } from 'node:child_process';
import { cp, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { z } from 'zod';

const root = join(import.meta.dirname, '../..');
const linter = join(root, 'node_modules/@biomejs/biome/bin/biome');

const reportShape = z.object({
  diagnostics: z.array(
    z.object({
      severity: z.string(),
      category: z.string(),
      message: z.string(),
      location: z.object({ path: z.string() }),
    }),
  ),
});

/** What the linter finds wrong in one file: the rule, or `plugin` for one of ours, and its message. */
export interface Finding {
  readonly rule: string;
  readonly message: string;
}

/**
 * Lints files with the project's own settings, in a folder of their own, in one run. Keys and file names are paths from the
 * project's root. Only errors are returned: a warning stops nobody.
 */
export async function lintFiles(
  files: ReadonlyMap<string, string>,
): Promise<ReadonlyMap<string, readonly Finding[]>> {
  const folder = await mkdtemp(join(tmpdir(), 'suppersums-lint-'));
  try {
    await cp(join(root, 'biome.json'), join(folder, 'biome.json'));
    for (const rules of ['clock.grit', 'pure.grit', 'texts.grit']) {
      await cp(join(import.meta.dirname, rules), join(folder, 'tests/lint', rules));
    }
    for (const [path, text] of files) {
      await mkdir(dirname(join(folder, path)), { recursive: true });
      await writeFile(join(folder, path), text);
    }
    const { diagnostics } = reportShape.parse(JSON.parse(await lint(folder)));
    const found = new Map<string, Finding[]>([...files.keys()].map((path) => [path, []]));
    for (const { severity, category, message, location } of diagnostics) {
      if (severity !== 'error') continue;
      const rule = category.split('/').at(-1) ?? category;
      found.get(location.path.replaceAll('\\', '/'))?.push({ rule, message });
    }
    return found;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** The linter's report. It ends with an error when it finds one, which is what we want. */
async function lint(folder: string): Promise<string> {
  const command = [linter, 'lint', '--reporter=json', '--max-diagnostics=none', '.'];
  try {
    const { stdout } = await promisify(execFile)(process.execPath, command, { cwd: folder });
    return stdout;
  } catch (error) {
    if (error instanceof Error && 'stdout' in error && error.stdout !== '') {
      return String(error.stdout);
    }
    throw error;
  }
}
