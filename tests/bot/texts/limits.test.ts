import { expect, it } from 'vitest';
import { errorText } from '../../../bot/texts/errors.ts';
import { codesPaused, leftOut } from '../../../bot/texts/limits.ts';
import { CodesPaused } from '../../../db/index.ts';

it('a guesser hears when to try again, in whole minutes', () => {
  expect(codesPaused(1)).toBe(
    'Too many codes that do not work came from you. Try again in 1 minute, or ask the teacher for a new link.',
  );
  expect(errorText(new CodesPaused(39))).toContain('Try again in 39 minutes');
});

it('both fit where they are shown: an alert of 200 characters, a message of two lines', () => {
  expect(codesPaused(60).length).toBeLessThanOrEqual(200);
  expect(leftOut().text.split('\n')).toHaveLength(2);
});
