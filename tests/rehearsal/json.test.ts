import fc from 'fast-check';
import { expect, it } from 'vitest';
import { readJson } from '../../rehearsal/json.ts';

it('readJson reads what JSON writes', () => {
  expect(readJson('[1]')).toEqual([1]);
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 5 }), (value) => {
      const text = JSON.stringify(value);
      expect(readJson(text)).toEqual(JSON.parse(text));
    }),
  );
});

it('readJson reads nothing else, and nothing more than a hundred deep', () => {
  const nested = (depth: number) => '['.repeat(depth) + ']'.repeat(depth);
  expect(readJson('{"a":')).toBeUndefined();
  expect(readJson('')).toBeUndefined();
  expect(readJson(nested(100))).toBeDefined();
  expect(readJson(nested(101))).toBeUndefined();
  expect(readJson(nested(200_000))).toBeUndefined();
});
