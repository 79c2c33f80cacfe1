import { InputFile } from 'grammy';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { png } from './support/png.ts';
import { createStage, MAYA, openBoth, refusal, START, type Stage } from './support/stage.ts';

const UNCHANGED =
  '400 Bad Request: message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message';

let stage: Stage;
let textId: number;
let photoId: number;
beforeEach(async () => {
  stage = await createStage();
  await openBoth(stage);
  textId = (await stage.bot.api.sendMessage(MAYA, 'Evening', { reply_markup: START })).message_id;
  photoId = (await stage.bot.api.sendPhoto(MAYA, new InputFile(png(9, 9)), { caption: 'Card' }))
    .message_id;
});
afterEach(() => stage.rehearsal.close());

async function shown(id: number) {
  return (await stage.client.chat(MAYA)).find((message) => message.id === id);
}

describe('editMessageText', () => {
  it('changes the text in place and drops buttons that are not given again', async () => {
    const edited = await stage.bot.api.editMessageText(MAYA, textId, 'Part 1 of 3');
    expect(edited).toMatchObject({
      message_id: textId,
      text: 'Part 1 of 3',
      edit_date: stage.clock.now().getTime() / 1000,
    });
    expect(await shown(textId)).toMatchObject({ text: 'Part 1 of 3', buttons: [], edits: 1 });
  });

  it('refuses the same text with the same buttons', async () => {
    expect(
      await refusal(
        stage.bot.api.editMessageText(MAYA, textId, 'Evening', { reply_markup: START }),
      ),
    ).toBe(UNCHANGED);
    expect((await shown(textId))?.edits).toBe(0);
  });

  it('refuses a message with a picture', async () => {
    expect(await refusal(stage.bot.api.editMessageText(MAYA, photoId, 'x'))).toBe(
      '400 Bad Request: there is no text in the message to edit',
    );
  });

  it('refuses an empty text', async () => {
    expect(await refusal(stage.bot.api.editMessageText(MAYA, textId, ''))).toBe(
      '400 Bad Request: message text is empty',
    );
  });

  it('finds neither deleted nor unknown messages', async () => {
    await stage.client.deleteMessage(MAYA, textId);
    const gone = '400 Bad Request: message to edit not found';
    expect(await refusal(stage.bot.api.editMessageText(MAYA, textId, 'x'))).toBe(gone);
    expect(await refusal(stage.bot.api.editMessageText(MAYA, 9999, 'x'))).toBe(gone);
  });

  it('refuses what a person wrote', async () => {
    const said = await stage.client.say(MAYA, 'hello');
    expect(await refusal(stage.bot.api.editMessageText(MAYA, said.id, 'x'))).toBe(
      "400 Bad Request: message can't be edited",
    );
  });

  it('has no time limit', async () => {
    stage.clock.pass(90 * 86_400_000);
    await expect(stage.bot.api.editMessageText(MAYA, textId, 'Much later')).resolves.toBeTruthy();
  });
});

describe('editMessageCaption', () => {
  it('changes the caption and keeps the picture', async () => {
    await stage.bot.api.editMessageCaption(MAYA, photoId, { caption: 'Card 2' });
    expect(await shown(photoId)).toMatchObject({ text: 'Card 2', photo: { width: 9 } });
  });

  it('refuses a message without a picture', async () => {
    expect(await refusal(stage.bot.api.editMessageCaption(MAYA, textId, { caption: 'x' }))).toBe(
      '400 Bad Request: there is no caption in the message to edit',
    );
  });

  it('refuses the same caption', async () => {
    expect(
      await refusal(stage.bot.api.editMessageCaption(MAYA, photoId, { caption: 'Card' })),
    ).toBe(UNCHANGED);
  });
});

describe('editMessageMedia', () => {
  const media = (shade: number) =>
    ({ type: 'photo', media: new InputFile(png(40, 30, shade)), caption: 'Shown' }) as const;

  it('turns a text message into a picture', async () => {
    await stage.bot.api.editMessageMedia(MAYA, textId, media(9), { reply_markup: START });
    expect(await shown(textId)).toMatchObject({
      text: 'Shown',
      photo: { width: 40, height: 30 },
      edits: 1,
    });
  });

  it('refuses the same picture with the same caption', async () => {
    await stage.bot.api.editMessageMedia(MAYA, photoId, media(9));
    expect(await refusal(stage.bot.api.editMessageMedia(MAYA, photoId, media(9)))).toBe(UNCHANGED);
    await expect(stage.bot.api.editMessageMedia(MAYA, photoId, media(10))).resolves.toBeTruthy();
  });

  it('takes a file id of the same class', async () => {
    const sent = await stage.bot.api.sendPhoto(MAYA, new InputFile(png(50, 50)));
    const id = sent.photo.at(-1)?.file_id ?? '';
    await stage.bot.api.editMessageMedia(MAYA, photoId, { type: 'photo', media: id });
    expect(await shown(photoId)).toMatchObject({ text: '', photo: { width: 50 } });
    expect(
      await refusal(stage.bot.api.editMessageMedia(MAYA, photoId, { type: 'document', media: id })),
    ).toBe("400 Bad Request: can't use file of type Photo as Document");
  });
});

describe('editMessageReplyMarkup', () => {
  it('changes only the buttons', async () => {
    await stage.bot.api.editMessageReplyMarkup(MAYA, textId);
    expect(await shown(textId)).toMatchObject({ text: 'Evening', buttons: [] });
    expect(await refusal(stage.bot.api.editMessageReplyMarkup(MAYA, textId))).toBe(UNCHANGED);
  });
});

describe('deleteMessage', () => {
  it('takes a young message away', async () => {
    await expect(stage.bot.api.deleteMessage(MAYA, textId)).resolves.toBe(true);
    expect(await shown(textId)).toBeUndefined();
    expect(await refusal(stage.bot.api.deleteMessage(MAYA, textId))).toBe(
      '400 Bad Request: message to delete not found',
    );
  });

  it('refuses a message older than 48 hours', async () => {
    stage.clock.pass(172_801_000);
    expect(await refusal(stage.bot.api.deleteMessage(MAYA, textId))).toBe(
      "400 Bad Request: message can't be deleted for everyone",
    );
  });
});
