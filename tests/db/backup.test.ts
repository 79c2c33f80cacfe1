import { createHash } from 'node:crypto';
import { mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { tablesInOrder } from '../../db/backup/tables-in-order.ts';
import {
  addChildren,
  checkBackup,
  eraseChild,
  issueSlips,
  listErasures,
  type OpenStore,
  type Restored,
  type RestoreWanted,
  restoreBackup,
  type Store,
  writeBackup,
  writeErasures,
} from '../../db/index.ts';
import { aClass, aFamily, aSecondClass } from '../support/people.ts';
import { anEvening, markPart } from '../support/practice.ts';
import { dumpAll, readTable, runSql, TABLES } from '../support/raw-rows.ts';
import { backends, embedded, server } from '../support/stores.ts';
import { evening, MONDAY, MORNING } from '../support/term.ts';
import { tablesWith } from '../support/whole-database.ts';

const MADE = evening(MONDAY, 10);
const LATER = evening(MONDAY, 24 * 60);

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'suppersums-backup-'));
});
afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

let made = 0;
const aFile = () => {
  made += 1;
  return join(folder, `${made}.gz`);
};

/** Backs a store up as it stands. */
async function backedUp(store: Store, madeAt = MADE): Promise<string> {
  const file = aFile();
  await writeBackup(store, { file, madeAt });
  return file;
}

/** Restores into an empty store and looks at it. */
async function restored<T>(
  wanted: Omit<RestoreWanted, 'now'>,
  look: (store: OpenStore, done: Restored) => Promise<T>,
  backend = server,
): Promise<T> {
  const store = await backend.open();
  try {
    return await look(store, await restoreBackup(store, { now: LATER, ...wanted }));
  } finally {
    await store.close();
  }
}

/** What the operator is told. */
async function toldOf(work: Promise<unknown>): Promise<string> {
  return work.then(
    () => 'it went through',
    (error) =>
      error instanceof Error && error.name === 'BackupError' ? error.message : `${error}`,
  );
}

/** A school with marks, a correction, strange names, an update nobody has handled, and a message for later. */
async function aSchool(store: Store) {
  const classroom = await aClass(store);
  const family = await aFamily(store, classroom, { nickname: 'Zoë "\\n" 😀', helpers: 2 });
  const { scope, view } = await anEvening(store, classroom, family);
  await markPart(store, scope, { part: 0, missed: [1], now: evening(MONDAY, 5) });
  await markPart(store, scope, { part: 0, missed: [2, 3], now: evening(MONDAY, 6) }, [1]);
  const gone = await aFamily(store, classroom, { nickname: 'Otter' });
  await eraseChild(store, { childId: gone.child.id, now: evening(MONDAY, 7) });
  const payload = JSON.stringify({ text: 'a\nb', big: 9007199254740991, low: -0.5, none: null });
  await runSql(
    store,
    `insert into inbox (bot_id, update_id, actor_id, payload, status, received_at, not_before)
       values (0, 5, 7, '${payload}', 'pending', '2026-09-14T15:30:00.123456Z', 'epoch')`,
  );
  await runSql(store, `update rate set next_at = '2026-09-14T17:30:00.000001+02'`);
  return { classroom, family, view };
}

describe('a backup of either engine, restored into the other', () => {
  it.each([
    { from: embedded, to: server },
    { from: server, to: embedded },
  ])('brings back every row of $from.name on $to.name, to the last digit', async ({ from, to }) => {
    const store = await from.open();
    await aSchool(store);
    const [before, file] = [await dumpAll(store), await backedUp(store)];
    await store.close();
    await restored(
      { file, ranUntil: MADE },
      async (other, done) => {
        expect(await dumpAll(other)).toEqual(before);
        expect(done).toMatchObject({ upgraded: false, erased: 0, unknown: 0 });
        expect((await runSql(other, 'select * from pgboss.job')).length).toBe(0);
      },
      to,
    );
  });
});

describe('a backup file', () => {
  let store: OpenStore;
  let file: string;
  let there: Awaited<ReturnType<typeof aSchool>>;
  beforeAll(async () => {
    store = await server.open();
    there = await aSchool(store);
    file = await backedUp(store);
  });
  afterAll(() => store.close());
  asItIsMade(() => ({ store, file, ...there }));
  asItIsRefused(() => ({ store, file }));
});

type Made = Awaited<ReturnType<typeof aSchool>> & {
  readonly store: OpenStore;
  readonly file: string;
};

function asItIsMade(opened: () => Made) {
  it('says at its beginning what is in it, and is its owner’s alone', async () => {
    const { store, file } = opened();
    const header = await checkBackup(file);
    expect(header).toMatchObject({ version: 1, madeAt: MADE.toISOString() });
    expect(header.tables.map(({ name }) => name).sort()).toEqual(TABLES);
    for (const { name, rows } of header.tables) {
      expect(rows, name).toBe((await readTable(store, name)).length);
    }
    expect((await stat(file)).mode & 0o777).toBe(0o600);
  });

  it('lists a table after those it refers to', async () => {
    const { store } = opened();
    const keys = await runSql(
      store,
      `select conrelid::regclass::text as own, confrelid::regclass::text as other from pg_constraint
         where contype = 'f' and connamespace = 'public'::regnamespace`,
    );
    const place = (name: unknown) => tablesInOrder().indexOf(String(name).replaceAll('"', ''));
    expect(keys.length).toBeGreaterThan(30);
    for (const { own, other } of keys) expect(place(own)).toBeGreaterThan(place(other));
  });

  it('never takes the place of another file', async () => {
    const { store, file } = opened();
    const before = await readFile(file);
    const told = await toldOf(writeBackup(store, { file, madeAt: LATER }));
    expect(told).toBe(`There is a file ${file} already. Give the backup another name.`);
    expect(await readFile(file)).toEqual(before);
  });

  it('is of one moment, though people go on', async () => {
    const { store, classroom } = opened();
    const { scope } = classroom;
    const own = aFile();
    let goingOn: Promise<unknown> = Promise.resolve();
    await writeBackup(store, {
      file: own,
      madeAt: MADE,
      onProgress: (done) => {
        if (done > 0) return;
        goingOn = addChildren(store, scope, { nicknames: ['Robin'], now: MORNING }).then((added) =>
          issueSlips(store, scope, { childIds: added.map(({ id }) => id), now: MORNING }),
        );
      },
    });
    await goingOn;
    await restored({ file: own }, async (other) => {
      const counts = async (each: Store) =>
        Promise.all(['child', 'slip'].map(async (name) => (await readTable(each, name)).length));
      const [children = 0, slips = 0] = await counts(store);
      expect([
        [children, slips],
        [children - 1, slips - 1],
      ]).toContainEqual(await counts(other));
    });
  });
}

function asItIsRefused(opened: () => Pick<Made, 'store' | 'file'>) {
  it('is refused with a plain word when it is cut off, changed, foreign, newer or not there', async () => {
    const { file } = opened();
    const whole = await readFile(file);
    const text = gunzipSync(whole).toString();
    const head = (from: string | RegExp, to: string) => text.replace(from, to);
    const cases: [string | Buffer, RegExp][] = [
      [whole.subarray(0, whole.length - 20), /is not whole/],
      [gzipSync(text.replace('Kingfisher', 'Kingfishes')), /is not whole/],
      [gzipSync(text.slice(0, text.lastIndexOf('{"'))), /is not whole/],
      [gzipSync(`${text}{}\n`), /is not whole/],
      [gzipSync(head('"tables"', '"rows"')), /is not whole/],
      ['a letter', /is no backup of Suppersums/],
      ['', /is not whole/],
      [gzipSync('{"format":"other"}\n'), /is no backup of Suppersums/],
      [
        gzipSync(head('"version":1', '"version":2')),
        /has format 2; this release reads formats up to 1/,
      ],
      [gzipSync(head(/"migrations":\d+/, '"migrations":999')), /made by Suppersums .* a newer one/],
      [gzipSync(head(/"hash":"./, '"hash":"x')), /not one of this release’s earlier ones/],
      [gzipSync(head('"name":"teacher"', '"name":"pg_class"')), /rows of “pg_class”, which/],
    ];
    const empty = await server.open();
    const before = await dumpAll(empty);
    for (const [content, problem] of cases) {
      const bad = aFile();
      await writeFile(bad, content);
      expect(await toldOf(restoreBackup(empty, { file: bad, now: LATER }))).toMatch(problem);
    }
    const nowhere = restoreBackup(empty, { file: join(folder, 'none.gz'), now: LATER });
    expect(await toldOf(nowhere)).toMatch(/^There is no file .*none\.gz\.$/);
    const aFolder = restoreBackup(empty, { file: folder, now: LATER });
    expect(await toldOf(aFolder)).toMatch(/is a folder/);
    expect(await dumpAll(empty)).toEqual(before);
    await empty.close();
  });

  it('whose rows break a key leaves nothing behind', async () => {
    const { file } = opened();
    const [head = '', ...lines] = gunzipSync(await readFile(file))
      .toString()
      .split('\n');
    const body = lines.join('\n').replaceAll('"role": "lead"', '"role": null');
    const sha256 = createHash('sha256').update(body).digest('hex');
    const bad = aFile();
    await writeFile(bad, gzipSync(`${JSON.stringify({ ...JSON.parse(head), sha256 })}\n${body}`));
    const empty = await server.open();
    const before = await dumpAll(empty);
    const told = await toldOf(restoreBackup(empty, { file: bad, now: LATER }));
    expect(told).toBe(
      'Rows of “class_teacher” in the backup do not fit this database (PostgresError 23502). Nothing was restored.',
    );
    expect(await dumpAll(empty)).toEqual(before);
    await empty.close();
  });

  it('goes into no database that has anything in it, and changes nothing there', async () => {
    const { store, file } = opened();
    const before = await dumpAll(store);
    const told = await toldOf(restoreBackup(store, { file, now: LATER }));
    expect(told).toMatch(
      /^The database is not empty \(.*child, class, .*\)\. A backup is restored/,
    );
    expect(await dumpAll(store)).toEqual(before);
  });
}

describe.each(backends)('messages in a backup, restored on $name', (backend) => {
  it('on their way are not known to have come; due ones are sent only if the bot had stopped before', async () => {
    const store = await backend.open();
    const classroom = await aClass(store);
    const other = await aSecondClass(store, classroom);
    const sending = await aFamily(store, classroom);
    const due = await aFamily(store, other, { nickname: 'Otter' });
    await anEvening(store, classroom, sending);
    await anEvening(store, other, due);
    await runSql(
      store,
      `update ledger set status = 'attempting', attempted_at = '${MADE.toISOString()}'
         where class_id = '${classroom.schoolClass.id}'`,
    );
    const file = await backedUp(store);
    await store.close();
    const states = async (each: Store) =>
      (await readTable(each, 'ledger'))
        .map(({ kind, status, problem }) => [kind, status, problem])
        .sort();
    await restored(
      { file, ranUntil: MADE },
      async (one, { unknown }) => {
        expect(unknown).toBe(1);
        expect(await states(one)).toEqual([
          ['evening', 'planned', null],
          ['evening', 'unknown', 'restored'],
        ]);
      },
      backend,
    );
    await restored(
      { file },
      async (one, { unknown }) => {
        expect(unknown).toBe(2);
        // The nudge of that evening may have come too.
        expect(await states(one)).toEqual([
          ['evening', 'unknown', 'restored'],
          ['evening', 'unknown', 'restored'],
          ['nudge', 'unknown', 'restored'],
          ['nudge', 'unknown', 'restored'],
        ]);
      },
      backend,
    );
  });
});

describe('who was erased after the backup', () => {
  it('comes back with it, and is erased again by the list that was kept, or by a newer backup', async () => {
    const store = await server.open();
    const { classroom, family } = await aSchool(store);
    const sibling = await aFamily(store, classroom, { nickname: 'Zaunkönigin' });
    const old = await backedUp(store);
    const came = await aFamily(store, classroom, { nickname: 'Robin' });
    for (const { child } of [sibling, came]) {
      await eraseChild(store, { childId: child.id, now: evening(MONDAY, 30) });
    }
    const list = join(folder, 'erasures.jsonl');
    expect(await writeErasures(list, await listErasures(store))).toBe(6);
    const newer = await backedUp(store, LATER);
    const known = await listErasures(store);
    await store.close();
    expect(await readFile(list, 'utf8')).not.toContain('Zaunkönigin');
    await restored({ file: old }, async (other) => {
      expect(await tablesWith(other, 'Zaunkönigin')).toEqual(['public.child']);
    });
    for (const erasures of [list, newer]) {
      await restored({ file: old, erasures }, async (other, { erased }) => {
        expect(erased).toBe(1);
        expect(await tablesWith(other, 'Zaunkönigin')).toEqual([]);
        expect(await tablesWith(other, sibling.helper.id)).toEqual(['public.erasure']);
        expect(await tablesWith(other, family.child.id)).toContain('public.child');
        const brief = (each: typeof known) =>
          each.map(({ kind, id, at }) => `${at} ${kind} ${id}`).sort();
        expect(brief(await listErasures(other))).toEqual(brief(known));
      });
    }
  });

  it('is not read from anything else', async () => {
    const file = aFile();
    const empty = await server.open();
    const source = await backedUp(empty);
    for (const text of [
      '',
      '{}\n',
      '{"format":"suppersums-erasures","version":1}\n{"kind":"child"}\n',
    ]) {
      await writeFile(file, text);
      const told = toldOf(restoreBackup(empty, { file: source, now: LATER, erasures: file }));
      expect(await told).toMatch(/is no list of what was erased/);
    }
    const none = restoreBackup(empty, { file: source, now: LATER, erasures: join(folder, 'none') });
    expect(await toldOf(none)).toMatch(/cannot be read \(ENOENT\)/);
    await empty.close();
  });
});
