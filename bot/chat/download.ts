import type { Api } from 'grammy';

/** Fetches a file that a person sent; null when it is larger than `most` bytes. */
export type Download = (fileId: string, most: number) => Promise<Uint8Array | null>;

/** Seconds until a download is given up. */
const DOWNLOAD_SECONDS = 20;

/** The file could not be fetched. Says nothing of where it lies: its address holds the bot's token. */
export class DownloadError extends Error {
  constructor(problem: string) {
    super(`a file could not be fetched: ${problem}`);
    this.name = 'DownloadError';
  }
}

/**
 * Downloads by the service's `getFile`: it names a path, which is fetched below `/file/bot<token>/`. What is thrown never
 * holds that address.
 */
export function createDownload(
  api: Api,
  { apiRoot, token }: { apiRoot: string; token: string },
): Download {
  return async (fileId, most) => {
    const { file_path, file_size } = await api.getFile(fileId);
    if (file_size !== undefined && file_size > most) return null;
    if (file_path === undefined) throw new DownloadError('no_path');
    const response = await fetchFile(`${apiRoot}/file/bot${token}/${file_path}`);
    const stated = Number(response.headers.get('content-length') ?? 0);
    if (stated > most) {
      await response.body?.cancel();
      return null;
    }
    return readAtMost(response, most);
  };
}

async function fetchFile(url: string): Promise<Response> {
  const response = await fetch(url, {
    signal: AbortSignal.timeout(DOWNLOAD_SECONDS * 1_000),
  }).catch(() => null);
  if (!response) throw new DownloadError('no_answer');
  if (response.ok) return response;
  await response.body?.cancel();
  throw new DownloadError(`status_${response.status}`);
}

/** Reads on only while it fits: what the service states of a size is not relied on. */
async function readAtMost(response: Response, most: number): Promise<Uint8Array | null> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  if (!response.body) return new Uint8Array();
  for await (const chunk of response.body) {
    length += chunk.length;
    if (length > most) return null;
    chunks.push(chunk);
  }
  return new Uint8Array(Buffer.concat(chunks, length));
}
