import { createArrivals } from './arrivals.ts';
import { findMethod } from './bot-api/methods.ts';
import type { Faults } from './faults.ts';
import { botTag } from './file-ids.ts';
import { createFileStore } from './files.ts';
import type { RehearsalOptions } from './options.ts';
import type { Service } from './service.ts';
import type { State } from './state.ts';
import { createUpdateQueue } from './updates.ts';
import { createWebhookSender } from './webhook.ts';
import type { WebhookReply } from './webhook-delivery.ts';

const NEVER = new AbortController().signal;

/** Puts together what both sides of the stand-in share. */
export function createService(
  options: RehearsalOptions & { readonly machineSleep: (ms: number) => Promise<void> },
  state: State,
  faults: Faults,
  changed: () => void,
): Service {
  const { control, token, dataFile, machineSleep, allowRemote = false } = options;
  const now = (): number => control.now().getTime();
  const folder = dataFile === undefined ? undefined : `${dataFile}.files`;
  const updates = createUpdateQueue({ state, arrivals: createArrivals(faults), now, changed });
  const reply = async ({ method, ...params }: WebhookReply): Promise<void> => {
    // The service tells nobody how such a call ended.
    await findMethod(method)
      ?.run(service, { params, uploads: new Map() }, NEVER)
      .catch(() => {});
  };
  const service: Service = {
    state,
    files: createFileStore(state, folder, changed),
    updates,
    webhook: createWebhookSender({ state, updates, now, changed, machineSleep, reply }),
    bot: { id: 0, is_bot: true, first_name: options.botName, username: options.botUsername },
    botTag: botTag(token),
    allowRemote,
    now: () => control.now(),
    changed,
  };
  return service;
}
