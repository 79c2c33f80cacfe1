/** What a worker sends back: a finished clip, or what it threw. */
export type Reply = { readonly bytes: Uint8Array } | { readonly failed: string };

/** Whether a message from a worker is a reply. */
export function isReply(message: unknown): message is Reply {
  if (typeof message !== 'object' || message === null) return false;
  return (
    ('bytes' in message && message.bytes instanceof Uint8Array) ||
    ('failed' in message && typeof message.failed === 'string')
  );
}
