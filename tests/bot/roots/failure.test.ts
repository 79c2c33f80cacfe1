import { expect, it } from 'vitest';
import { ConfigError } from '../../../bot/roots/config.ts';
import { failureOf, OperatorError, UsageError } from '../../../bot/roots/failure.ts';
import { FolderInUse } from '../../../bot/roots/folder-lock.ts';
import { AppError, BackupError } from '../../../db/index.ts';

it.each([
  ['a wrong command line', new UsageError('“x” is no id.'), '“x” is no id.', 2],
  ['a wrong setting', new ConfigError('PORT: is 0 or more'), 'PORT: is 0 or more', 2],
  ['what cannot be done', new OperatorError('There is none.'), 'There is none.', 1],
  ['a folder in use', new FolderInUse('data is in use'), 'data is in use', 1],
  ['a broken backup', new BackupError('It is cut short.'), 'It is cut short.', 1],
  ['a fault of ours', new TypeError('x is undefined'), 'TypeError: x is undefined', 1],
  ['what is no error', 'lost', 'lost', 1],
])('%s is one line and an exit code', (_, error, line, exitCode) => {
  expect(failureOf(error)).toEqual({ line, exitCode });
});

it('what others hold is said with what to change', () => {
  const held = failureOf(new AppError('conflict', 'a rehearsal’s data'));
  expect(held.line).toBe(
    'This database holds a rehearsal’s data. Choose another DATABASE_URL or DATA_DIR.',
  );
  const port = failureOf(Object.assign(new Error('listen'), { code: 'EADDRINUSE' }));
  expect(port.line).toContain('PORT');
  const token = failureOf(Object.assign(new Error('401'), { error_code: 401 }));
  expect(token.line).toContain('BOT_TOKEN');
  const away = failureOf(Object.assign(new Error('fetch failed'), { name: 'HttpError' }));
  expect(away.line).toContain('Cannot reach the chat service');
});
