import { acceptSlip, findHelperByChat, leaveAll, listFamilyChildren } from '../../db/index.ts';
import * as texts from '../texts/family.ts';
import type { TapHandlers } from './tap.ts';

/** Agreeing, refusing, leaving. */
export const joinTaps: TapHandlers<'agree' | 'disagree' | 'leave' | 'stay'> = {
  agree: async (tap, { code }) => {
    const { store, clock } = tap.deps;
    const open = await acceptSlip(store, {
      code,
      chatId: tap.userId,
      agreement: {
        textVersion: texts.NOTICE_VERSION,
        language: texts.NOTICE_LANGUAGE,
        messageId: tap.place.messageId,
      },
      now: clock.now(),
    });
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
