import { InputFile } from 'grammy';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { mp4 } from './support/mp4.ts';
import { png } from './support/png.ts';
import { createStage, MAYA, openBoth, type Stage } from './support/stage.ts';

const DATA = Uint8Array.from({ length: 5000 }, (_, i) => i % 251);
const CLIP = mp4({ data: DATA });

let stage: Stage;
beforeEach(async () => {
  stage = await createStage();
  await openBoth(stage);
});
afterEach(() => stage.rehearsal.close());

/** The address of the file in the newest message. */
async function address(): Promise<string> {
  const shown = (await stage.client.chat(MAYA)).at(-1);
  const file = shown?.video ?? shown?.document ?? shown?.photo;
  return `${stage.rehearsal.url}/rehearsal/files/${file?.fileId}`;
}

async function clipAddress(): Promise<string> {
  await stage.bot.api.sendVideo(MAYA, new InputFile(CLIP, 'part 1.mp4'));
  return address();
}

async function bytesOf(answer: Response): Promise<Buffer> {
  return Buffer.from(await answer.arrayBuffer());
}

describe('the file of a video', () => {
  it('comes whole, and says that parts can be asked for', async () => {
    const answer = await fetch(await clipAddress());
    expect(answer.status).toBe(200);
    expect(Object.fromEntries(answer.headers)).toMatchObject({
      'accept-ranges': 'bytes',
      'content-type': 'video/mp4',
      'content-length': String(CLIP.length),
      'content-disposition': "inline; filename*=UTF-8''part%201.mp4",
    });
    expect(await bytesOf(answer)).toEqual(Buffer.from(CLIP));
  });

  it.each([
    ['bytes=100-199', 100, 199],
    ['bytes=4000-', 4000, CLIP.length - 1],
    ['bytes=-7', CLIP.length - 7, CLIP.length - 1],
  ])('a part comes as 206: %s', async (range, first, last) => {
    const answer = await fetch(await clipAddress(), { headers: { range } });
    expect(answer.status).toBe(206);
    expect(answer.headers.get('content-range')).toBe(`bytes ${first}-${last}/${CLIP.length}`);
    expect(answer.headers.get('content-length')).toBe(String(last - first + 1));
    expect(await bytesOf(answer)).toEqual(Buffer.from(CLIP.subarray(first, last + 1)));
  });

  it('a part beyond the end is refused with 416 and the true length', async () => {
    const range = `bytes=${CLIP.length}-`;
    const answer = await fetch(await clipAddress(), { headers: { range } });
    expect(answer.status).toBe(416);
    expect(answer.headers.get('content-range')).toBe(`bytes */${CLIP.length}`);
    expect(await bytesOf(answer)).toHaveLength(0);
  });

  it('a part of another version of the file is answered with the whole one', async () => {
    const url = await clipAddress();
    const tag = (await fetch(url)).headers.get('etag') ?? '';
    const ask = (condition: string) =>
      fetch(url, { headers: { range: 'bytes=0-0', 'if-range': condition } });
    expect((await ask(tag)).status).toBe(206);
    expect((await ask('"other"')).status).toBe(200);
  });

  it('a question for the headers alone has no parts', async () => {
    const headers = { range: 'bytes=0-0' };
    expect((await fetch(await clipAddress(), { method: 'HEAD', headers })).status).toBe(200);
  });
});

describe('a document', () => {
  async function disposition(bytes: Uint8Array, name: string): Promise<string> {
    await stage.bot.api.sendDocument(MAYA, new InputFile(bytes, name));
    const answer = await fetch(await address());
    expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
    return `${answer.headers.get('content-type')} ${answer.headers.get('content-disposition')?.split(';')[0]}`;
  }

  it('is shown when it is a PNG or a PDF', async () => {
    expect(await disposition(png(9, 9), 'week.png')).toBe('image/png inline');
    expect(await disposition(Buffer.from('%PDF-1.7\n'), 'week.pdf')).toBe('application/pdf inline');
  });

  it('is saved when its bytes are not what its name says', async () => {
    const script = Buffer.from('<script>alert(1)</script>');
    expect(await disposition(script, 'week.png')).toBe('image/png attachment');
    expect(await disposition(script, 'week.pdf')).toBe('application/pdf attachment');
  });

  it('is saved when it is of any other kind', async () => {
    expect(await disposition(Buffer.from('<svg/>'), 'week.svg')).toBe('image/svg+xml attachment');
    expect(await disposition(Buffer.from('a,b'), 'week.csv')).toBe('text/csv attachment');
  });
});
