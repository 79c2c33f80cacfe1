import { InputFile } from 'grammy';
import {
  AppError,
  askErasure,
  findHelperByChat,
  type HeldData,
  listOwnChildren,
  type OwnChild,
  readHeldData,
  undoErasure,
} from '../../db/index.ts';
import { apiProblem } from '../chat/api-error.ts';
import type { BotDeps } from '../deps.ts';
import * as screens from '../screens/rights-screens.ts';
import { dataOf, nothingHeld } from '../texts/rights.ts';
import { heldTable } from './held-table.ts';
import type { Typed } from './say.ts';
import type { Tap, TapHandlers } from './tap.ts';

/** `/mydata`: two files for each child of a helper, with everything that is kept about it. */
export async function myDataCommand(message: Typed): Promise<void> {
  const { deps, userId } = message;
  const helper = await findHelperByChat(deps.store, userId);
  const children = helper ? await listOwnChildren(deps.store, helper.id) : [];
  if (!helper || children.length === 0) return message.reply(nothingHeld());
  for (const { id: childId } of children) {
    const now = deps.clock.now();
    const data = await readHeldData(deps.store, { helperId: helper.id, childId, now });
    await message.reply(dataOf(data.child.nickname));
    await sendFiles(deps, userId, data);
  }
}

/** A file's name says no child's: it stays on phones and in other apps. */
async function sendFiles(deps: BotDeps, chatId: number, data: HeldData): Promise<void> {
  const name = `child-${data.child.number}-${data.madeAt.slice(0, 10)}`;
  const files = [
    new InputFile(Buffer.from(heldTable(data)), `${name}.csv`),
    new InputFile(Buffer.from(`${JSON.stringify(data, null, 2)}\n`), `${name}.json`),
  ];
  for (const file of files) {
    try {
      await deps.api.sendDocument(chatId, file);
    } catch (error) {
      // When no answer comes the file may have arrived: what follows goes on.
      const { kind } = apiProblem(error);
      if (kind !== 'unknown') throw error;
      deps.log.warn({ problem: kind }, 'reply_lost');
    }
  }
}

/** `/erase`: asks once, for which child when there are several. */
export async function eraseCommand(message: Typed): Promise<void> {
  const { store } = message.deps;
  const helper = await findHelperByChat(store, message.userId);
  const children = helper ? await listOwnChildren(store, helper.id) : [];
  if (children.length === 0) return message.reply(nothingHeld());
  const { text, buttons } = screens.eraseScreen(children);
  await message.reply(text, buttons);
}

/** Erasing a child's data, and taking the wish back. Buttons carry the child; what is stored says what they still do. */
export const rightsTaps: TapHandlers<'eraseAsk' | 'erase' | 'eraseUndo' | 'eraseNot'> = {
  eraseAsk: async (tap, { child }) => {
    const { own } = await ownChild(tap, child);
    await tap.answer();
    await tap.show(screens.eraseScreen([own]));
  },
  erase: async (tap, { child: childId }) => {
    const { store, clock } = tap.deps;
    const { helperId } = await ownChild(tap, childId);
    await askErasure(store, { helperId, childId, now: clock.now() });
    await tap.answer();
    await tap.show(screens.eraseScreen([(await ownChild(tap, childId)).own]));
  },
  eraseUndo: async (tap, { child: childId }) => {
    const { store, clock } = tap.deps;
    const { helperId } = await ownChild(tap, childId);
    const { nickname } = await undoErasure(store, { helperId, childId, now: clock.now() });
    await tap.answer();
    await tap.show(screens.keptScreen(nickname));
  },
  eraseNot: async (tap) => {
    await tap.answer();
    await tap.show(screens.notErasedScreen());
  },
};

async function ownChild(tap: Tap, childId: string): Promise<{ helperId: string; own: OwnChild }> {
  const { store } = tap.deps;
  const helper = await findHelperByChat(store, tap.userId);
  const children = helper ? await listOwnChildren(store, helper.id) : [];
  const own = children.find(({ id }) => id === childId);
  if (!helper || !own) throw new AppError('not_found', 'erasure');
  return { helperId: helper.id, own };
}
