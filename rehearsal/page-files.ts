import { readdir, readFile } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Hono } from 'hono';

const FOLDER = fileURLToPath(new URL('./page', import.meta.url));

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
};

/** Nothing is loaded from anywhere else, so the page works without a network. */
const POLICY =
  "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none'; frame-ancestors 'none'";

/** Serves the page's own files, and no other. */
export function createPageFiles(): Hono {
  const app = new Hono();
  app.get('/:name?', async (c, next) => {
    const name = c.req.param('name') ?? 'index.html';
    const type = TYPES[extname(name)];
    if (type === undefined || !(await readdir(FOLDER)).includes(name)) return next();
    return c.body(new Uint8Array(await readFile(join(FOLDER, name))), 200, {
      'content-type': type,
      'content-security-policy': POLICY,
      'cache-control': 'no-store',
    });
  });
  return app;
}
