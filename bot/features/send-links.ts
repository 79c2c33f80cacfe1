import type { IssuedSlip } from '../../db/index.ts';
import { sendScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import { rows } from '../screens/screen.ts';
import { joinLinks } from '../texts/roster.ts';

/** Links in one message: the service takes 4,096 characters, a link and a name take up to 150. */
const LINKS_A_MESSAGE = 20;

/**
 * Sends join links to a teacher, in as few messages as fit; each child needs its own lines, so these are longer than a screen.
 * `sent` is awaited after each message, with what stands in it.
 */
export async function sendLinks(
  deps: BotDeps,
  chatId: number,
  slips: readonly IssuedSlip[],
  sent: (some: readonly IssuedSlip[]) => Promise<void> = async () => {},
): Promise<void> {
  for (const some of rows(slips, LINKS_A_MESSAGE)) {
    await sendScreen(deps, chatId, { text: joinLinks(some, deps.linkOf), buttons: [] });
    await sent(some);
  }
}
