import { once } from 'node:events';
import { createServer } from 'node:http';
import { getRequestListener } from '@hono/node-server';
import { Hono } from 'hono';

/** An open port. */
export interface Listening {
  readonly port: number;
  /** Takes no more calls; resolves once those under way are answered, or have taken too long. */
  close(): Promise<void>;
}

/** A call that is still under way so long after the end began is cut off: the service brings its update again. */
const LONGEST_CLOSE_MS = 3_000;
/** A call takes no longer to come in. */
const LONGEST_CALL_MS = 30_000;

/** Opens a port, 0 for any that is free, for some pages. Rejects with EADDRINUSE when it is taken. */
export async function listen(
  place: { readonly host: string; readonly port: number },
  pages: readonly Hono[],
): Promise<Listening> {
  const root = new Hono();
  root.notFound(() => new Response(null, { status: 404 }));
  // What went wrong is nobody's business outside; whoever noticed has logged it.
  root.onError(() => new Response(null, { status: 503 }));
  for (const page of pages) root.route('/', page);
  let isClosing = false;
  const answer = getRequestListener(root.fetch, { overrideGlobalObjects: false });
  const server = createServer((request, response) => {
    // A kept connection would bring the next update to a server that is going.
    if (isClosing) response.setHeader('connection', 'close');
    void answer(request, response);
  });
  server.requestTimeout = LONGEST_CALL_MS;
  server.listen(place.port, place.host);
  await once(server, 'listening');
  const address = server.address();
  return {
    port: typeof address === 'object' && address ? address.port : place.port,
    close: async () => {
      if (isClosing) return;
      isClosing = true;
      const closed = once(server, 'close');
      server.close();
      server.closeIdleConnections();
      const cut = setTimeout(() => server.closeAllConnections(), LONGEST_CLOSE_MS);
      await closed;
      clearTimeout(cut);
    },
  };
}
