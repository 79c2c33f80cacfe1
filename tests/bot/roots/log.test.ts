import { expect, it } from 'vitest';
import { createLog } from '../../../bot/roots/log.ts';
import { currentRequest, inRequest } from '../../../db/index.ts';

it('a line bears the id of the request that is worked on, also awaits later, and no other line does', async () => {
  const lines: string[] = [];
  const log = createLog('info', { write: (line) => void lines.push(line) });
  log.info({ updates: 1 }, 'before');
  await Promise.all(
    [7, 8].map((number) =>
      inRequest({ id: `update 9001/${number}` }, async () => {
        await new Promise((resolve) => setImmediate(resolve));
        log.warn({ updateId: number }, 'within');
      }),
    ),
  );
  expect(lines.map((line): unknown => JSON.parse(line))).toEqual([
    expect.not.objectContaining({ request: expect.anything() }),
    expect.objectContaining({ msg: 'within', updateId: 7, request: 'update 9001/7' }),
    expect.objectContaining({ msg: 'within', updateId: 8, request: 'update 9001/8' }),
  ]);
});

it('the request is known within its work only', () => {
  expect(inRequest({ id: 'update 9001/7' }, () => currentRequest()?.id)).toBe('update 9001/7');
  expect(currentRequest()).toBeUndefined();
});
