import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type EveningStatus, silentRun } from '../../../drills/index.ts';

const evenings = (...statuses: EveningStatus[]) => statuses.map((status) => ({ status }));

test('only the latest silent evenings in a row count', () => {
  expect(silentRun(evenings('silent', 'practised', 'silent', 'silent'))).toBe(2);
});

test('an unsent evening neither breaks the run nor counts', () => {
  expect(silentRun(evenings('practised', 'silent', 'unsent', 'silent'))).toBe(2);
  expect(silentRun(evenings('silent', 'unsent', 'unsent'))).toBe(1);
  expect(silentRun(evenings('unsent'))).toBe(0);
});

test('"not today" is an answer and ends the run', () => {
  expect(silentRun(evenings('silent', 'silent', 'not_today'))).toBe(0);
  expect(silentRun(evenings('silent', 'not_today', 'silent'))).toBe(1);
});

test('a family without evenings is not silent', () => {
  expect(silentRun([])).toBe(0);
});

test('a run that reaches back to the first evening counts them all', () => {
  expect(silentRun(evenings('silent', 'silent', 'silent'))).toBe(3);
});

test('one answered evening at the end always ends the run', () => {
  const any = fc.array(fc.constantFrom('practised', 'not_today', 'silent', 'unsent'));
  fc.assert(
    fc.property(any, (statuses) => {
      expect(silentRun(evenings(...statuses, 'practised', 'unsent'))).toBe(0);
      expect(silentRun(evenings(...statuses, 'silent'))).toBe(silentRun(evenings(...statuses)) + 1);
    }),
  );
});
