import { describe, expect, it } from 'vitest';
import { bytesOf } from '../../../bot/chat/count-data.ts';

const to = { chat_id: 2001 };

describe('the bytes of a call', () => {
  it('are those of its words as UTF-8, whether text or caption', () => {
    expect(bytesOf('sendMessage', { ...to, text: 'Ä 4 + 3' }, {})).toBe(8);
    expect(bytesOf('editMessageCaption', { ...to, caption: 'Done' }, {})).toBe(4);
  });

  it('are those of the largest size of a photo, and of a clip, a document, a recording', () => {
    const photo = [{ file_size: 900 }, { file_size: 20_000 }];
    expect(bytesOf('sendPhoto', { ...to, caption: 'Hi' }, { photo })).toBe(20_002);
    expect(bytesOf('sendVideo', to, { video: { file_size: 41_000 } })).toBe(41_000);
    expect(bytesOf('sendDocument', to, { document: { file_size: 7 } })).toBe(7);
    expect(bytesOf('sendVoice', to, { voice: { file_size: 8 } })).toBe(8);
  });

  it('hold a file again when an edit changes it, and not when only the words below it change', () => {
    const photo = [{ file_size: 20_000 }];
    expect(bytesOf('editMessageMedia', to, { photo })).toBe(20_000);
    expect(bytesOf('editMessageCaption', { ...to, caption: 'Hi' }, { photo })).toBe(2);
  });

  it('are none where nothing is put before anybody, and where the size is not told', () => {
    expect(bytesOf('answerCallbackQuery', { ...to, text: 'Saved' }, true)).toBe(0);
    expect(bytesOf('sendChatAction', to, true)).toBe(0);
    expect(bytesOf('getFile', to, { file_size: 5 })).toBe(0);
    expect(bytesOf('sendPhoto', to, { photo: [{}] })).toBe(0);
  });
});
