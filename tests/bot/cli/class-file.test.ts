import { mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  addBook,
  addBreak,
  archiveChild,
  getPlans,
  listBooks,
  listBreaks,
  listChildren,
  listRunningClasses,
  type OpenStore,
  setHolidayPlace,
} from '../../../db/index.ts';
import { aCli, dataOf, type RunCli } from '../../support/cli-runs.ts';
import { aChild, aClass, aFamily, aTeacher, type Classroom } from '../../support/people.ts';
import { anEvening } from '../../support/practice.ts';
import { embedded } from '../../support/stores.ts';
import { FRIDAY, MONDAY, MORNING, PLAN } from '../../support/term.ts';

const NOBODY = '019a0000-0000-7000-8000-0000000000c1';
const BOOK = { title: 'Pebble Path', firstPage: 1, lastPage: 64, pagesADay: 2 };
let folder: string;
let store: OpenStore;
let classroom: Classroom;
let childId: string;
let run: RunCli;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'suppersums-class-file-'));
  store = await embedded.open();
  run = aCli({}, { store });
  classroom = await aClass(store);
  const { scope } = classroom;
  const family = await aFamily(store, classroom);
  childId = family.child.id;
  await anEvening(store, classroom, family);
  const { number } = await aChild(store, classroom, 'Otter');
  await archiveChild(store, scope, { number, now: MORNING });
  await aChild(store, classroom, 'Robin');
  await addBook(store, scope, { book: BOOK, now: MORNING });
  const days = { first: FRIDAY, last: FRIDAY };
  await addBreak(store, scope, { break: days, title: 'Fair', now: MORNING });
  await setHolidayPlace(store, scope, 'ZA');
});
afterAll(async () => {
  await store.close();
  await rm(folder, { recursive: true, force: true });
});

describe('export', () => {
  it('gives out everything about a child, its helpers too', async () => {
    const data = dataOf(await run('export', '--child', childId, '--json'));
    expect(data).toMatchObject({
      format: 'suppersums-child-record',
      version: 1,
      childId,
      child: { nickname: 'Wren', classTitle: 'Kingfisher class' },
      helpers: [{ leftAt: null, agreements: [{ textVersion: '1' }] }],
      evenings: [{ day: MONDAY }],
    });
  });

  it('gives out a class with all its children, to a file for its owner’s eyes only', async () => {
    const file = join(folder, 'class.json');
    const { classId } = classroom.scope;
    const { code, out } = await run('export', '--class', classId, '--to', file);
    expect(code).toBe(0);
    expect(out).toContain('delete it when it has served');
    expect((await stat(file)).mode & 0o777).toBe(0o600);
    const data = JSON.parse(await readFile(file, 'utf8'));
    expect(data).toMatchObject({
      class: { title: 'Kingfisher class', country: 'ZA', archivedAt: null },
      teachers: [{ role: 'lead' }],
      plan: PLAN,
      books: [BOOK],
      breaks: [{ first: FRIDAY, last: FRIDAY, title: 'Fair' }],
      children: [{ nickname: 'Wren' }, { nickname: 'Otter' }, { nickname: 'Robin' }],
    });
    expect(data.records).toHaveLength(3);
    const again = await run('export', '--class', classId, '--to', file);
    expect(again).toMatchObject({ code: 1, err: expect.stringContaining('another name') });
  });

  it('says when there is no such child or class', async () => {
    for (const kind of ['child', 'class']) {
      const { code, err } = await run('export', `--${kind}`, NOBODY);
      expect({ code, err }).toEqual({
        code: 1,
        err: expect.stringContaining(`There is no ${kind} with this id`),
      });
    }
  });
});

/** A file that cannot be taken, what is wrong with it, and what is said. */
const REFUSED: readonly [what: string, change: object | string, said: string][] = [
  ['no JSON', 'Wren\nOtter', 'is not JSON'],
  ['another format', { format: 'else' }, 'format: is not “suppersums-class”'],
  ['a newer version', { version: 2 }, 'version: is not 1'],
  [
    'a day that is none',
    { breaks: [{ first: '2026-02-30', last: '2026-03-01', title: 'x' }] },
    'breaks.0.first: “2026-02-30”',
  ],
  [
    'a step that is none',
    { plan: { parts: [{ rung: 'bonds.to11', cards: 5, seconds: 3 }] } },
    'plan.parts.0.rung: unknown rung bonds.to11',
  ],
  [
    'too few cards',
    { plan: { parts: [{ rung: 'bonds.to10', cards: 1, seconds: 3 }] } },
    'too few cards',
  ],
  ['a nickname twice', { children: ['Wren', 'wren'] }, 'children.1: “wren” comes twice'],
  ['a nickname that is too long', { children: ['W'.repeat(31)] }, 'has 31 characters; at most 30'],
  ['no nickname', { children: ['  '] }, 'children.0: has no nickname'],
  ['a zone that is none', { class: { title: 'Heron class', zone: 'Mars/Base' } }, 'class.zone'],
  [
    'too many children',
    { children: Array.from({ length: 80 }, (_, at) => `Wren ${at}`) },
    'more than a class can hold',
  ],
];

describe('import', () => {
  it('makes the class of an export anew, without families and what left, and says so', async () => {
    const file = join(folder, 'export.json');
    await run('export', '--class', classroom.scope.classId, '--to', file);
    const { code, out } = await run('import', file);
    expect(code).toBe(0);
    expect(out).toContain('2 children, 1 workbooks, 1 breaks, its plan in use');
    expect(out).toContain('Not taken: families');
    const [, classId = ''] = /^Class (\S+) is made/.exec(out) ?? [];
    const scope = { ...classroom.scope, classId };
    expect(scope.classId).not.toBe(classroom.scope.classId);
    const children = await listChildren(store, scope);
    expect(children.map(({ number, nickname, helpers }) => [number, nickname, helpers])).toEqual([
      [1, 'Wren', 0],
      [2, 'Robin', 0],
    ]);
    expect((await getPlans(store, scope)).active?.plan).toEqual(PLAN);
    expect(await listBooks(store, scope)).toMatchObject([BOOK]);
    expect(await listBreaks(store, scope.classId, MONDAY)).toMatchObject([{ title: 'Fair' }]);
  });

  it('takes a file written by hand that names no more than title, zone and nicknames', async () => {
    const { classId, ...rest } = await imported({ children: ['Wren', ' 2. Otter '] });
    expect(rest).toEqual({ children: 2, books: 0, breaks: 0, hasPlan: false });
    const made = (await listRunningClasses(store)).find(({ id }) => id === classId);
    expect(made).toMatchObject({ title: 'Heron class', eveningTime: '17:30', nudgeTime: '19:00' });
  });

  it.each(REFUSED)('refuses %s and makes nothing', async (_, change, part) => {
    const before = (await listRunningClasses(store)).length;
    const { code, out, err } = await run('import', await fileOf(change));
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain(part);
    expect(err).toContain(typeof change === 'string' ? 'JSON' : 'nothing was changed');
    expect(await listRunningClasses(store)).toHaveLength(before);
  });

  it('asks whose class it is once there are two teachers', async () => {
    const second = await aTeacher(store);
    const file = await fileOf({});
    const { code, err } = await run('import', file);
    expect(code).toBe(2);
    const own = err.split('\n').find((line) => line.startsWith(classroom.teacher.id));
    expect(own).toMatch(/since 2026-09-14 .*Kingfisher class/);
    expect(err).toContain(`${second.id}  since 2026-09-14  no class yet`);
    expect((await run('import', file, '--teacher', second.id)).code).toBe(0);
    const nobody = await run('import', file, '--teacher', NOBODY);
    expect(nobody).toMatchObject({ code: 1, err: expect.stringContaining('There is no teacher') });
  });
});

async function imported(change: object): Promise<Record<string, unknown>> {
  return { ...Object(dataOf(await run('import', await fileOf(change), '--json'))) };
}

async function fileOf(change: object | string): Promise<string> {
  const file = join(folder, 'heron.json');
  const whole = {
    format: 'suppersums-class',
    version: 1,
    class: { title: 'Heron class', zone: 'Europe/London' },
  };
  const text = typeof change === 'string' ? change : JSON.stringify({ ...whole, ...change });
  await writeFile(file, text);
  return file;
}
