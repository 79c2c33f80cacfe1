import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createStage, MAYA, openBoth, type Stage, TOBI } from './support/stage.ts';

const LINK = 'https://t.me/harbour_lane_bot?start=';

let stage: Stage;
beforeEach(async () => {
  stage = await createStage();
});
afterEach(() => stage.rehearsal.close());

describe('accounts', () => {
  it('adding one twice keeps one', async () => {
    await stage.client.addAccount({ id: MAYA, name: 'Maya', note: 'teacher' });
    const accounts = await stage.client.accounts();
    expect(accounts.map(({ id, note }) => [id, note])).toEqual([
      [MAYA, 'teacher'],
      [TOBI, "Otto's helper"],
    ]);
  });

  it('count what the bot sent', async () => {
    await openBoth(stage);
    await stage.bot.api.sendMessage(MAYA, 'one');
    expect((await stage.client.accounts()).map(({ received }) => received)).toEqual([1, 0]);
  });
});

describe('a link', () => {
  it('opens the chat with its payload', async () => {
    await stage.client.openLink(MAYA, `${LINK}Wren-7_x`);
    const [update] = await stage.bot.api.getUpdates();
    expect(update?.message).toMatchObject({
      text: '/start Wren-7_x',
      entities: [{ type: 'bot_command', offset: 0, length: 6 }],
      chat: { id: MAYA, type: 'private' },
      from: { id: MAYA, is_bot: false, language_code: 'en' },
    });
  });

  it('may lack its beginning and have space around it', async () => {
    await stage.client.openLink(MAYA, ' t.me/Harbour_Lane_bot?start=Wren-7_x\n');
    const [update] = await stage.bot.api.getUpdates();
    expect(update?.message?.text).toBe('/start Wren-7_x');
  });

  it('may be the bare payload, and carries 64 characters at most', async () => {
    await stage.client.openLink(MAYA, 'a'.repeat(64));
    await expect(stage.client.openLink(MAYA, `${LINK}${'a'.repeat(65)}`)).rejects.toThrow(
      '1 to 64',
    );
  });

  it('to another bot or another place is refused', async () => {
    await expect(stage.client.openLink(MAYA, 'https://t.me/other_bot?start=a')).rejects.toThrow(
      'Not a link to this bot',
    );
    await expect(stage.client.openLink(MAYA, 'https://example.org/?start=a')).rejects.toThrow(
      'Not a link to this bot',
    );
  });
});

describe('writing', () => {
  it('before the chat is opened is refused', async () => {
    await expect(stage.client.say(MAYA, 'hello')).rejects.toThrow('has not opened the chat yet');
  });

  it('is refused while the bot is blocked, until a link is opened', async () => {
    await openBoth(stage);
    await stage.client.block(MAYA);
    await expect(stage.client.say(MAYA, 'hello')).rejects.toThrow('blocked the bot');
    await stage.client.openLink(MAYA, 'again');
    await expect(stage.client.say(MAYA, 'hello')).resolves.toMatchObject({ text: 'hello' });
  });

  it('takes 4096 characters and refuses more', async () => {
    await openBoth(stage);
    const most = '7'.repeat(4096);
    await expect(stage.client.say(MAYA, most)).resolves.toMatchObject({ text: most });
    await expect(stage.client.say(MAYA, `${most}7`)).rejects.toThrow(
      'up to 4096 characters and this one has 4097. Send it in parts.',
    );
  });

  it('an unknown phone is refused', async () => {
    await expect(stage.client.say(5, '/start')).rejects.toThrow('There is no phone with the id 5');
  });
});

describe('blocking', () => {
  it('tells the bot, once', async () => {
    await openBoth(stage);
    await stage.client.block(MAYA);
    await stage.client.block(MAYA);
    await stage.client.unblock(MAYA);
    const changes = (await stage.bot.api.getUpdates()).map(({ my_chat_member }) => my_chat_member);
    expect(
      changes.map((change) => [change?.old_chat_member.status, change?.new_chat_member.status]),
    ).toEqual([
      ['member', 'kicked'],
      ['kicked', 'member'],
    ]);
  });
});

describe('the clock', () => {
  it('moves forward through the app and never back', async () => {
    const [stop] = await stage.client.stops();
    expect(stop).toEqual({
      id: 'nudge',
      label: 'nudge time 19:00',
      at: new Date('2026-09-07T18:00:00Z'),
    });
    await stage.client.moveTo(stop?.at ?? new Date(0));
    expect(await stage.client.clock()).toEqual(stop?.at);
    await expect(stage.client.moveTo(new Date('2026-09-07T17:59:59Z'))).rejects.toThrow(
      'only goes forward',
    );
  });
});

describe('commands', () => {
  it('are those of the narrowest scope', async () => {
    await stage.bot.api.setMyCommands([{ command: 'help', description: 'How this works' }]);
    await stage.bot.api.setMyCommands([{ command: 'digest', description: 'This week' }], {
      scope: { type: 'chat', chat_id: MAYA },
    });
    expect((await stage.client.commands(MAYA)).map(({ command }) => command)).toEqual(['digest']);
    expect((await stage.client.commands(TOBI)).map(({ command }) => command)).toEqual(['help']);
  });
});
