import type { RequestListener } from 'node:http';
import { describe, expect, it } from 'vitest';
import { createDownload, DownloadError } from '../../../bot/chat/download.ts';
import { nobody, serviceThat } from './service.ts';

const TOKEN = '1:test';
const FILE = Buffer.from('Wren\nOtter\n');

/** A service that has one file under one path, and does with a download what the test says. */
async function fetchFrom(
  download: RequestListener,
  file: Readonly<Record<string, unknown>> = { file_path: 'documents/file_1.csv' },
) {
  const api = await serviceThat((request, response) => {
    if (request.url === `/file/bot${TOKEN}/documents/file_1.csv`)
      return download(request, response);
    const result = { file_id: 'a', file_unique_id: 'b', ...file };
    response.setHeader('content-type', 'application/json');
    return response.end(JSON.stringify({ ok: true, result }));
  });
  return createDownload(api, { apiRoot: api.options?.apiRoot ?? '', token: TOKEN });
}

async function problemOf(work: Promise<unknown>): Promise<string> {
  const error: unknown = await work.then(
    () => null,
    (reason: unknown) => reason,
  );
  expect(error).toBeInstanceOf(DownloadError);
  return String(error instanceof Error ? `${error.message} ${error.stack} ${error.cause}` : error);
}

describe('a file that was sent', () => {
  it('is fetched whole, up to the very limit', async () => {
    const fetchFile = await fetchFrom((_, response) => void response.end(FILE));
    expect(await fetchFile('a', FILE.length)).toEqual(new Uint8Array(FILE));
  });

  it('is not fetched when the service says that it is too large', async () => {
    let asked = 0;
    const large = { file_path: 'documents/file_1.csv', file_size: FILE.length };
    const fetchFile = await fetchFrom((_, response) => {
      asked += 1;
      response.end(FILE);
    }, large);
    expect(await fetchFile('a', FILE.length - 1)).toBeNull();
    expect(asked).toBe(0);
  });

  it('is not read to its end when it turns out too large', async () => {
    const stated = await fetchFrom((_, response) => void response.end(FILE));
    expect(await stated('a', FILE.length - 1)).toBeNull();
    const unstated = await fetchFrom((_, response) => {
      response.write(FILE);
      response.write(FILE);
    });
    expect(await unstated('a', FILE.length)).toBeNull();
  });

  it('that cannot be fetched says why, and never where it lies', async () => {
    const gone = await fetchFrom((_, response) => {
      response.statusCode = 404;
      response.end();
    });
    const cut = await fetchFrom((request) => void request.socket.destroy());
    const pathless = await fetchFrom((_, response) => void response.end(), {});
    const problems = await Promise.all(
      [gone, cut, pathless].map((each) => problemOf(each('a', 9))),
    );
    expect(problems.map((text) => /status_404|no_answer|no_path/.exec(text)?.[0])).toEqual([
      'status_404',
      'no_answer',
      'no_path',
    ]);
    for (const text of problems) expect(text).not.toContain(TOKEN);
  });

  it('is not asked for where the service does not answer at all', async () => {
    const api = await nobody();
    const fetchFile = createDownload(api, { apiRoot: api.options?.apiRoot ?? '', token: TOKEN });
    await expect(fetchFile('a', 9)).rejects.toThrow("Network request for 'getFile' failed!");
  });
});
