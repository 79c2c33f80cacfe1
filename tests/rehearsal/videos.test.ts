import { InputFile, InputMediaBuilder } from 'grammy';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readBody } from '../../rehearsal/bot-api/body.ts';
import { mp4 } from './support/mp4.ts';
import { png } from './support/png.ts';
import { createStage, MAYA, openBoth, refusal, START, type Stage, TOBI } from './support/stage.ts';

const CLIP = mp4({ width: 480, height: 360, seconds: 42 });

let stage: Stage;
beforeEach(async () => {
  stage = await createStage();
  await openBoth(stage);
});
afterEach(() => stage.rehearsal.close());

function upload(bytes = CLIP): InputFile {
  return new InputFile(bytes, 'part.mp4');
}

async function shown(id: number) {
  return (await stage.client.chat(MAYA)).find((message) => message.id === id);
}

async function clipId(): Promise<string> {
  return (await stage.bot.api.sendVideo(TOBI, upload())).video.file_id;
}

async function photoId(): Promise<string> {
  const { photo } = await stage.bot.api.sendPhoto(TOBI, new InputFile(png(9, 9)));
  return photo.at(-1)?.file_id ?? '';
}

describe('sendVideo', () => {
  it('shows the clip with caption and buttons, measured from its file', async () => {
    const sent = await stage.bot.api.sendVideo(MAYA, upload(), {
      caption: '<b>Doubles</b>',
      parse_mode: 'HTML',
      supports_streaming: true,
      reply_markup: START,
    });
    expect(sent).toMatchObject({
      caption: 'Doubles',
      caption_entities: [{ type: 'bold', offset: 0, length: 7 }],
      video: {
        width: 480,
        height: 360,
        duration: 42,
        file_name: 'part.mp4',
        mime_type: 'video/mp4',
        file_size: CLIP.length,
      },
    });
    expect(sent).not.toHaveProperty('document');
    expect(await shown(sent.message_id)).toMatchObject({
      text: 'Doubles',
      video: { width: 480, height: 360, duration: 42, mimeType: 'video/mp4' },
      buttons: [[{ text: 'Start', data: 'v1:start' }]],
    });
  });

  it('takes the measures a call gives before those of the file', async () => {
    const given = { width: 240, height: 180, duration: 40 };
    const sent = await stage.bot.api.sendVideo(MAYA, upload(), given);
    expect(sent.video).toMatchObject(given);
    const partly = await stage.bot.api.sendVideo(MAYA, upload(), { width: 0, duration: 41 });
    expect(partly.video).toMatchObject({ width: 480, height: 360, duration: 41 });
  });

  it('cuts measures down to 10000 pixels and a day', async () => {
    const sent = await stage.bot.api.sendVideo(MAYA, upload(), { width: 10_001, duration: 90_000 });
    expect(sent.video).toMatchObject({ width: 10_000, duration: 86_400 });
  });

  it('refuses measures that are no numbers', async () => {
    const width = JSON.parse('"wide"');
    expect(await refusal(stage.bot.api.sendVideo(MAYA, upload(), { width }))).toContain(
      '400 Bad Request: can\'t parse parameter "width"',
    );
  });

  it('sends again by file id without another upload', async () => {
    const id = await clipId();
    const again = await stage.bot.api.sendVideo(MAYA, id, { caption: 'Again', width: 1 });
    expect(again).toMatchObject({ caption: 'Again', video: { file_id: id, width: 480 } });
  });

  it('keeps the same clip once, and another measure of it apart', async () => {
    const first = await stage.bot.api.sendVideo(MAYA, upload());
    const same = await stage.bot.api.sendVideo(TOBI, upload());
    const other = await stage.bot.api.sendVideo(TOBI, upload(), { duration: 7 });
    expect(same.video.file_unique_id).toBe(first.video.file_unique_id);
    expect(other.video.file_unique_id).not.toBe(first.video.file_unique_id);
    expect(first.video.duration).toBe(42);
  });

  it('has a file the bot can fetch', async () => {
    const file = await stage.bot.api.getFile(await clipId());
    expect(file.file_path).toMatch(/^videos\/file_\d+\.mp4$/);
    const { apiRoot, token } = stage.rehearsal;
    const answer = await fetch(`${apiRoot}/file/bot${token}/${file.file_path}`);
    expect(Buffer.from(await answer.arrayBuffer())).toEqual(Buffer.from(CLIP));
  });
});

describe('sendVideo is refused', () => {
  it('for what is no video, for a clip cut short and for an empty file', async () => {
    const send = (bytes: Uint8Array): Promise<string> =>
      refusal(stage.bot.api.sendVideo(MAYA, upload(bytes)));
    const invalid = '400 Bad Request: VIDEO_CONTENT_TYPE_INVALID';
    expect(await send(Buffer.from('words'))).toBe(invalid);
    expect(await send(png(9, 9))).toBe(invalid);
    expect(await send(CLIP.subarray(0, 100))).toBe(invalid);
    expect(await send(new Uint8Array())).toBe('400 Bad Request: file must be non-empty');
    expect((await stage.client.chat(MAYA)).filter(({ from }) => from === 'bot')).toEqual([]);
  });

  it('without a video', async () => {
    const { apiRoot, token } = stage.rehearsal;
    const answer = await fetch(`${apiRoot}/bot${token}/sendVideo?chat_id=${MAYA}`);
    expect(await answer.json()).toMatchObject({
      error_code: 400,
      description: 'Bad Request: there is no video in the request',
    });
  });

  it('with an id that is malformed, of a photo or of another bot', async () => {
    const send = (id: string): Promise<string> => refusal(stage.bot.api.sendVideo(MAYA, id));
    expect(await send(await photoId())).toBe(
      "400 Bad Request: can't use file of type Photo as Video",
    );
    expect(await send('no/id')).toBe(
      '400 Bad Request: wrong remote file identifier specified: Wrong character in the string',
    );
    expect(await refusal(stage.bot.api.sendPhoto(MAYA, await clipId()))).toBe(
      "400 Bad Request: can't use file of type Video as Photo",
    );
    const other = await createStage({ token: '0:rehearsal-other' });
    await openBoth(other);
    const foreign = refusal(other.bot.api.sendVideo(MAYA, await clipId())).finally(() =>
      other.rehearsal.close(),
    );
    expect(await foreign).toBe('400 Bad Request: wrong file identifier/HTTP URL specified');
  });

  it('with a caption over 1024 code points', async () => {
    const call = stage.bot.api.sendVideo(MAYA, upload(), { caption: 'x'.repeat(1025) });
    expect(await refusal(call)).toBe('400 Bad Request: message caption is too long');
  });

  it('when the person blocked the bot', async () => {
    await stage.client.block(MAYA);
    expect(await refusal(stage.bot.api.sendVideo(MAYA, upload()))).toBe(
      '403 Forbidden: bot was blocked by the user',
    );
  });

  it('over 50 MB', async () => {
    const request = (length: number): Request =>
      new Request('http://rehearsal/', {
        method: 'POST',
        headers: { 'content-type': 'multipart/form-data; boundary=b' },
        body: new Uint8Array(length),
      });
    await expect(readBody(request(52_428_801))).rejects.toMatchObject({ code: 413 });
    await expect(readBody(request(52_428_800))).resolves.toMatchObject({ params: {} });
  });
});

it('a document is sent by sendVideo, and a video by sendDocument, as what it is', async () => {
  const { document } = await stage.bot.api.sendDocument(TOBI, upload());
  const asVideo = await stage.bot.api.sendVideo(MAYA, document.file_id);
  expect(asVideo).toMatchObject({ document: { file_name: 'part.mp4' } });
  expect(asVideo).not.toHaveProperty('video');
  expect(await stage.bot.api.sendDocument(MAYA, await clipId())).toHaveProperty('video');
});

describe('a message changes in place', () => {
  let id: number;
  beforeEach(async () => {
    id = (await stage.bot.api.sendPhoto(MAYA, new InputFile(png(9, 9)), { caption: 'Ready' }))
      .message_id;
  });

  it('from a picture to a new clip and back', async () => {
    const clip = InputMediaBuilder.video(upload(), { caption: 'Part 1', duration: 40 });
    const edited = await stage.bot.api.editMessageMedia(MAYA, id, clip, { reply_markup: START });
    expect(edited).toMatchObject({
      message_id: id,
      caption: 'Part 1',
      video: { width: 480, height: 360, duration: 40 },
    });
    expect(edited).not.toHaveProperty('photo');
    const card = InputMediaBuilder.photo(new InputFile(png(9, 9)), { caption: 'Marked' });
    await stage.bot.api.editMessageMedia(MAYA, id, card);
    const after = await shown(id);
    expect(after).toMatchObject({ text: 'Marked', photo: { width: 9 }, edits: 2, buttons: [] });
    expect(after).not.toHaveProperty('video');
  });

  it('from a text to a clip', async () => {
    const text = (await stage.bot.api.sendMessage(MAYA, 'Evening')).message_id;
    await stage.bot.api.editMessageMedia(MAYA, text, InputMediaBuilder.video(upload()));
    expect(await shown(text)).toMatchObject({ text: '', video: { duration: 42 } });
  });

  it('to a clip by file id, and not by the id of a photo', async () => {
    await stage.bot.api.editMessageMedia(MAYA, id, { type: 'video', media: await clipId() });
    expect(await shown(id)).toMatchObject({ video: { duration: 42 } });
    const wrong = { type: 'video', media: await photoId() } as const;
    expect(await refusal(stage.bot.api.editMessageMedia(MAYA, id, wrong))).toBe(
      "400 Bad Request: can't use file of type Photo as Video",
    );
  });

  it('not to what is no video', async () => {
    const words = InputMediaBuilder.video(upload(Buffer.from('words')));
    expect(await refusal(stage.bot.api.editMessageMedia(MAYA, id, words))).toBe(
      '400 Bad Request: VIDEO_CONTENT_TYPE_INVALID',
    );
    expect(await shown(id)).toMatchObject({ text: 'Ready', photo: { width: 9 }, edits: 0 });
  });

  it('not to the same clip with the same caption, whether uploaded or named', async () => {
    const clip = () => InputMediaBuilder.video(upload(), { caption: 'Part 1' });
    await stage.bot.api.editMessageMedia(MAYA, id, clip());
    const unchanged = '400 Bad Request: message is not modified';
    expect(await refusal(stage.bot.api.editMessageMedia(MAYA, id, clip()))).toContain(unchanged);
    const named = { type: 'video', media: await clipId(), caption: 'Part 1' } as const;
    expect(await refusal(stage.bot.api.editMessageMedia(MAYA, id, named))).toContain(unchanged);
  });

  it('in its caption and buttons alone', async () => {
    await stage.bot.api.editMessageMedia(MAYA, id, InputMediaBuilder.video(upload()));
    await stage.bot.api.editMessageCaption(MAYA, id, { caption: 'Marked', reply_markup: START });
    expect(await shown(id)).toMatchObject({ text: 'Marked', video: { duration: 42 } });
    await stage.bot.api.editMessageReplyMarkup(MAYA, id);
    expect(await shown(id)).toMatchObject({ buttons: [], video: { duration: 42 } });
    expect(await refusal(stage.bot.api.editMessageText(MAYA, id, 'x'))).toBe(
      '400 Bad Request: there is no text in the message to edit',
    );
  });

  it('not to a kind the rehearsal does not show', async () => {
    const sound = { type: 'audio', media: await clipId() } as const;
    expect(await refusal(stage.bot.api.editMessageMedia(MAYA, id, sound))).toBe(
      '400 Bad Request: the rehearsal shows photos, videos and documents, not "audio"',
    );
  });
});
