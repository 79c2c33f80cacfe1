import {
  AppError,
  acceptSlip,
  findHelperByChat,
  leaveAll,
  listFamilyChildren,
  markReachable,
  type OpenSlip,
  readJoinedSlip,
  readSlip,
  readTie,
} from '../../db/index.ts';
import type { Language } from '../../drills/index.ts';
import { languageOfTag, readerLanguage, readIn } from '../language/index.ts';
import { relationScreen } from '../screens/joining-screens.ts';
import { noticeScreen } from '../screens/language-screens.ts';
import * as texts from '../texts/family.ts';
import type { Tap, TapHandlers } from './tap.ts';

/** Agreeing, refusing, leaving. */
export const joinTaps: TapHandlers<'agree' | 'noticeIn' | 'disagree' | 'leave' | 'stay'> = {
  agree: (tap, { code, language }) => readIn(languageNamed(language), () => agree(tap, code)),
  noticeIn: async (tap, { code, language }) => {
    const { store, clock } = tap.deps;
    const slip = await readSlip(store, { code, chatId: tap.userId, now: clock.now() });
    await tap.answer();
    await readIn(languageNamed(language), () => tap.show(noticeScreen(slip, code)));
  },
  disagree: async (tap) => {
    await tap.answer();
    await tap.show({ text: texts.disagreed(), buttons: [] });
  },
  leave: async (tap) => {
    const helper = await findHelperByChat(tap.deps.store, tap.userId);
    if (helper) {
      await leaveAll(tap.deps.store, { helperId: helper.id, now: tap.deps.clock.now() });
    }
    await tap.answer();
    await tap.show({ text: texts.left(), buttons: [] });
  },
  stay: async (tap) => {
    await tap.answer();
    await tap.show({ text: texts.staying(), buttons: [] });
  },
};

/** What a button names; one that names none of ours is from another release, and the reader's own language serves. */
function languageNamed(tag: string): Language {
  return languageOfTag(tag) ?? readerLanguage();
}

async function agree(tap: Tap, code: string): Promise<void> {
  const { store } = tap.deps;
  const open = await join(tap, code);
  await markReachable(store, { botId: tap.deps.botId, chatId: tap.userId });
  await tap.answer();
  const helper = await findHelperByChat(store, tap.userId);
  const children = helper ? await listFamilyChildren(store, helper.id) : [];
  const child = children.find(({ id }) => id === open.childId);
  const joined = texts.joined(open, child);
  const tie =
    helper && child ? await readTie(store, { helperId: helper.id, childId: child.id }) : null;
  await tap.show(tie ? relationScreen(joined, tie) : { text: joined, buttons: [] });
}

/** Joins the account to the child. One that has joined sees the same: its tap may come twice, or its screen may have failed. */
async function join({ deps, userId, place }: Tap, code: string): Promise<OpenSlip> {
  const { store, clock } = deps;
  try {
    return await acceptSlip(store, {
      code,
      chatId: userId,
      agreement: {
        textVersion: texts.NOTICE_VERSION,
        language: readerLanguage(),
        messageId: place.messageId,
      },
      now: clock.now(),
    });
  } catch (error) {
    const hasJoined =
      error instanceof AppError && error.code === 'conflict' && error.what === 'helper';
    if (!hasJoined) throw error;
    return readJoinedSlip(store, { code, chatId: userId });
  }
}
