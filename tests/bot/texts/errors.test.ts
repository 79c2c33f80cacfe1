import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readIn } from '../../../bot/language/index.ts';
import { errorText, ourFault, staleButton, tryingAgain } from '../../../bot/texts/errors.ts';
import { codesPaused } from '../../../bot/texts/limits.ts';
import { AppError, type ErrorCode } from '../../../db/index.ts';

const root = join(import.meta.dirname, '../../..');
const THROWN = /new AppError\(\s*'(\w+)',\s*'([^']+)'/g;
const REFUSED = /refuse\('([^']+)'\)/g;
const CODES: readonly ErrorCode[] = ['not_found', 'invalid', 'conflict', 'expired', 'used_up'];

/** What only the operator meets, when a program is started. */
const OPERATORS = ['roots', 'claim-store', 'dead-letters'];

/** Where the general reply says all there is to say. */
const GENERAL = ['not_found class', 'not_found child', 'not_found helper'];
/** The only thing of its code, so its reply is the general one. */
const ONLY_ONE = ['expired evening', 'used_up slip'];

const thrown = await thrownPairs();

describe('the reply to an error of ours', () => {
  it('is looked for in every place that throws one', async () => {
    const throwing = (await sources()).flatMap((text) => text.match(/new AppError\(.*/g) ?? []);
    const unnamed = throwing.filter((line) => !/new AppError\(('\w+', '[^']+'|$)/.test(line));
    expect(unnamed).toContain("new AppError('invalid', what);");
    expect(new Set(unnamed).size).toBe(1);
    expect(thrown.length).toBeGreaterThan(20);
  });

  it.each(thrown.filter(([code, what]) => !GENERAL.includes(`${code} ${what}`)))(
    'has words of its own: %s, %s',
    (code, what) => {
      const general = errorText(new AppError(code, 'something else'));
      const reply = errorText(new AppError(code, what));
      if (ONLY_ONE.includes(`${code} ${what}`)) expect(reply).toBe(general);
      else expect(reply).not.toBe(general);
    },
  );

  it.each(thrown)('is one or more whole sentences that fit an alert: %s, %s', (code, what) => {
    const reply = errorText(new AppError(code, what));
    expect(reply).toMatch(/^[A-Z].*\.$/);
    expect(reply).not.toMatch(/undefined|null|NaN| {2}/);
    // The service takes 200 characters in the answer to a tap.
    expect(reply.length).toBeLessThanOrEqual(200);
  });

  it('names the range of what can be out of range', () => {
    const ranges: Record<string, string> = {
      title: '1 to 60',
      'evening time': '06:00 to 20:00',
      'nudge time': '20:45',
      'nudge too early': '45 minutes',
      'number of children': '60',
      'book title': '1 to 60',
      page: '1 to 999',
      'pages a day': '1 to 5',
    };
    for (const [what, range] of Object.entries(ranges)) {
      expect(errorText(new AppError('invalid', what))).toContain(range);
    }
  });

  it('never tells a stranger whether a drill exists', () => {
    expect(errorText(new AppError('not_found', 'evening'))).not.toMatch(/family|child|exist/);
  });

  it('exists for a thing nobody thought of', () => {
    for (const code of CODES) {
      expect(errorText(new AppError(code, 'something else'))).toMatch(/^[A-Z].*\.$/);
    }
  });
});

it.each(['en', 'af', 'es', 'de', 'fr'] as const)(
  'every reply fits an alert in %s, and so do the words for what we did not foresee',
  (language) => {
    const replies = readIn(language, () => [
      ...thrown.map(([code, what]) => errorText(new AppError(code, what))),
      ...CODES.map((code) => errorText(new AppError(code, 'something else'))),
      ...[ourFault(), staleButton(), tryingAgain(), codesPaused(60)],
    ]);
    expect(replies.filter(({ length }) => length > 200)).toEqual([]);
    expect(replies.filter((reply) => !/^[\p{Lu}’].*\.$/u.test(reply))).toEqual([]);
  },
);

/** Every code and thing that the sources throw. */
async function thrownPairs(): Promise<[ErrorCode, string][]> {
  const pairs = new Map<string, [ErrorCode, string]>();
  for (const text of await sources()) {
    const named = [...text.matchAll(THROWN)].map(([, code = '', what = '']) => [code, what]);
    const refused = [...text.matchAll(REFUSED)].map(([, what = '']) => ['invalid', what]);
    for (const [written = '', what = ''] of [...named, ...refused]) {
      const code = CODES.find((each) => each === written);
      if (code) pairs.set(`${code} ${what}`, [code, what]);
    }
  }
  return [...pairs.values()];
}

async function sources(): Promise<string[]> {
  const folders = ['db', 'bot', 'jobs'].map((folder) => join(root, folder));
  const lists = await Promise.all(
    folders.map(async (folder) =>
      (await readdir(folder, { recursive: true }))
        .filter((file) => file.endsWith('.ts') && !OPERATORS.some((path) => file.includes(path)))
        .map((file) => readFile(join(folder, file), 'utf8')),
    ),
  );
  return Promise.all(lists.flat());
}
