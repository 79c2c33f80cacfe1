import { expect, it } from 'vitest';
import { parseMarkdownV2 } from '../../rehearsal/bot-api/markdown-v2.ts';

/** Source: core.telegram.org/bots/api, "MarkdownV2 style", its example of nested marks; from memory. */
const EXAMPLE =
  '*bold _italic bold ~italic bold strikethrough ||italic bold strikethrough spoiler||~ __underline italic bold___ bold*';

it('the nested marks of the published example are read', () => {
  const { text, entities } = parseMarkdownV2(EXAMPLE);
  const shown = entities.map(({ type, offset, length }) => [
    type,
    text.slice(offset, offset + length),
  ]);
  expect(text).toBe(
    'bold italic bold italic bold strikethrough italic bold strikethrough spoiler underline italic bold bold',
  );
  expect(shown).toEqual([
    ['bold', text],
    ['italic', text.slice('bold '.length, -' bold'.length)],
    ['strikethrough', 'italic bold strikethrough italic bold strikethrough spoiler'],
    ['spoiler', 'italic bold strikethrough spoiler'],
    ['underline', 'underline italic bold'],
  ]);
});
