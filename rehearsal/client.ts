import type { LoggedCall } from './call-log.ts';
import type { AccountToAdd, FileToSend } from './client-types.ts';
import type { Fault } from './faults.ts';
import { findButton } from './find-button.ts';
import type { Stop } from './options.ts';
import type { AccountView, Answer, ChatMessage } from './phone-api/views.ts';
import type { Command } from './state.ts';

export type { LoggedCall } from './call-log.ts';
export type { AccountToAdd, FileToSend } from './client-types.ts';
export type { Fault } from './faults.ts';
export type { Stop } from './options.ts';
export type { AccountView, Answer, ButtonView, ChatMessage, FileView } from './phone-api/views.ts';

async function answerOf<T>(response: Response): Promise<T> {
  const answer = await response.json();
  if (!response.ok) throw new Error(answer.error ?? `the rehearsal answered ${response.status}`);
  return answer;
}

/**
 * Acts as the people around a bot: opens links, writes, taps, reads what the bot shows.
 * Every method throws an Error with the rehearsal's reason when it is refused.
 */
export class RehearsalClient {
  readonly #root: string;

  /** `baseUrl` is the page's address, as in {@link Rehearsal.url}. */
  constructor(baseUrl: string) {
    this.#root = `${baseUrl.replace(/\/$/, '')}/rehearsal`;
  }

  async #call<T>(method: 'GET' | 'POST' | 'DELETE', path: string, body?: unknown): Promise<T> {
    const response = await fetch(`${this.#root}${path}`, {
      method,
      ...(body === undefined
        ? {}
        : { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }),
    });
    return answerOf(response);
  }

  /** Adds a person; a second call with the same id changes name, note and language. */
  async addAccount(account: AccountToAdd): Promise<void> {
    await this.#call('POST', '/accounts', account);
  }

  accounts(): Promise<readonly AccountView[]> {
    return this.#call('GET', '/accounts');
  }

  /** Opens `https://t.me/<bot>?start=PAYLOAD`, or the bare payload; unblocks the bot if it was blocked. */
  async openLink(accountId: number, linkOrPayload: string): Promise<void> {
    await this.#call('POST', `/accounts/${accountId}/open`, { link: linkOrPayload });
  }

  /** Sends text. The first text of a chat must be `/start`. */
  say(accountId: number, text: string): Promise<ChatMessage> {
    return this.#call('POST', `/accounts/${accountId}/say`, { text });
  }

  /** Sends a photo, a video, a document or a voice note, of up to 50 MB. The chat must be open. */
  async sendFile(accountId: number, file: FileToSend): Promise<ChatMessage> {
    const { bytes, mimeType = 'application/octet-stream', ...rest } = file;
    const query = new URLSearchParams(
      Object.entries(rest).map(([key, value]) => [key, String(value)]),
    );
    const response = await fetch(`${this.#root}/accounts/${accountId}/files?${query}`, {
      method: 'POST',
      body: new Uint8Array(bytes),
      headers: { 'content-type': mimeType },
    });
    return answerOf(response);
  }

  /** Taps the button that carries `data`; it must be on the message now. */
  tap(accountId: number, messageId: number, data: string): Promise<{ queryId: string }> {
    return this.#call('POST', `/accounts/${accountId}/tap`, { messageId, data });
  }

  /**
   * Taps the button whose text contains `label`, on the given message or the newest that has one.
   * An equal text wins over a containing one. Throws an Error naming the buttons there are.
   */
  async tapLabel(
    accountId: number,
    label: string,
    messageId?: number,
  ): Promise<{ queryId: string }> {
    const chat = await this.chat(accountId);
    const match = findButton(
      chat.filter(({ id }) => messageId === undefined || id === messageId),
      label,
    );
    return this.tap(accountId, match.id, match.data);
  }

  /** What the bot answered to this person's taps, oldest first. */
  answers(accountId: number): Promise<readonly Answer[]> {
    return this.#call('GET', `/accounts/${accountId}/answers`);
  }

  /** The person's chat, oldest message first. */
  chat(accountId: number): Promise<readonly ChatMessage[]> {
    return this.#call('GET', `/accounts/${accountId}/chat`);
  }

  commands(accountId: number): Promise<readonly Command[]> {
    return this.#call('GET', `/accounts/${accountId}/commands`);
  }

  async file(fileId: string): Promise<Uint8Array> {
    const response = await fetch(`${this.#root}/files/${encodeURIComponent(fileId)}`);
    if (!response.ok) throw new Error(`no file ${fileId}`);
    return new Uint8Array(await response.arrayBuffer());
  }

  async block(accountId: number): Promise<void> {
    await this.#call('POST', `/accounts/${accountId}/block`);
  }

  async unblock(accountId: number): Promise<void> {
    await this.#call('POST', `/accounts/${accountId}/unblock`);
  }

  async deactivate(accountId: number): Promise<void> {
    await this.#call('POST', `/accounts/${accountId}/deactivate`);
  }

  async deleteMessage(accountId: number, messageId: number): Promise<void> {
    await this.#call('DELETE', `/accounts/${accountId}/messages/${messageId}`);
  }

  /** The last 2000 Bot API calls, oldest first, without polls that brought nothing. */
  log(): Promise<readonly LoggedCall[]> {
    return this.#call('GET', '/log');
  }

  async clock(): Promise<Date> {
    const { now } = await this.#call<{ now: string }>('GET', '/overview');
    return new Date(now);
  }

  /** Moves the app's clock forward; resolves when the app has done what fell due. */
  async moveTo(instant: Date): Promise<void> {
    await this.#call('POST', '/clock', { to: instant.toISOString() });
  }

  async stops(): Promise<readonly Stop[]> {
    const stops = await this.#call<readonly { id: string; label: string; at: string }[]>(
      'GET',
      '/stops',
    );
    return stops.map((stop) => ({ ...stop, at: new Date(stop.at) }));
  }

  /** Makes the next `count` calls of a method (or of any, `*`), or updates, go wrong. */
  async setFault(fault: Fault): Promise<void> {
    await this.#call('POST', '/faults', fault);
  }

  /** What is still to go wrong, oldest first. */
  async faults(): Promise<readonly Fault[]> {
    const { faults } = await this.#call<{ faults: readonly Fault[] }>('GET', '/overview');
    return faults;
  }

  /** Keeps the service's rate limits from now on, or stops doing so; counts begin anew. */
  async setLimits(on: boolean): Promise<void> {
    await this.#call('POST', '/limits', { on });
  }

  async clearFaults(): Promise<void> {
    await this.#call('DELETE', '/faults');
  }

  /** Sends a tap with a payload no button carries. Refused outside 1 to 64 bytes. */
  rawCallback(accountId: number, messageId: number, data: string): Promise<{ queryId: string }> {
    return this.#call('POST', `/accounts/${accountId}/raw-callback`, { messageId, data });
  }

  /** Sends a tap of one person on a message in another one's chat, which no honest phone can. */
  forgeTap(tap: {
    fromAccountId: number;
    chatId: number;
    messageId: number;
    data: string;
  }): Promise<{ queryId: string }> {
    return this.#call('POST', '/forged-taps', tap);
  }

  /** Puts a raw update into the bot's queue; a given `update_id` is kept, even a repeated one. */
  injectUpdate(update: Record<string, unknown>): Promise<{ updateId: number }> {
    return this.#call('POST', '/updates', update);
  }
}
