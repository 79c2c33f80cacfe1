import { once } from 'node:events';
import { createServer, type IncomingHttpHeaders, type IncomingMessage } from 'node:http';

/** What a webhook was sent. */
export interface Arrival {
  readonly headers: IncomingHttpHeaders;
  readonly update: Record<string, unknown>;
}

/** What a webhook says; nothing else is 200 with an empty body. */
export interface Reply {
  readonly status?: number;
  /** Words beside the status. */
  readonly words?: string;
  readonly headers?: Record<string, string>;
  readonly body?: unknown;
  /** The answer waits for it. */
  readonly after?: Promise<void>;
}

export interface Receiver {
  readonly url: string;
  /** The next update that nobody asked for yet; waits for it. */
  next(): Promise<Arrival>;
  /** How the next updates are answered, in order. */
  answers(...replies: Reply[]): void;
  close(): Promise<void>;
}

async function bodyOf(request: IncomingMessage): Promise<Record<string, unknown>> {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk);
  return JSON.parse(Buffer.concat(chunks).toString());
}

/** A bot's webhook that keeps what it is sent and answers as it is told. */
export async function openReceiver(): Promise<Receiver> {
  const arrived: Arrival[] = [];
  const asking: ((arrival: Arrival) => void)[] = [];
  const replies: Reply[] = [];
  const server = createServer(async (request, response) => {
    const arrival = { headers: request.headers, update: await bodyOf(request) };
    const { status = 200, words = 'OK', headers = {}, body = '', after } = replies.shift() ?? {};
    const ask = asking.shift();
    if (ask === undefined) arrived.push(arrival);
    else ask(arrival);
    await after;
    response.writeHead(status, words, { 'content-type': 'application/json', ...headers });
    response.end(JSON.stringify(body));
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  return {
    url: `http://127.0.0.1:${port}/updates`,
    next: () => {
      const waiting = arrived.shift();
      return waiting === undefined
        ? new Promise((resolve) => asking.push(resolve))
        : Promise.resolve(waiting);
    },
    answers: (...more) => {
      replies.push(...more);
    },
    close: async () => {
      server.closeAllConnections();
      server.close();
      await once(server, 'close');
    },
  };
}
