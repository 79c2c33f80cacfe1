import { describe, expect, it } from 'vitest';
import {
  acceptSlip,
  acceptTeacherInvite,
  chooseLanguage,
  getClass,
  issueTeacherInvite,
  leaveAll,
  readLanguage,
  type Store,
  updateClass,
} from '../../db/index.ts';
import { LANGUAGES, type Language } from '../../drills/index.ts';
import { codeOf, refusalOf } from '../support/code-of.ts';
import { AGREEMENT, aChat, aChild, aClass, aFamily, aSlip } from '../support/people.ts';
import { dumpAll, runSql } from '../support/raw-rows.ts';
import { MORNING } from '../support/term.ts';

/** The language the bot speaks with somebody, and a class's. Runs on the store that joining.test.ts opens. */
export function languagesSuite(opened: () => Store): void {
  describe('the language of an account', () => ofAccounts(opened));
  describe('the language of a class', () => ofClasses(opened));
}

function ofAccounts(opened: () => Store) {
  it('is the one a helper agreed in, again at each agreement', async () => {
    const classroom = await aClass(opened());
    const chatId = aChat();
    for (const language of ['de', 'fr'] as const) {
      const child = await aChild(opened(), classroom, `Otter ${language}`);
      const code = await aSlip(opened(), classroom, child.id);
      const agreement = { ...AGREEMENT, language };
      await acceptSlip(opened(), { code, chatId, agreement, now: MORNING });
      expect(await readLanguage(opened(), chatId)).toBe(language);
    }
  });

  it('is the one a teacher was invited in', async () => {
    const code = await issueTeacherInvite(opened(), MORNING);
    const chatId = aChat();
    await acceptTeacherInvite(opened(), { code, chatId, language: 'af', now: MORNING });
    expect(await readLanguage(opened(), chatId)).toBe('af');
  });

  it.each(Object.keys(LANGUAGES))('%s is kept once chosen, by a helper', async (language) => {
    const { helper } = await aFamily(opened(), await aClass(opened()));
    expect(await chooseLanguage(opened(), { chatId: helper.chatId, language })).toBe(language);
    expect(await readLanguage(opened(), helper.chatId)).toBe(language);
  });

  it('is one for somebody who is a helper and a teacher', async () => {
    const { helper } = await aFamily(opened(), await aClass(opened()));
    const code = await issueTeacherInvite(opened(), MORNING);
    await acceptTeacherInvite(opened(), { code, chatId: helper.chatId, now: MORNING });
    await chooseLanguage(opened(), { chatId: helper.chatId, language: 'es' });
    const stored = await runSql(
      opened(),
      `select language from helper where chat_id = ${helper.chatId}
       union all select language from teacher where chat_id = ${helper.chatId}`,
    );
    expect(stored.map(({ language }) => language)).toEqual(['es', 'es']);
  });

  it('belongs to one account: the child’s other helper keeps theirs', async () => {
    const { helpers } = await aFamily(opened(), await aClass(opened()), { helpers: 2 });
    const [one, other] = helpers.map(({ chatId }) => chatId);
    await chooseLanguage(opened(), { chatId: one ?? 0, language: 'de' });
    expect(await readLanguage(opened(), other ?? 0)).toBe('en');
  });

  it('stays with a helper who left, for whoever comes back', async () => {
    const { helper } = await aFamily(opened(), await aClass(opened()));
    await chooseLanguage(opened(), { chatId: helper.chatId, language: 'fr' });
    await leaveAll(opened(), { helperId: helper.id, now: MORNING });
    expect(await readLanguage(opened(), helper.chatId)).toBe('fr');
  });

  it.each(['', 'EN', 'nl', 'constructor'])(
    '%j is none of ours, and changes nothing',
    async (tag) => {
      const { helper } = await aFamily(opened(), await aClass(opened()));
      const before = await dumpAll(opened());
      const refused = await refusalOf(
        chooseLanguage(opened(), { chatId: helper.chatId, language: tag }),
      );
      expect(refused).toBe('invalid: language');
      expect(await dumpAll(opened())).toEqual(before);
    },
  );

  it('of somebody we do not know is not kept', async () => {
    expect(await readLanguage(opened(), aChat())).toBeNull();
    const asked = chooseLanguage(opened(), { chatId: aChat(), language: 'de' });
    expect(await codeOf(asked)).toBe('not_found');
  });
}

function ofClasses(opened: () => Store) {
  it('is English unless said otherwise, and what its teacher chooses', async () => {
    const { scope, schoolClass } = await aClass(opened());
    expect(schoolClass.language).toBe('en');
    await updateClass(opened(), scope, { changes: { language: 'af' }, now: MORNING });
    expect((await getClass(opened(), scope)).language).toBe('af');
  });

  it('is refused when it is none of ours', async () => {
    const { scope } = await aClass(opened());
    const language = 'nl' as Language;
    const asked = updateClass(opened(), scope, { changes: { language }, now: MORNING });
    expect(await refusalOf(asked)).toBe('invalid: language');
  });
}
