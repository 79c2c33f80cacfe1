import { AppError, findHelperByChat, setWay } from '../../db/index.ts';
import { wayScreen } from '../screens/way-screen.ts';
import { wayChosen } from '../texts/way.ts';
import type { TapHandlers } from './tap.ts';
import { untimedChildren } from './untimed-children.ts';

/** Choosing how the evening is shown. The button carries the way it chooses, so a tap that comes twice chooses once. */
export const wayTaps: TapHandlers<'chooseWay'> = {
  chooseWay: async (tap, { way }) => {
    const { store } = tap.deps;
    const helper = await findHelperByChat(store, tap.userId);
    if (!helper) throw new AppError('not_found', 'helper');
    const chosen = await setWay(store, { helperId: helper.id, way });
    await tap.answer(wayChosen(chosen));
    await tap.show(wayScreen(chosen, await untimedChildren(store, helper.id)));
  },
};
