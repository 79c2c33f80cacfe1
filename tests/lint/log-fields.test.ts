import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const ROOT = join(import.meta.dirname, '..', '..');

/** Every field a log line may have, and what it holds. None can hold a name, a code, a token or a text that somebody wrote. */
const FIELDS: Readonly<Record<string, string>> = {
  updateId: 'the service’s number of an update',
  updates: 'a count',
  tries: 'a count',
  seconds: 'a count',
  week: 'a count',
  erased: 'a count',
  owed: 'a count',
  summarised: 'a count',
  purged: 'a count',
  gone: 'a truth value',
  botId: 'an id',
  classId: 'an id',
  childId: 'an id',
  eveningId: 'an id',
  ledgerId: 'an id',
  action: 'a kind of action, one of a closed list',
  kind: 'a kind of ledger row, one of a closed list',
  code: 'an error code: ours of a closed list, or the service’s number',
  what: 'the thing an error is about, as written in our code',
  problem: 'what an error is called (problemOf, apiProblem)',
};

/** What is spread into a line: each is made of the fields above or of counts. */
const SPREAD: readonly string[] = ['...apiProblem(error)', '...report', '...fields'];

const LINE = /\blog\??\.(?:info|warn|error|debug)\(\s*(?<fields>\{[^}]*\}|[^,)]+)/g;

function sources(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => join(folder, file));
}

/** The names of the fields of each line that is logged, with the file it is logged in. */
function logged(): { file: string; field: string }[] {
  return ['bot', 'db', 'jobs'].flatMap(sources).flatMap((file) => {
    const text = readFileSync(join(ROOT, file), 'utf8');
    return [...text.matchAll(LINE)].flatMap(({ groups }) =>
      (groups?.fields ?? '')
        .replace(/^\{|\}$/g, '')
        .split(',')
        .map((field) => field.trim().replace(/:[\s\S]*$/, ''))
        .filter((field) => field !== '')
        .map((field) => ({ file, field })),
    );
  });
}

it('a log line has fields of the list only: ids, counts, codes', () => {
  const all = logged();
  expect(all.length).toBeGreaterThan(40);
  const known = [...Object.keys(FIELDS), ...SPREAD];
  expect(all.filter(({ field }) => !known.includes(field))).toEqual([]);
});

it('the list has no field that nothing logs any more', () => {
  const used = new Set(logged().map(({ field }) => field));
  expect(Object.keys(FIELDS).filter((field) => !used.has(field))).toEqual([]);
});
