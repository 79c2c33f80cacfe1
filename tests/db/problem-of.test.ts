import { expect, it } from 'vitest';
import { AppError, problemOf } from '../../db/index.ts';

it('an error is called by its kind, never by its words', () => {
  expect(problemOf(new TypeError('Wren is missing'))).toBe('TypeError');
  expect(problemOf(new AppError('invalid', 'title'))).toBe('AppError');
  expect(problemOf('Wren is missing')).toBe('string');
});

it('an error whose kind has no name of its own is called by its class', () => {
  class Unnamed extends Error {}
  expect(problemOf(new Unnamed('Wren is missing'))).toBe('Unnamed');
  expect(problemOf(new Error('Wren is missing'))).toBe('Error');
});
