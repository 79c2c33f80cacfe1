import { expect, it } from 'vitest';
import { readIn } from '../../../bot/language/index.ts';
import { heldCode } from '../../../bot/texts/held-table.ts';
import { LEDGER_STATUSES } from '../../../db/schema/index.ts';

it('a stored code is said in the reader’s language, and one without words as it is stored', () => {
  expect(heldCode('sent')).toBe('sent');
  expect(readIn('de', () => heldCode('sent'))).toBe('gesendet');
  expect(readIn('de', () => heldCode('boxes'))).toBe('boxes');
});

it('how a message ended has words of its own in German', () => {
  const words = readIn('de', () => LEDGER_STATUSES.map(heldCode));
  expect(words.filter((word, at) => word === LEDGER_STATUSES[at])).toEqual([]);
});
