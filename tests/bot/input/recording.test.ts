import { describe, expect, test } from 'vitest';
import { greetingText } from '../../../bot/input/greeting-text.ts';
import { readRecording } from '../../../bot/input/recording.ts';

const file = { file_id: 'f', file_unique_id: 'u' };
const voice = (duration: number, file_size?: number) => ({
  message_id: 9,
  voice: { ...file, duration, ...(file_size === undefined ? {} : { file_size }) },
});

describe('a recording', () => {
  test('of up to sixty seconds is read with its file and message', () => {
    expect(readRecording(voice(60))).toEqual({ kind: 'voice', fileId: 'f', messageId: 9 });
    const video = { ...file, duration: 12, width: 640, height: 480, file_size: 10_000_000 };
    expect(readRecording({ message_id: 9, video })).toMatchObject({ kind: 'video', fileId: 'f' });
  });

  test('that is longer, or larger than ten megabytes, says by how much', () => {
    expect(readRecording(voice(61))).toEqual({ kind: 'seconds', value: 61 });
    expect(readRecording(voice(5, 10_000_001))).toEqual({ kind: 'megabytes', value: 11 });
  });

  test('a round video and a piece of music have methods of their own and are refused', () => {
    const video_note = { ...file, duration: 5, length: 240 };
    const audio = { ...file, duration: 5 };
    expect(readRecording({ message_id: 9, video_note })).toEqual({ kind: 'form' });
    expect(readRecording({ message_id: 9, audio })).toEqual({ kind: 'form' });
  });

  test('anything else is no recording', () => {
    expect(readRecording({ message_id: 9 })).toBeNull();
  });
});

describe('a greeting in writing', () => {
  test('keeps its lines, and one empty line at most between them', () => {
    expect(greetingText(' Dear all,\r\n\r\n\r\nhave a good  week! ')).toBe(
      'Dear all,\n\nhave a good week!',
    );
  });

  test('loses what cannot be seen, and is empty when that is all there is', () => {
    expect(greetingText('Go\u200bod\u202e week')).toBe('Good week');
    expect(greetingText(' \u200b\n\u2067 ')).toBe('');
  });
});
