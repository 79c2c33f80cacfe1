import { createServer, type RequestListener } from 'node:http';
import { Api } from 'grammy';
import { onTestFinished } from 'vitest';

/** An HTTP server in the chat service's place that treats every call the same way. */
export async function serviceThat(answer: RequestListener): Promise<Api> {
  const server = createServer(answer);
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  onTestFinished(() => close(server));
  return apiAt(portOf(server));
}

/** An address of this computer at which nobody listens. */
export async function nobody(): Promise<Api> {
  const server = createServer();
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  const port = portOf(server);
  await close(server);
  return apiAt(port);
}

/** What a call to the service fails with. */
export async function failure(api: Api): Promise<unknown> {
  try {
    await api.sendMessage(1, 'hello');
  } catch (error) {
    return error;
  }
  throw new Error('the call did not fail');
}

function apiAt(port: number): Api {
  return new Api('1:test', { apiRoot: `http://127.0.0.1:${port}` });
}

function portOf(server: ReturnType<typeof createServer>): number {
  const address = server.address();
  if (typeof address === 'object' && address) return address.port;
  throw new Error('the server does not listen');
}

function close(server: ReturnType<typeof createServer>): Promise<void> {
  server.closeAllConnections();
  return new Promise((resolve) => {
    server.close(() => resolve());
  });
}
