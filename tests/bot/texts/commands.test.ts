import { expect, it } from 'vitest';
import { readIn } from '../../../bot/language/index.ts';
import { setCommands } from '../../../bot/roots/set-commands.ts';
import { commands } from '../../../bot/texts/commands.ts';

/** Source: the Bot API's documentation, BotCommand: 1-32 of a-z, 0-9 and _; a description has 1-256 characters. */
const COMMAND = /^[a-z0-9_]{1,32}$/;
/** So that a description stands on one line of the menu. Common practice, no source. */
const ONE_LINE = 40;

it.each(['en', 'af', 'es', 'de', 'fr'] as const)(
  'the menu fits in %s and says no two things alike',
  (language) => {
    const menu = readIn(language, commands);
    expect(menu.map(({ command }) => command)).toEqual(commands().map(({ command }) => command));
    for (const { command, description } of menu) {
      expect(command).toMatch(COMMAND);
      expect(description).toMatch(/^[\p{Lu}’].*[^.]$/u);
      expect(description.length, description).toBeLessThanOrEqual(ONE_LINE);
    }
    expect(new Set(menu.map(({ description }) => description)).size).toBe(menu.length);
  },
);

it('a phone gets the menu in its language, and in English where that is none of ours', async () => {
  const menus = new Map<string | undefined, string | undefined>();
  await setCommands({
    setMyCommands: async (menu, other) => {
      menus.set(other?.language_code, menu[0]?.description);
      return true;
    },
  });
  const named = (['af', 'es', 'de', 'fr'] as const).map(
    (language) => [language, readIn(language, () => commands()[0]?.description)] as const,
  );
  expect(menus).toEqual(new Map([[undefined, 'Today’s drill again'], ...named]));
});
