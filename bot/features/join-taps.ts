import {
  AppError,
  acceptSlip,
  findHelperByChat,
  leaveAll,
  listFamilyChildren,
  type OpenSlip,
  readJoinedSlip,
} from '../../db/index.ts';
import * as texts from '../texts/family.ts';
import type { Tap, TapHandlers } from './tap.ts';

/** Agreeing, refusing, leaving. */
export const joinTaps: TapHandlers<'agree' | 'disagree' | 'leave' | 'stay'> = {
  agree: async (tap, { code }) => {
    const { store } = tap.deps;
    const open = await join(tap, code);
    await tap.answer();
    const helper = await findHelperByChat(store, tap.userId);
    const children = helper ? await listFamilyChildren(store, helper.id) : [];
    const child = children.find(({ id }) => id === open.childId);
    await tap.show({ text: texts.joined(open, child), buttons: [] });
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

/** Joins the account to the child. One that has joined sees the same: its tap may come twice, or its screen may have failed. */
async function join({ deps, userId, place }: Tap, code: string): Promise<OpenSlip> {
  const { store, clock } = deps;
  try {
    return await acceptSlip(store, {
      code,
      chatId: userId,
      agreement: {
        textVersion: texts.NOTICE_VERSION,
        language: texts.NOTICE_LANGUAGE,
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
