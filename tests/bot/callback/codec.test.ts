import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ACTIONS, type Action, RETIRED_TAGS } from '../../../bot/callback/actions.ts';
import { MAX_BYTES, pack, unpack } from '../../../bot/callback/codec.ts';
import { packPlace } from '../../../bot/callback/plan-place.ts';
import { runGroups } from '../../../bot/screens/run-groups.ts';
import { PLAN_LIMITS, PROFILES, RUNGS, STRANDS, TERM_WEEKS } from '../../../drills/index.ts';
import { anyAction } from '../support/any-action.ts';

const evening = '019a0000-0000-7000-8000-000000000001';
const classId = evening;

describe('a button', () => {
  it('reads as its docstring says', () => {
    expect(pack({ kind: 'pages', evening, pages: 2 })).toBe('1:pg:AZoAAAAAcACAAAAAAAAAAQ:2');
  });

  it('comes back as the action it was made of, whatever its kind', () => {
    fc.assert(
      fc.property(anyAction, (action) => {
        expect(unpack(pack(action))).toEqual(action);
      }),
      { numRuns: 1_000 },
    );
  });

  it('never takes more bytes than the service carries', () => {
    fc.assert(
      fc.property(anyAction, (action) => {
        expect(Buffer.byteLength(pack(action))).toBeLessThanOrEqual(64);
      }),
      { numRuns: 1_000 },
    );
  });

  it('has room for the longest values there are', () => {
    const at = { classId, part: packPlace({ week: TERM_WEEKS.max, part: 5, slot: 2 }) };
    const counting = { strand: 'counting', page: 9999 };
    const longest: Action[] = [
      { kind: 'agree', code: 'A'.repeat(22), language: 'en' },
      { kind: 'toggle', evening, part: 5, card: PLAN_LIMITS.cards.max - 1, missed: 1 },
      { kind: 'said', evening, part: 5, said: PLAN_LIMITS.cards.max },
      { kind: 'pages', evening, pages: 9999 },
      { kind: 'childLink', classId, number: 9999, slips: '123456789' },
      { kind: 'makeLinks', classId, slips: '123456789' },
      { kind: 'moveChildTo', classId, number: 9999, to: classId },
      { kind: 'fileColumn', classId, column: 39, heading: 1 },
      { kind: 'fileAdd', classId, stamp: 'A'.repeat(12) },
      { kind: 'removeBreak', classId, index: 9999, first: '2026-10-12' },
      { kind: 'bookPace', classId, book: evening, pages: 9999 },
      { kind: 'moveBook', classId, book: evening, to: 9999 },
      { kind: 'planCards', ...at, cards: PLAN_LIMITS.cards.max },
      { kind: 'planSeconds', ...at, seconds: PLAN_LIMITS.seconds.max },
      ...RUNGS.map(({ id }) => ({ kind: 'planTakeOut', ...at, rung: id }) as const),
      { kind: 'termMake', classId, weeks: 20, share: 3, from: '2026-09-14', was: 'a'.repeat(12) },
      { kind: 'preview', classId, at: 'a'.repeat(32) },
      ...RUNGS.map(({ id }) => ({ kind: 'planRung', ...at, rung: id }) as const),
      ...STRANDS.map((strand) => ({ kind: 'planStrand', ...at, strand }) as const),
      ...runGroups().map(({ id }) => ({ kind: 'planSteps', ...at, ...counting, of: id }) as const),
      ...PROFILES.flatMap(({ id, grades }) =>
        ['none', ...grades.map((grade) => grade.id)].map(
          (grade) => ({ kind: 'chooseGrade', classId, curriculum: id, grade }) as const,
        ),
      ),
    ];
    for (const action of longest) expect(unpack(pack(action))).toEqual(action);
  });

  it('that would not fit is never made', () => {
    const action = { kind: 'planRung', classId, part: 9999, rung: 'r'.repeat(32) } as const;
    expect(() => pack(action)).toThrow(`at most ${MAX_BYTES} bytes, planRung needs more`);
  });

  it.each<Action>([
    { kind: 'pages', evening, pages: -1 },
    { kind: 'pages', evening, pages: 10_000 },
    { kind: 'pages', evening, pages: 1.5 },
    { kind: 'pages', evening, pages: Number.NaN },
    { kind: 'fix', evening: 'yesterday' },
    { kind: 'fix', evening: '' },
    { kind: 'fix', evening: `${evening}0` },
    { kind: 'agree', code: '', language: 'en' },
    { kind: 'agree', code: 'with space', language: 'en' },
    { kind: 'agree', code: 'a:b', language: 'en' },
    { kind: 'agree', code: 'c'.repeat(33), language: 'en' },
  ])('with a value that would not come back as it is is refused: %j', (action) => {
    expect(() => pack(action)).toThrow('a button value is out of range');
  });
});

describe('a button that is not ours', () => {
  it.each([
    '',
    ':',
    'hello',
    '1',
    '1:zz',
    '1:pg',
    '1:PG:AZoAAAAAcACAAAAAAAAAAQ:2',
    '0:pg:AZoAAAAAcACAAAAAAAAAAQ:2',
    '2:pg:AZoAAAAAcACAAAAAAAAAAQ:2',
    '1:pg:AZoAAAAAcACAAAAAAAAAAQ',
    '1:pg:AZoAAAAAcACAAAAAAAAAAQ:2:3',
    '1:pg:AZoAAAAAcACAAAAAAAAAAQ:',
    '1:pg:AZoAAAAAcACAAAAAAAAAAQ:-2',
    '1:pg:AZoAAAAAcACAAAAAAAAAAQ:02',
    '1:pg:AZoAAAAAcACAAAAAAAAAAQ:2 ',
    '1:pg:AZoAAAAAcACAAAAAAAAAAQ:٢',
    '1:pg:AZoAAAAAcACAAAAAAAAAAR:2',
    '1:pg:AZoAAAAAcACAAAAAAAAAA:2',
    '1:pg:AZoAAAAAcACAAAAAAAAA+Q:2',
    '1:dg:',
    '1:ag:two words',
    '1:constructor',
    '1:__proto__',
  ])('is nothing: %j', (text) => {
    expect(unpack(text)).toBeNull();
  });

  it('never throws', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => void unpack(text)));
  });

  it('is only read when it is exactly what we would have written', () => {
    const nearly = fc
      .tuple(anyAction, fc.nat(63), fc.constantFrom('', '0', 'A', 'R', ':', '-', ' ', '9'))
      .map(([action, at, other]) => {
        const text = pack(action);
        return text.slice(0, at) + other + text.slice(at + 1);
      });
    fc.assert(
      fc.property(nearly, (text) => {
        const action = unpack(text);
        if (action) expect(pack(action)).toBe(text);
      }),
      { numRuns: 2_000 },
    );
  });
});

it('no two actions share a tag, and every tag is two small letters', () => {
  const tags = Object.values(ACTIONS).map(({ tag }) => tag);
  expect(new Set(tags).size).toBe(tags.length);
  expect(tags.filter((tag) => !/^[a-z]{2}$/.test(tag))).toEqual([]);
});

it('a tag that was retired is not used again', () => {
  const tags = Object.values(ACTIONS).map(({ tag }): string => tag);
  expect(tags.filter((tag) => RETIRED_TAGS.includes(tag))).toEqual([]);
  for (const tag of RETIRED_TAGS) expect(unpack(`1:${tag}:AZoAAAAAcACAAAAAAAAAAQ`)).toBeNull();
});
