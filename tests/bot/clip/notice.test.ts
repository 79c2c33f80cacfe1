import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, it } from 'vitest';

const words = (text: string) => text.replace(/\s+/g, ' ').trim();
const notice = readFileSync(new URL('../../../NOTICE', import.meta.url), 'utf8');
const licence = createRequire(import.meta.url).resolve('h264-mp4-encoder/LICENSE.md');

it('NOTICE carries the licence of the video encoder word for word', () => {
  const text = words(readFileSync(licence, 'utf8'));
  expect(text).toContain('MIT License Copyright (c) 2020');
  expect(words(notice)).toContain(text);
});

it('NOTICE names what the encoder holds, and under which licence', () => {
  expect(words(notice)).toMatch(
    /minih264, in the public domain.*libmp4v2 under the Mozilla Public License 1\.1/,
  );
});
