import { describe, expect, it } from 'vitest';
import { isWellFormed, queryToAnswer } from '../../../bot/receive/well-formed.ts';

const from = { id: 7, is_bot: false, first_name: 'Somebody' };
const chat = { id: 7, type: 'private' };
const message = { message_id: 1, date: 0, chat, from };
const tap = { id: '5', from, chat_instance: '1', data: 'x', message: { ...message } };

describe('an update of the shape that the service promises', () => {
  it.each([
    ['a text', { message: { ...message, text: 'hello' } }],
    [
      'a post without a sender',
      { message: { message_id: 1, date: 1, chat: { id: -5, type: 'channel' } } },
    ],
    ['a tap on a message that is too old to be read', { callback_query: tap }],
    ['a tap without data', { callback_query: { id: '5', from, chat_instance: '1' } }],
    ['a kind we never read', { poll: 7 }],
    ['fields we do not know', { message: { ...message, brand_new: [1] } }],
  ])('is taken: %s', (_, update) => {
    expect(isWellFormed({ update_id: 1, ...update })).toBe(true);
  });

  it.each([
    ['a text that is a number', { message: { text: 7 } }],
    ['a text that is a number, all else right', { message: { ...message, text: 7 } }],
    ['a sender below nought', { message: { ...message, from: { id: -7 }, text: 'x' } }],
    ['a sender that is no whole number', { callback_query: { ...tap, from: { id: 0.5 } } }],
    ['data that is a list', { callback_query: { ...tap, data: [] } }],
    ['a voice note without a file', { message: { ...message, voice: {} } }],
    ['a membership without a status', { my_chat_member: { chat, from, new_chat_member: null } }],
  ])('is not: %s', (_, update) => {
    expect(isWellFormed({ update_id: 1, ...update })).toBe(false);
  });
});

it('a tap of an odd shape is still answered when it says which', () => {
  expect(queryToAnswer({ callback_query: { id: '5', data: [] } })).toBe('5');
  expect(queryToAnswer({ callback_query: { id: 5 } })).toBeNull();
  expect(queryToAnswer({ message })).toBeNull();
  expect(queryToAnswer(null)).toBeNull();
});
