import { expect, it } from 'vitest';
import { encodeStills } from '../../../../bot/clip/h264/encode-stills.ts';

it('the encoder is not loaded in the main thread', async () => {
  const events = ['uncaughtException', 'unhandledRejection'] as const;
  const before = events.map((event) => process.listenerCount(event));
  await expect(encodeStills([], 480, 33)).rejects.toThrow(TypeError);
  expect(events.map((event) => process.listenerCount(event))).toEqual(before);
});
